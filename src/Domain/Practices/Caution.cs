namespace Gradus.Domain;

/// <summary>Something a client may feel, or must take care of, and what to do then.</summary>
/// <param name="AttachesTo">Where it is added beyond the exercises that name it; null for nowhere.</param>
public sealed record Caution(CautionId Id, string Title, CautionKind Kind, Prose Body, Attachment? AttachesTo, Location At);

/// <summary>In the order a reader must meet them: worst first.</summary>
public enum CautionKind
{
    Stop,
    EaseOff,
    TakeCare,
    Expect,
}

/// <summary>Where a caution is added by itself: every property that is not null must fit the exercise.</summary>
/// <param name="Property">One that an exercise says, or that follows from its dose.</param>
/// <param name="Equipment">A thing in the very words of an exercise's own list.</param>
public sealed record Attachment(
    Stage? Stage,
    Position? Position,
    string? Trains,
    Region? Loads,
    string? Property,
    AgeBand? Age = null,
    Mention<string>? Equipment = null
)
{
    public bool Fits(Exercise exercise, Client client) =>
        (Stage is null || Stage == exercise.Stage)
        && (Position is null || Position == exercise.Position)
        && (Trains is null || string.Equals(Trains, exercise.Trains.Name, StringComparison.Ordinal))
        && (Loads is null || exercise.Loads.Any(l => l.Region == Loads))
        && (Property is null || exercise.AllProperties.Contains(Property, StringComparer.Ordinal))
        && (Equipment is null || exercise.Equipment.Contains(Equipment.Value, StringComparer.Ordinal))
        && (Age is null || client.Born.IsIn(Age.Value, client.Programme));
}
