using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class PlanWordsAltered : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        plan
            .Exercises.SelectMany(e => Missing(plan, site.Page(e.Path), e.Uses.SelectMany(OfUse)))
            .Concat(plan.Sessions.SelectMany(s => Missing(plan, site.Page(s.Path), OfSession(s))))
            .Concat(Missing(plan, site.Page(PagePath.Weeks), OfWeeks(plan)));

    /// <summary>Of a session that may be chosen, also in place of which one: who does both does too much.</summary>
    private static IEnumerable<string> OfSession(PlannedSession session) =>
        (session.InsteadOf is null ? [] : new[] { session.Days }).Concat(session.Uses.SelectMany(u => u.Notes.Concat(u.MoveOn)));

    private static IEnumerable<string> OfUse(PlannedUse use) =>
        use.Notes.Concat(use.MoveOn).Concat(use.Doses.SelectMany(d => new[] { d.Words, d.Change }));

    private static IEnumerable<string> OfWeeks(Plan plan) =>
        plan
            .Weeks.SelectMany(w => w.Sessions.SelectMany(s => new[] { s.Name, s.When }).Prepend(w.Heading))
            .Concat(plan.Programme.MoveOn.SelectMany(c => c.Conditions.Prepend(c.Heading)));

    /// <summary>The first of those texts that does not stand on the page behind the one before it.</summary>
    private IEnumerable<Finding> Missing(Plan plan, PageSeen? page, IEnumerable<string> texts)
    {
        if (page is null)
            yield break;
        var (line, place) = (0, 0);
        foreach (var text in texts.Select(Spacing.Collapse))
        {
            if (Next(page.Shown, text, line, place) is { } found)
            {
                (line, place) = found;
                continue;
            }

            var at = line < page.Shown.Count ? page.Shown[line].At : page.At;
            yield return this.Found(
                Level.Error,
                plan.Client,
                at,
                $"The plan says \"{text}\" here, and the page does not.",
                "Show what the plan says of every dose, week and session, in its order and in its own words."
            );
            yield break;
        }
    }

    private static (int Line, int Place)? Next(Series<TextLine> lines, string text, int line, int place)
    {
        for (; line < lines.Count; line++, place = 0)
        {
            foreach (var at in WholeWords.Places(lines[line].Text, text))
                if (at >= place)
                    return (line, at + text.Length);
        }

        return null;
    }
}
