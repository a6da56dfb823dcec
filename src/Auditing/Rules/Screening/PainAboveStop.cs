using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class PainAboveStop : IObjectionRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var stop = practice.Card.Settings.StopAbove;
        if (client.AnswerTo(AlwaysAsked.PainNow) is not { Reply: Reply.Pains pains } answer)
            return [];
        return from pain in pains.Places
            where pain.Level > stop
            select this.Found(
                Level.Error,
                client.Id,
                answer.At,
                $"{client.Name} has pain of {pain.Level} out of 10 in the {pain.Where.On(pain.Side)}, and this practice trains "
                    + $"nobody with more than {stop}, whatever an exercise loads.",
                "Send nothing. Ask what it is, send the person to a clinician where nobody knows, and write the new answer "
                    + "when it is less."
            );
    }
}
