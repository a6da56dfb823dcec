using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class GrowthUnfinished : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        from growth in use.Growth
        where !growth.IsFinished && growth.FullWeeks.Count > 0
        select this.Found(
            Level.Note,
            client.Id,
            use.At,
            GrowthSentences.Unfinished(
                $"'{practice.TitleOf(use)}'",
                growth.FullWeeks.Count,
                growth.Need,
                use.DoseIn(growth.FullWeeks[0]),
                use.DoseIn(growth.FullWeeks[^1]),
                practice.Card.Settings.GrowAtMost
            ),
            GrowthSentences.UnfinishedHelp,
            use.Exercise.Id.Text.Length
        );
}
