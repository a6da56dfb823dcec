using Gradus.Auditing.Sources;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class PropertyWithoutCaution : IPracticeRule, IWholeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        from exercise in practice.Exercises
        from property in exercise.AllProperties
        where !WorkProperty.Descriptive.Contains(property) && !IsMet(practice, exercise, property)
        select this.Found(
            Level.Warning,
            null,
            exercise.At,
            $"'{exercise.Title}' {Said(property)} ({property}), and no caution is there for that.",
            $"Give a caution 'attaches-to: {{ property: {property} "
                + $"}}'{(FollowsFromDose(property) ? ", or name one under 'signs' whose kind is take-care" : "")}."
        );

    /// <summary>A caution attaches by that property; or, where the property follows from the dose, the exercise itself tells what
    /// to take care of.</summary>
    private static bool IsMet(Practice practice, Exercise exercise, string property) =>
        practice.Cautions.Any(c => c.AttachesTo is { } to && to.Property == property && to.Reaches(exercise, practice.Clients))
        || (FollowsFromDose(property) && SignKinds.Has(practice, exercise, CautionKind.TakeCare));

    private static bool FollowsFromDose(string property) =>
        property is DoseProperties.HardEffort or DoseProperties.LongContraction;

    private static string Said(string property) =>
        property switch
        {
            DoseProperties.HardEffort => "asks for a hard effort",
            DoseProperties.LongContraction => "asks for a long contraction",
            "head-low" => "puts the head low",
            "weight-on-hands" => "puts weight on the hands",
            "trunk-end-range" => "bends or turns the trunk to its end",
            "balance" => "asks for balance",
            "jumping" => "asks for jumping",
            _ => "has a property",
        };
}
