using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>A new exercise with the signs and the condition that the practice's exercises name most, so that none begins
/// without.</summary>
internal static class NewExercise
{
    /// <exception cref="IOException">The practice has no sign to stop for, or none to expect.</exception>
    public static string Text(ExerciseId id, Practice practice)
    {
        var named = practice.Exercises.SelectMany(e => e.Signs).Select(s => s.Value).ToSeries();
        var stop = Sign(practice, named, CautionKind.Stop)
            ?? throw Lacking("caution whose kind is stop", "Write one first: gradus new caution ID.");
        var expect = Sign(practice, named, CautionKind.Expect)
            ?? throw Lacking("caution whose kind is expect", "Write one first: gradus new caution ID.");
        var conditions = practice.Exercises.SelectMany(e => e.NotWith).Select(c => c.Value).ToSeries();
        var condition = MostNamed(practice.Conditions.Select(c => c.Id).Where(AlwaysAsked.MayForbid), conditions)
            ?? throw new InvalidOperationException("Everybody is asked something.");
        var other = practice.Exercises.Count > 0 ? practice.Exercises[0].Id.Text : "another-exercise";
        return StarterFiles.Text(
            "new/exercise.md",
            ("title", StarterFiles.Title(id.Text)),
            ("expect", expect.Text),
            ("stop", stop.Text),
            ("condition", condition.Text),
            ("other", other)
        );
    }

    private static IOException Lacking(string what, string remedy) =>
        new($"This practice has no {what}, and an exercise must name one. {remedy}");

    private static CautionId? Sign(Practice practice, Series<CautionId> named, CautionKind kind) =>
        MostNamed(practice.Cautions.Where(c => c.Kind == kind).Select(c => c.Id), named);

    /// <summary>Of equals, the first.</summary>
    private static T? MostNamed<T>(IEnumerable<T> all, Series<T> named)
        where T : class => all.MaxBy(id => named.Count(n => n.Equals(id)));
}
