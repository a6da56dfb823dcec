using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class GainWithoutControl : ICountingRule
{
    /// <summary>Weeks of gaining after which something should be done with what is gained; common practice, no source.</summary>
    private const int Weeks = 4;

    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from trained in Trained.Of(client, training).GroupBy(t => (t.Motion, t.Side))
        let gain = trained.Where(t => t.Stage == Stage.Gain).MaxBy(t => t.Until - t.From)
        where gain is not null && gain.Until - gain.From + 1 >= Weeks && trained.All(t => t.Stage is Stage.Prepare or Stage.Gain)
        group trained.Key.Side by (trained.Key.Motion, gain.Use) into sides
        select this.Found(
            Level.Note,
            client.Id,
            sides.Key.Use.At,
            $"'{practice.TitleOf(sides.Key.Use)}' stretches {Trained.Named(sides.Key.Motion, sides)} for {Weeks} weeks or "
                + "longer, but nothing strengthens or controls it.",
            "Add an exercise of the stage strengthen, control or load for it, now or in the next programme.",
            sides.Key.Use.Exercise.Id.Text.Length
        );
}
