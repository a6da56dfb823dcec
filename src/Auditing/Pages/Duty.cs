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
    /// move.</summary>
    public static IEnumerable<Duty> Of(Plan plan, SiteSeen site)
    {
        var orders = Orders(plan);
        foreach (var page in site.Pages)
        {
            var text = new PageText(page);
            var found = orders.Select(o => (About: o.Value, Line: text.Find(o.Key))).Where(f => f.Line is not null).ToArray();
            var first = found.Select(f => f.Line ?? 0).DefaultIfEmpty(page.Lines.Count).Min();
            var told = Told(found.Select(f => f.About), MustBe(plan, page.Path));
            if (told.Count == 0)
                continue;
            var before = page.Lines.Take(first).Count(l => l.HiddenBy is null);
            yield return new(
                page,
                before,
                first < page.Lines.Count ? page.Lines[first].Text : "",
                plan.Exercises.Where(e => told.Contains(e.Id)).ToSeries()
            );
        }
    }

    /// <summary>The exercises that a page tells somebody to do. A line that several exercises share speaks of those that the page
    /// is about anyway, and of all of them where it is about none.</summary>
    private static HashSet<ExerciseId> Told(IEnumerable<HashSet<ExerciseId>> found, IEnumerable<ExerciseId> mustBe)
    {
        var told = mustBe.ToHashSet();
        foreach (var about in found.OrderBy(about => about.Count))
            if (!about.Overlaps(told))
                told.UnionWith(about);
        return told;
    }

    /// <summary>Every text that tells somebody to move, with the exercises it is about.</summary>
    private static Dictionary<string, HashSet<ExerciseId>> Orders(Plan plan)
    {
        var orders = new Dictionary<string, HashSet<ExerciseId>>(StringComparer.Ordinal);
        foreach (var exercise in plan.Exercises)
        {
            foreach (
                var line in exercise
                    .Uses.Select(u => u.Text)
                    .Prepend(exercise.Text)
                    .SelectMany(t => t.Instructions)
                    .SelectMany(p => p.Lines())
            )
                Add(line, exercise.Id);
            foreach (var dose in exercise.Uses.SelectMany(u => u.Doses))
                Add(dose.Words, exercise.Id);
        }

        foreach (var step in plan.Sessions.SelectMany(s => s.Weeks).SelectMany(w => w.Steps))
            Add(step.Words, step.Exercise);
        return orders;

        void Add(string text, ExerciseId exercise)
        {
            if (!orders.TryGetValue(text, out var about))
                orders[text] = about = [];
            about.Add(exercise);
        }
    }

    private static IEnumerable<ExerciseId> MustBe(Plan plan, string path) =>
        path == PagePath.BeforeYouStart
            ? plan.Exercises.Select(e => e.Id)
            : plan.Sessions.FirstOrDefault(s => s.Path == path)?.Exercises
                ?? plan.Exercises.Where(e => e.Path == path).Select(e => e.Id);
}
