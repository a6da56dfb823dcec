using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class EquipmentInNoExercise : IPracticeRule, IWholeRule
{
    public IEnumerable<Finding> Check(Practice practice)
    {
        var things = practice.Exercises.SelectMany(e => e.Equipment).Distinct().Order(StringComparer.Ordinal).ToArray();
        return from caution in practice.Cautions
            let thing = caution.AttachesTo?.Equipment
            where thing is not null && !things.Contains(thing.Value, StringComparer.Ordinal)
            select this.Found(
                Level.Warning,
                null,
                thing.At,
                $"'{caution.Title}' attaches to what is done with '{thing.Value}', and no exercise has that under 'equipment'.",
                Nearest.Ask(
                    thing.Value,
                    things,
                    "Write it in the very words of the exercises that need it, or take it out here until one does."
                ),
                thing.Value.Length
            );
    }
}
