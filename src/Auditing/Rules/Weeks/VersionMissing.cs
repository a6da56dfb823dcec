using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class VersionMissing : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in client.Programme.Sessions.Concat(client.Programme.Alternates).SelectMany(s => s.Do)
        let exercise = practice.Find(use.Exercise.Value)
        where exercise is not null
        from version in use.Versions
        let word = version.Version == ExerciseVersion.Easier ? "easier" : "harder"
        where (word == "easier" ? exercise.Easier : exercise.Harder) is null
        select this.Found(
            Level.Error,
            client.Id,
            version.At,
            $"Week {version.Week} takes the {word} version of '{exercise.Title}', which has none.",
            $"Name one under '{word}' in {exercise.At.File}, or write a dose for that week."
        );
}
