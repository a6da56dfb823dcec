using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>Looks for the note that says who must leave an exercise out: a line with every condition's name, and in it or just above it the
/// name of the exercise.</summary>
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
        exercise.Contraindications.All(c => lines[at].Text.Contains(c, StringComparison.Ordinal))
        && (lines[at].Text.Contains(exercise.Title, StringComparison.Ordinal) || (at > 0 && lines[at - 1].Text.Contains(exercise.Title, StringComparison.Ordinal)));
}
