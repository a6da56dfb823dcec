using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Looks for the note that says who must leave an exercise out: the exercise's title, and below it each sentence of the
/// note as a line of its own.</summary>
internal static class NoteSight
{
    public static Sighting Of(Duty duty, PlannedExercise exercise)
    {
        var what = $"the note of who must leave out '{exercise.Title}'";
        var (all, shown) = (duty.Page.Lines, duty.Page.Shown);
        var places = PlacesIn(shown, exercise).ToArray();
        if (places.Length > 0)
            return places[0] < duty.FirstInstruction
                ? new Sighting.InPlace(what, shown[places[0]].At)
                : new Sighting.After(what, duty.Instruction, shown[places[0]].At);
        foreach (var at in PlacesIn(all, exercise))
            if (all.Skip(at).Take(exercise.Notes.Count + 1).FirstOrDefault(l => l.HiddenBy is not null) is { } hidden)
                return new Sighting.Hidden(what, hidden.HiddenBy ?? "", hidden.At);
        foreach (var (at, line) in shown.Index())
            if (Lost(shown, at, exercise) is { } lost)
                return new Sighting.Altered(what, $"the sentence \"{lost}\" is missing or other", line.At);
        return new Sighting.Missing(what, duty.Page.At);
    }

    private static IEnumerable<int> PlacesIn(Series<TextLine> lines, PlannedExercise exercise) =>
        Enumerable
            .Range(0, lines.Count)
            .Where(at =>
                lines[at].Text == exercise.Title && exercise.Notes.Index().All(note => Below(lines, at, note.Index) == note.Item)
            );

    private static string Below(Series<TextLine> lines, int title, int note) =>
        title + 1 + note < lines.Count ? lines[title + 1 + note].Text : "";

    /// <summary>The first sentence of the note that is other at that place; null where the note does not seem to be meant
    /// there.</summary>
    private static string? Lost(Series<TextLine> lines, int at, PlannedExercise exercise)
    {
        const int likeness = 12;
        var meant =
            lines[at].Text == exercise.Title
            && exercise.Notes.Any(n =>
                Below(lines, at, 0).StartsWith(n[..Math.Min(likeness, n.Length)], StringComparison.Ordinal)
            );
        return meant ? exercise.Notes.Index().FirstOrDefault(note => Below(lines, at, note.Index) != note.Item).Item : null;
    }
}
