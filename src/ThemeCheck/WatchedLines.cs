using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.ThemeCheck;

/// <summary>Plan → what must be seen on a page: lines in order, in groups that a theme may arrange as it likes.</summary>
internal static class WatchedLines
{
    /// <summary>Each group in the order in which it is read.</summary>
    public static Series<Series<string>> On(Plan plan, string path) =>
        Groups(plan, path).Append([Prose.PlainOf(plan.Emergency.Sentence)]).Where(g => g.Count > 0).ToSeries();

    private static IEnumerable<Series<string>> Groups(Plan plan, string path)
    {
        if (path == PagePath.AllPages)
            return new[] { PagePath.Home, plan.Sessions[0].Path, plan.Sessions[^1].Path }
                .Distinct(StringComparer.Ordinal)
                .SelectMany(page => Groups(plan, page));
        if (path == PagePath.Home)
            return
            [
                plan.Stances.SelectMany(s => s.Sentences).ToSeries(),
                plan.Cautions.Where(c => c.Kind == CautionKind.Stop).Select(c => c.Title).ToSeries(),
            ];
        if (path == PagePath.BeforeYouStart)
            return [Cautions(plan, path, plan.Exercises.Select(e => e.Id)).ToSeries()];
        if (plan.Sessions.FirstOrDefault(s => s.Path == path) is { } session)
            return [Cautions(plan, path, session.Exercises).Concat(First(session.Uses[0].Text)).ToSeries()];
        return plan.Exercises.FirstOrDefault(e => e.Path == path) is { } exercise
            ? [Cautions(plan, path, [exercise.Id]).Concat(First(exercise.Text)).ToSeries()]
            : [];
    }

    /// <summary>The first line that tells somebody to move, which no caution may stand behind.</summary>
    private static IEnumerable<string> First(ExerciseText text) => text.Instructions.SelectMany(p => p.Lines()).Take(1);

    private static IEnumerable<string> Cautions(Plan plan, string path, IEnumerable<ExerciseId> exercises)
    {
        var signs = plan.SignsOn(path, exercises);
        return signs
            .Kinds.SelectMany(k => k.Signs)
            .SelectMany(s => s.Caution.Lines())
            .Concat(signs.Pain is { } pain ? pain.Lines() : [])
            .Concat(signs.Notes.SelectMany(n => n.Lines()));
    }
}
