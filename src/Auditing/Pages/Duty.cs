using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>What a page must carry: it tells somebody to do these exercises.</summary>
/// <param name="FirstInstruction">How many of the shown lines stand before the first line that tells somebody to move, shown to
/// everybody or only to some; all of them where none does.</param>
/// <param name="Instruction">That line; empty where there is none.</param>
/// <param name="Exercises">In the order of the plan.</param>
internal sealed record Duty(PageSeen Page, int FirstInstruction, string Instruction, Series<PlannedExercise> Exercises)
{
    /// <summary>The duty of every page that has one. Before-you-start carries every caution, whether or not it tells somebody to
    /// move. What tells somebody to move is known by its place in the plan, never by its words: "Rest." may stand
    /// anywhere.</summary>
    public static IEnumerable<Duty> Of(Plan plan, SiteSeen site)
    {
        foreach (var page in site.Pages)
        {
            var told = MustBe(plan, page.Path, site.IsInOne).ToHashSet();
            var first = page.Lines.Count;
            foreach (var (line, text) in page.Spoken.Planned)
                if (text.Moves is { } exercise)
                {
                    told.Add(exercise);
                    first = Math.Min(first, line);
                }

            if (told.Count == 0)
                continue;
            yield return new(
                page,
                page.Lines.Take(first).Count(l => l.HiddenBy is null),
                first < page.Lines.Count ? page.Lines[first].Text : "",
                plan.Exercises.Where(e => told.Contains(e.Id)).ToSeries()
            );
        }
    }

    /// <summary>What it must say before it tells anybody to move.</summary>
    public PageSigns Signs(PlanAnswers answers) => answers.SignsOn(Page.Path, Exercises.Select(e => e.Id));

    /// <summary>What it is about. Where it stands in one file with the sessions, an exercise tells nobody to move as long as it
    /// leaves that to them.</summary>
    private static IEnumerable<ExerciseId> MustBe(Plan plan, string path, bool inOne) =>
        path == PagePath.BeforeYouStart
            ? plan.Exercises.Select(e => e.Id)
            : plan.Sessions.FirstOrDefault(s => s.Path == path)?.Exercises
                ?? plan.Exercises.Where(e => e.Path == path && !inOne).Select(e => e.Id);
}
