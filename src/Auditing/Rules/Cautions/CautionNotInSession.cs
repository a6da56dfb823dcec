using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class CautionNotInSession : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        from session in plan.Sessions
        let page = site.Page(session.Path)
        where page is not null
        from guide in page.Guides
        from finding in Missing(plan, site.Asked(plan), session, guide)
        select finding;

    private static IEnumerable<Finding> Missing(Plan plan, PlanAnswers answers, PlannedSession session, GuideSeen guide)
    {
        var signs = answers.SignsOn(session.Path, session.Exercises);
        foreach (var caution in signs.Kinds.SelectMany(k => k.Signs).Where(s => !Holds(guide.Before, s)).Select(s => s.Caution))
            yield return Said(
                plan,
                guide,
                $"Who is led through this session does not get \"{caution.Title}\" to read before the start.",
                $"Let the first element of the class '{PageClass.Cautions}' hold every caution of the session; the guided "
                    + "session begins below that one."
            );
        foreach (
            var note in signs.Notes.Concat(signs.Pain is { } pain ? [pain] : []).Where(n => !n.Lines().All(guide.Before.Contains))
        )
            yield return Said(
                plan,
                guide,
                $"Who is led through this session does not get the note \"{note.Title}\" to read before the start.",
                $"Let the first element of the class '{PageClass.Cautions}' hold every note of the session; the guided session "
                    + "begins below that one."
            );
        foreach (var exercise in session.Exercises)
        {
            var during = string.Join('\n', guide.During.Where(d => d.Exercise == exercise.Text).SelectMany(d => d.Lines));
            foreach (
                var kind in answers
                    .SignsOn(session.Path, [exercise])
                    .Kinds.Where(k => !during.Contains(k.Names(plan.Words), StringComparison.Ordinal))
            )
                yield return Said(
                    plan,
                    guide,
                    $"Who is led through this session does not get \"{kind.Names(plan.Words)}\" during "
                        + $"'{plan.Exercise(exercise).Title}'.",
                    $"Let the article with {PageData.About}=\"{exercise}\" hold the names of its cautions; the guided session "
                        + "shows that article beside its steps."
                );
        }
    }

    private static bool Holds(Series<string> lines, PageSign sign) => sign.Lines().All(lines.Contains);

    private static Finding Said(Plan plan, GuideSeen guide, string message, string help) =>
        new(RuleId.Of(typeof(CautionNotInSession)), Level.Error, plan.Client, guide.At, message, help);
}
