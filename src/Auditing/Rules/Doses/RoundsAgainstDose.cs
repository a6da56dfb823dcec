using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class RoundsAgainstDose : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        foreach (var use in training.Uses)
        {
            if (use.Written.Rounds is not { } rounds)
                continue;
            var exercise = practice.Of(use.Exercise.Id);
            foreach (var line in use.Version is null ? use.Written.ByWeek : [])
            {
                if (line.Dose.Dose is not { } dose)
                    continue;
                if (dose.Sets.Low != 1 && dose.Sets.Low != rounds.Times)
                    yield return Said(
                        client,
                        line.Dose.At,
                        line.Dose.Line.Length,
                        $"Week {line.Week} of '{exercise.Title}' writes {dose.Sets.Low} sets, but it is done in "
                            + $"{rounds.Times} rounds, one set in each.",
                        "Leave the sets out of the line: the rounds say how many."
                    );
                if (dose.Terms.Rest is not null)
                    yield return Said(
                        client,
                        line.Dose.At,
                        line.Dose.Line.Length,
                        $"Week {line.Week} of '{exercise.Title}' writes a rest, but in rounds the rest is that of "
                            + "the rounds.",
                        "Write it as 'rest' beside 'rounds', or as 'change' for the time between two uses."
                    );
            }

            if (use.Written.ByWeek.Count == 0 && exercise.Dose.Dose is { } allowed && !allowed.Sets.Holds(new(rounds.Times)))
                yield return Said(
                    client,
                    use.At,
                    use.Exercise.Id.Text.Length,
                    $"{rounds.Times} rounds give '{exercise.Title}' {rounds.Times} sets, and it allows {allowed.Sets}.",
                    "Change the rounds, or widen the dose of the exercise if you mean it for everybody."
                );
            var plus =
                exercise.Dose.Dose?.Terms.Plus is not null || use.Written.ByWeek.Any(l => l.Dose.Dose?.Terms.Plus is not null);
            if (plus && use.Written.Side is null)
                yield return Said(
                    client,
                    use.At,
                    use.Exercise.Id.Text.Length,
                    $"'{exercise.Title}' gives one side more sets, and rounds give each side the same.",
                    "Write this use by itself, or a side here, as 'side: each side'."
                );
        }
    }

    private Finding Said(Client client, Location at, int length, string message, string help) =>
        this.Found(Level.Warning, client.Id, at, message, help, length);
}
