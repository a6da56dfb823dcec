using System.Globalization;
using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class RestrictionBroken : IStoppingRule
{
    /// <summary>Once for what was asked for and each of its limits, at the first use that does not keep to it.</summary>
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from broken in training.Uses.SelectMany(use => use.Restricted.Select(breach => (use, breach)))
        group broken by (broken.breach.Restriction.Value, broken.breach.Limit) into same
        let uses = same.DistinctBy(s => s.use.At).ToArray()
        select Said(practice, client, uses[0].use, uses[0].breach, uses.Skip(1).Select(u => u.use).ToArray());

    private Finding Said(Practice practice, Client client, Use use, RestrictionBreach breach, Use[] others)
    {
        var restriction = breach.Restriction.Value;
        return this.Found(
            Level.Error,
            client.Id,
            use.At,
            $"'{practice.TitleOf(use)}' does not keep, in week {breach.Week.Week}, to what {restriction.By} asked for on "
                + $"{restriction.On.Iso()}: {restriction.Place}: {breach.Limit?.Words ?? "not at all"}, until "
                + $"{restriction.Until.Iso()}.{More(practice, others)}",
            breach.Limit is null
                ? "Take it out, or choose an exercise that spares this place. Who asked may also lift it: then correct the "
                    + "entry under 'restrictions'."
                : $"Write a dose within the limit; it is now '{breach.Week.Dose}'.{use.LastWithin(breach.Week)}",
            use.Exercise.Id.Text.Length
        );
    }

    private static string More(Practice practice, Use[] others) =>
        others.Length == 0
            ? ""
            : string.Create(
                CultureInfo.InvariantCulture,
                $" Nor {(others.Length == 1 ? "does 1 more use" : $"do {others.Length} more uses")}: "
                    + $"{string.Join(", ", others.Select(u => $"'{practice.TitleOf(u)}'").Distinct(StringComparer.Ordinal))}."
            );
}
