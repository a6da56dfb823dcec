using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class ProsePlaceholderWrong : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice)
    {
        var translated = practice.Translations.OfType<Translation.OfExercise>().ToLookup(t => t.Exercise, t => t.Text);
        return from exercise in practice.Exercises
            where exercise.Dose.Dose is not null
            from text in translated[exercise.Id].Prepend(exercise.Text)
            from prose in text.Instructions.Prepend(text.Why)
            from placeholder in prose.Inlines().OfType<Inline.Placeholder>()
            let finding = Judged(exercise, placeholder)
            where finding is not null
            select finding;
    }

    private Finding? Judged(Exercise exercise, Inline.Placeholder placeholder)
    {
        if (exercise.Dose.Dose is not { } dose)
            return null;
        if (placeholder.Name == EmergencyNumber.Placeholder)
            return null;
        if (!PlaceholderNames.All.Contains(placeholder.Name, StringComparer.Ordinal))
            return Said(
                $"'{{{placeholder.Name}}}' is not a placeholder.",
                PlaceholderNames.Meant(placeholder.Name) is { } meant
                    ? $"Did you mean {{{meant}}}?"
                    : $"The placeholders are: {string.Join(", ", PlaceholderNames.All.Select(n => $"{{{n}}}"))}."
            );
        return Placeholders.In(dose, placeholder.Name).Count() switch
        {
            0 when placeholder.Name == "side" => null,
            0 => Said(
                $"'{{{placeholder.Name}}}' names nothing in the dose '{exercise.Dose.Line}'.",
                "Write a placeholder for something that the dose has, or say it without a number."
            ),
            1 => null,
            _ => Said(
                $"'{{{placeholder.Name}}}' names more than one thing in the dose '{exercise.Dose.Line}'.",
                "Say it without a number; the week table and the step list carry the figures."
            ),
        };

        Finding Said(string message, string help) =>
            this.Found(Level.Error, null, placeholder.At, message, help, placeholder.Name.Length + 2);
    }
}
