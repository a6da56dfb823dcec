using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class BarDrawnWrong : ISiteRule
{
    /// <summary>Of the whole length: drawings have one decimal in a thousand.</summary>
    private const decimal Tolerance = 0.001m;

    /// <summary>What is wrong in the picture of one week is mostly wrong in those of its other weeks.</summary>
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        site.Page(PagePath.Weeks) is { } page
            ? plan.Sessions.SelectMany(session => Session(plan, page, session).OncePerCause(f => f.Help))
            : [];

    private IEnumerable<Finding> Session(Plan plan, PageSeen page, PlannedSession session)
    {
        foreach (var weeks in session.Weeks)
        {
            var sentence = ShareWords.Of(session, weeks, plan.Words);
            if (page.Bars.FirstOrDefault(b => b.Label == sentence) is not { } bar)
                yield return this.Wrong(
                    plan,
                    page.At,
                    $"There is no picture that says \"{sentence}\".",
                    "Show one for each session and its weeks, and give it that sentence as its label."
                );
            else if (Fault(bar, weeks.Shares) is { } fault)
                yield return this.Wrong(
                    plan,
                    bar.At,
                    $"In the picture of '{session.Name}', {weeks.Heading}, {fault}.",
                    "Draw each part as long as its share of the time, one behind the other."
                );
        }
    }

    private static string? Fault(BarSeen bar, TimeShares shares)
    {
        Seconds[] parts = [.. new[] { shares.Work, shares.Rest, shares.Moving }.Where(s => s > Seconds.Zero)];
        if (bar.Parts.Count != parts.Length)
            return $"there are {bar.Parts.Count} parts and not {parts.Length}";
        var whole = bar.Parts.Sum(p => p.Width ?? 0);
        if (whole <= 0)
            return "nothing has a length";
        if (bar.Length is not { } length || Math.Abs(whole - length) > length * Tolerance)
            return "the parts together are not as long as the picture";
        var before = 0;
        foreach (var (drawn, span) in bar.Parts.Zip(parts))
        {
            if (drawn is not { From: { } from, Width: { } width })
                return "a part has no place or no length";
            if (Far(from, before) || Far(width, span.Value))
                return $"the part of {span.Value} seconds has a wrong place or length";
            before += span.Value;
        }

        return null;

        bool Far(decimal drawn, int seconds) => Math.Abs((drawn / whole) - ((decimal)seconds / shares.Total.Value)) > Tolerance;
    }
}
