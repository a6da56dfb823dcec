using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class PainWhereLoaded : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        if (client.AnswerTo(AlwaysAsked.PainNow)?.Reply is not Reply.Pains pains)
            return [];
        var (easeOff, stop) = (practice.Card.Settings.EaseOffAbove, practice.Card.Settings.StopAbove);
        return from use in training.Uses
            where use.Weeks.Count > 0
            from pain in pains.Places
            where pain.Level > easeOff && pain.Level <= stop && use.Bears(pain.Where, pain.Side)
            where !use.Against.OfType<Objection.Painful>().Any(p => p.Pain == pain)
            select this.Found(
                Level.Warning,
                client.Id,
                use.At,
                $"'{practice.TitleOf(use)}' loads the {pain.Where.On(pain.Side)}, where "
                    + $"{client.Name} has pain of {pain.Level} out of 10.",
                $"Up to {easeOff} is trained with, up to {stop} only if it has settled by the next morning: ask how it "
                    + "was, and begin with less.",
                use.Exercise.Id.Text.Length
            );
    }
}
