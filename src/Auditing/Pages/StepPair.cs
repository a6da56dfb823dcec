using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>One step as a page shows it, beside what the plan says of it.</summary>
/// <param name="Expected">All that the item must say.</param>
/// <param name="OtherSide">The word for a side that the item has and the plan does not; null where there is none.</param>
internal sealed record StepPair(StepSeen Seen, Step Step, string Expected, string? OtherSide)
{
    /// <summary>The steps of every list that has as many of them as the plan; where it has not, nobody can say which is
    /// which.</summary>
    public static IEnumerable<StepPair> Of(Plan plan, SiteSeen site)
    {
        var sides = SidesIn(plan);
        return from session in plan.Sessions
            let page = site.Page(session.Path)
            where page is not null
            from weeks in session.Weeks
            from list in page.Lists
            where list.Heading == weeks.Heading && list.Items.Count == weeks.Steps.Count
            from pair in list.Items.Zip(weeks.Steps)
            let expected = ExpectedOf(pair.Second, plan.Words)
            select new StepPair(pair.First, pair.Second, expected, OtherSideIn(pair.First.Text, expected, sides));
    }

    private static string? OtherSideIn(string text, string expected, Series<string> sides) =>
        text == expected ? null : sides.FirstOrDefault(side => CountOf(side, text) > CountOf(side, expected));

    private static string ExpectedOf(Step step, Words words) =>
        Spacing.Collapse($"{step.Words} {step.Detail} {words.ShortSpan(step.Seconds)}");

    /// <summary>Every word for a side: those of the language, limb or not, and the names that the client's sports have for
    /// them.</summary>
    private static Series<string> SidesIn(Plan plan)
    {
        var limbs = new[] { "leg", "arm", "trunk" };
        var spoken = new[] { Side.Left, Side.Right }
            .SelectMany(side => limbs.Select(limb => $"{side.Word()}-{limb}").Append(side.Word()))
            .Select(key => plan.Words.Say(key));
        return plan
            .Stances.SelectMany(s => s.Roles)
            .Select(r => r.Role)
            .Concat(spoken)
            .Distinct(StringComparer.Ordinal)
            .OrderByDescending(w => w.Length)
            .ThenBy(w => w, StringComparer.Ordinal)
            .ToSeries();
    }

    private static int CountOf(string side, string text) =>
        WholeWords.Places(text, side, StringComparison.OrdinalIgnoreCase).Count();
}
