namespace Gradus.Domain;

public static class CautionsOfExercise
{
    /// <summary>The cautions an exercise carries for a client: those it names itself and those that attach to it, worst first,
    /// then by id, each once. A caution that is named but could not be read is among them, so that nobody takes its absence for
    /// safety.</summary>
    public static Series<CautionId> CautionsOf(this Practice practice, Exercise exercise, Client client) =>
        exercise
            .Signs.Select(s => s.Value)
            .Concat(practice.Cautions.Where(c => c.AttachesTo is { } to && to.Fits(exercise, client)).Select(c => c.Id))
            .Distinct()
            .OrderBy(id => practice.Find(id)?.Kind ?? CautionKind.Stop)
            .ThenBy(id => id.Text, StringComparer.Ordinal)
            .ToSeries();
}
