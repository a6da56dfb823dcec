using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class StrengthenUnmeasured : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from trained in Trained.Of(client, training)
        where
            trained.Stage == Stage.Strengthen
            && practice.WaysToMeasure(trained.Motion).ToArray() is { Length: > 0 } ways
            && !client.Readings.Any(r => ways.Any(w => w.Motion == r.Motion) && r.Side == trained.Side)
        group trained by trained.Motion into motion
        let use = motion.First().Use
        select this.Found(
            Level.Note,
            client.Id,
            use.At,
            $"'{practice.TitleOf(use)}' makes {Trained.Named(motion.Key, motion.Select(t => t.Side))} strong, and "
                + "readings.csv has no reading of it.",
            "Measure the range before it is loaded, and write the reading down; then the next one can tell whether "
                + $"something came of it.{practice.HowToMeasure(motion.Key)}",
            use.Exercise.Id.Text.Length
        );
}
