using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class DemandUnmeasured : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from judged in ClientRanges.Of(practice, client, training, today) is { Series.Count: > 0 } ranges ? ranges.Demands : []
        where judged.Open == DemandOpen.NotMeasured
        let name = MeasureTexts.NameOf(judged.Measure.Motion, judged.Side)
        select this.Found(
            Level.Note,
            client.Id,
            judged.Demand.At,
            $"'{judged.Demand.Position}' asks for {MeasureTexts.InUnit(judged.Demand.AtLeast, judged.Measure.Motion)} of "
                + $"{judged.Demand.Motion}, and {client.Name}'s {name} was never measured, "
                + $"{MeasureTexts.WordOf(judged.Demand.Mode)}.",
            $"Measure it, and write it in readings.csv.{practice.HowToMeasure(judged.Measure.Motion)}"
        );
}
