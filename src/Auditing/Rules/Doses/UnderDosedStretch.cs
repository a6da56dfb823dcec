using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class UnderDosedStretch : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var settings = practice.Card.Settings;
        return from use in training.Uses
            where use.Exercise.Stage == Stage.Gain && use.Session <= client.Programme.Sessions.Count && use.Weeks.Count > 0
            let most = use.Weeks.Max(w => w.BySide.Max(s => s.Work.StretchSeconds))
            where most > Seconds.Zero && most < settings.StretchTarget
            select this.Found(
                Level.Note,
                client.Id,
                use.At,
                $"'{practice.TitleOf(use)}' never stretches a side longer than {most} in a session; this practice aims at "
                    + $"{settings.StretchTarget}.",
                $"Give it more sets or longer holds in the later weeks. {DoseReferences.StretchInASession.Cited}; "
                    + "'stretch-target' in practice.md changes the aim.",
                use.Exercise.Id.Text.Length
            );
    }
}
