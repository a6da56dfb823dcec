using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class RestrictionBroken : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        from breach in use.Restricted
        let restriction = breach.Restriction.Value
        select this.Found(
            Level.Error,
            client.Id,
            use.At,
            $"'{practice.TitleOf(use)}' does not keep, in week {breach.Week.Week}, to what {restriction.By} asked for on "
                + $"{restriction.On.Iso()}: {restriction.Place}: {breach.Limit?.Words ?? "not at all"}, until "
                + $"{restriction.Until.Iso()}.",
            breach.Limit is null
                ? "Take it out, or choose an exercise that spares this place. Who asked may also lift it: then correct the "
                    + "entry under 'restrictions'."
                : $"Write a dose within the limit; it is now '{breach.Week.Dose}'.{use.LastWithin(breach.Week)}",
            use.Exercise.Id.Text.Length
        );
}
