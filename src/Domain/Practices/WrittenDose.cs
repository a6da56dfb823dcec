namespace Gradus.Domain;

/// <summary>A dose line with its place, and what was understood of it.</summary>
/// <param name="Line">The line as written.</param>
public sealed record WrittenDose(string Line, DoseLineResult Reading, Location At)
{
    /// <summary>The dose, or null where the line could not be understood.</summary>
    public Dose? Dose => (Reading as DoseLineResult.Understood)?.Dose;
}
