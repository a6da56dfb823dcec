using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ExerciseUnused : IPracticeRule, IWholeRule
{
    public IEnumerable<Finding> Check(Practice practice)
    {
        if (practice.Clients.Count == 0)
            return [];
        var used = practice
            .Clients.SelectMany(c => c.Programme.Sessions.Concat(c.Programme.Alternates))
            .SelectMany(s => s.Do)
            .Select(u => u.Exercise.Value)
            .ToHashSet();
        var versions = practice.Exercises.Where(e => used.Contains(e.Id)).SelectMany(VersionsOf).ToHashSet();
        return from exercise in practice.Exercises
            where !used.Contains(exercise.Id) && !versions.Contains(exercise.Id) && !VersionsOf(exercise).Any(used.Contains)
            select this.Found(
                Level.Note,
                null,
                exercise.At,
                $"No programme uses '{exercise.Title}', and it is no easier or harder version of one that is used.",
                "Keep it if you will want it; else link it to its easier or harder version, or take its file away."
            );
    }

    private static IEnumerable<ExerciseId> VersionsOf(Exercise exercise) =>
        new[] { exercise.Easier, exercise.Harder }.OfType<Mention<ExerciseId>>().Select(m => m.Value);
}
