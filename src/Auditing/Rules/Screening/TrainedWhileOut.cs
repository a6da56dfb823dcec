using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class TrainedWhileOut : IStoppingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        // Before somebody has asked again nothing is published at all.
        if (ReturnedPains.Unasked(client, training.Rules).Count > 0)
            return [];
        return from pain in ReturnedPains.Out(client, training.Rules, today)
            from use in training.Uses
            where use.Weeks.Count > 0 && pain.Place.IsLoadedBy(use)
            select this.Found(
                Level.Error,
                client.Id,
                use.At,
                $"'{practice.TitleOf(use)}' loads {(pain.Place.Where is null ? pain.Place.ToString() : $"the {pain.Place}")}, "
                    + $"which was worse on the morning after again on {pain.Day.Iso()}: it is out until {Last(pain).Iso()}.",
                "Take it out until then, or send nothing before.",
                use.Exercise.Id.Text.Length
            );
    }

    private static DateOnly Last(ReturnedPain pain) => pain.Day.AddDays(ReturnedPains.OutFor);
}
