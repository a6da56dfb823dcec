using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class EquipmentMissing : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        from thing in use.Exercise.Equipment
        where !client.Equipment.Contains(thing, StringComparer.Ordinal)
        group use by thing into needed
        let use = needed.First()
        select this.Found(
            Level.Warning,
            client.Id,
            use.At,
            $"'{practice.TitleOf(use)}' needs '{needed.Key}', which is not among what {client.Name} has.",
            Nearest.To(needed.Key, client.Equipment) is { } near
                ? $"If it is what client.yaml calls '{near}', write both in the same words."
                : "Add it to 'equipment' in client.yaml if it is there, or choose another exercise.",
            use.Exercise.Id.Text.Length
        );
}
