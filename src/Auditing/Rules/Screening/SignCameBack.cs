using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class SignCameBack : IObjectionRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (client.SignFor(AlwaysAsked.Symptoms) is not { } sign)
            yield break;
        var isCleared = client.Clearances.Any(c => c.Condition == AlwaysAsked.Symptoms && c.On > sign.Day);
        if (isCleared && client.Answered > sign.Day)
            yield break;
        yield return this.Found(
            Level.Error,
            client.Id,
            sign.At,
            $"{client.Name} told of {ReturnWords.SignOf(sign)} on {sign.Day.Iso()}, which counts as a yes to signs or symptoms "
                + $"whatever was answered on {client.Answered.Iso()}, and "
                + (isCleared ? "nobody has asked again since." : "no clinician's leave is dated after that day."),
            "Send nothing, no easier session either. "
                + (
                    isCleared
                        ? ""
                        : "Write the leave of a clinician under 'clearances' in client.yaml, dated after that day; then "
                )
                + (isCleared ? "Ask" : "ask")
                + " again, and write the new date under 'answered'."
                + CameBackSentences.Guardian(client)
                + CameBackSentences.Clock(sign, today)
        );
    }
}
