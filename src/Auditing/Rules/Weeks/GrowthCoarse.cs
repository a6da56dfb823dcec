using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class GrowthCoarse : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        from growth in use.Growth
        where growth.Coarse.Count > 0
        let step = growth.Coarse.MaxBy(c => c.Percent)
        select this.Found(
            Level.Note,
            client.Id,
            use.At,
            $"'{practice.TitleOf(use)}': {GrowthSentences.Coarse(use.DoseIn(step.From), use.DoseIn(step.To), step.Percent)}",
            GrowthSentences.CoarseHelp,
            use.Exercise.Id.Text.Length
        );
}
