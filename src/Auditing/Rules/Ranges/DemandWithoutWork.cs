using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class DemandWithoutWork : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var (ranges, work) = (ClientRanges.Of(practice, client, training, today), PlannedWork.Of(client, training));
        return from judged in ranges.Demands
            where judged.IsShort && !ranges.IsVeryMobile
            where !work.Any(w => w.Stage == Stage.Gain && w.Works(judged.Measure, judged.Side))
            let mark = judged.Mark
            let motion = judged.Measure.Motion
            select this.Found(
                Level.Warning,
                client.Id,
                judged.Demand.At,
                $"{client.Name}'s {MeasureTexts.NameOf(motion, judged.Side)} was "
                    + $"{MeasureTexts.InUnit(mark.Read.Value, motion)} on "
                    + $"{mark.Read.Last.Iso()}, short of what '{judged.Demand.Position}' asks for by about "
                    + $"{MeasureTexts.InUnit(mark.Missing, motion)}, and nothing in the programme gains it.",
                "Choose an exercise of the stage gain for it, now or in the next programme."
            );
    }
}
