using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing.Sources;

/// <summary>Why an exercise has to do with a condition that it does not name.</summary>
internal static class ByTraits
{
    /// <summary>A sentence with a blank before it; nothing where the exercise names the condition itself.</summary>
    public static string Said(Objection objection) =>
        objection.At.Value.File == Condition.File ? $" {objection.At.Value} says so of every exercise like it." : "";
}
