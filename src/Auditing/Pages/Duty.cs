using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a page must carry: it tells somebody to do these exercises.</summary>
/// <param name="FirstInstruction">How many of the shown lines stand before the first line that tells somebody to move, shown to everybody or
/// only to some; all of them where none does.</param>
/// <param name="Instruction">That line; empty where there is none.</param>
/// <param name="Exercises">In the order of the plan.</param>
internal sealed record Duty(PageReading Page, int FirstInstruction, string Instruction, Series<PlannedExercise> Exercises)
{
    /// <summary>The duty of every page that has one. Before-you-start carries every caution, whether or not it tells somebody to move.</summary>
    public static IEnumerable<Duty> Of(Plan plan, SiteReading site)
    {
        var orders = Orders(plan);
        foreach (var page in site.Pages)
        {
            var text = new PageText(page);
            var found = orders.Select(o => (o.Exercise, Line: text.Find(o.Text))).Where(f => f.Line is not null).ToArray();
            var first = found.Select(f => f.Line ?? 0).DefaultIfEmpty(page.Lines.Count).Min();
            var told = found.Select(f => f.Exercise).Concat(MustBe(plan, page.Path)).ToHashSet();
            if (told.Count == 0) continue;
            var before = page.Lines.Take(first).Count(l => l.HiddenBy is null);
            yield return new(page, before, first < page.Lines.Count ? page.Lines[first].Text : "", plan.Exercises.Where(e => told.Contains(e.Id)).ToSeries());
        }
    }

    /// <summary>Every text that tells somebody to move, with the exercise it is about.</summary>
    private static List<(string Text, ExerciseId Exercise)> Orders(Plan plan)
    {
        var orders = new HashSet<(string, ExerciseId)>();
        foreach (var exercise in plan.Exercises)
        {
            foreach (var text in exercise.Uses.Select(u => u.Text).Prepend(exercise.Text))
                orders.UnionWith(text.Instructions.SelectMany(p => p.Lines()).Select(line => (line, exercise.Id)));
            orders.UnionWith(exercise.Uses.SelectMany(u => u.Doses).Select(d => (d.Words, exercise.Id)));
        }

        foreach (var step in plan.Sessions.SelectMany(s => s.Weeks).SelectMany(w => w.Steps)) orders.Add((step.Words, step.Exercise));
        return [.. orders];
    }

    private static IEnumerable<ExerciseId> MustBe(Plan plan, string path) =>
        path == Plan.BeforeYouStartPath ? plan.Exercises.Select(e => e.Id)
        : plan.Sessions.FirstOrDefault(s => s.Path == path)?.Exercises
        ?? plan.Exercises.Where(e => e.Path == path).Select(e => e.Id);
}
