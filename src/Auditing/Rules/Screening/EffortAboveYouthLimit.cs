using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class EffortAboveYouthLimit : IStoppingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        let beyond = Hardness.BeyondYouthLimit(practice, client, use)
        where beyond is not null
        let most = practice.Card.Settings.YouthEffort
        select this.Found(
            Level.Error,
            client.Id,
            use.At,
            $"{client.Name} is under 18, and this practice asks for {most} % of the hardest at most; "
                + $"'{practice.TitleOf(use)}' asks for more in week {beyond.Week}, or does not say how hard it is.",
            $"Write a dose with an effort of {most} % at most; it is now '{beyond.Dose}'.{use.LastWithin(beyond)}",
            use.Exercise.Id.Text.Length
        );
}
