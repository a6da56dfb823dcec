using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ControlBeforeGain : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from trained in Trained.Of(client, training).GroupBy(t => (t.Motion, t.Side))
        let gain = trained.Where(t => t.Stage == Stage.Gain).MinBy(t => t.From)
        let control = trained.Where(t => t.Stage is Stage.Control or Stage.Load).MinBy(t => t.From)
        where gain is not null && control is not null && control.From < gain.From
        group trained.Key.Side by (trained.Key.Motion, gain.Use, control.Use, Gain: gain.From, Control: control.From) into sides
        let late = sides.Key
        select this.Found(
            Level.Warning,
            client.Id,
            late.Item3.At,
            $"'{practice.TitleOf(late.Item3)}' controls or loads {Trained.Named(late.Motion, sides)} from week "
                + $"{late.Control}, and '{practice.TitleOf(late.Item2)}' gains it only from week {late.Gain}.",
            "Gain the range first: begin the one earlier or the other later, or accept this if the range is there already.",
            late.Item3.Exercise.Id.Text.Length
        );
}
