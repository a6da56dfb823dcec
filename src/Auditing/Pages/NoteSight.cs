using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>Looks for the note that says who must leave an exercise out: the exercise's title, and below it each sentence of the note as a
/// line of its own.</summary>
internal static class NoteSight
{
    public static Sighting Of(Duty duty, PlannedExercise exercise)
    {
        var what = $"the note of who must leave out '{exercise.Title}'";
        var shown = duty.Page.Shown;
        var places = Enumerable.Range(0, shown.Count).Where(i => IsNote(shown, i, exercise)).ToArray();
        if (places.Length > 0)
        {
            return places[0] < duty.FirstInstruction
                ? new Sighting.InPlace(what, shown[places[0]].At)
                : new Sighting.After(what, shown[duty.FirstInstruction].Text, shown[places[0]].At);
        }

        var all = duty.Page.Lines;
        var hidden = Enumerable.Range(0, all.Count).FirstOrDefault(i => all[i].HiddenBy is not null && IsNote(all, i, exercise), -1);
        return hidden >= 0
            ? new Sighting.Hidden(what, all[hidden].HiddenBy ?? "", all[hidden].At)
            : new Sighting.Missing(what, Location.Whole(duty.Page.Path));
    }

    private static bool IsNote(Series<TextLine> lines, int at, PlannedExercise exercise) =>
        lines[at].Text == exercise.Title
        && exercise.Notes.Index().All(note => at + 1 + note.Index < lines.Count && lines[at + 1 + note.Index].Text == note.Item);
}
