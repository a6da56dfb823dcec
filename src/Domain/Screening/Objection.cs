namespace Gradus.Domain;

/// <summary>A reason why a client may not do an exercise, as things stand.</summary>
/// <param name="At">Where the condition is named by the exercise.</param>
public abstract record Objection(Condition Condition, Location At)
{
    /// <summary>The client answered yes, and the exercise is not done with that, clearance or not.</summary>
    public sealed record Forbidden(Condition Condition, Answer Answer, Location At) : Objection(Condition, At);

    /// <summary>There is no answer, which is not a no.</summary>
    public sealed record NotAsked(Condition Condition, Location At) : Objection(Condition, At);

    /// <summary>There is an answer that cannot be read, which was said where it is written.</summary>
    public sealed record Unread(Condition Condition, Location At) : Objection(Condition, At);

    /// <summary>The client answered yes, and nobody has cleared it.</summary>
    public sealed record NotCleared(Condition Condition, Answer Answer, Location At) : Objection(Condition, At);

    /// <summary>There is a clearance, but not for every day on which the exercise is to be done.</summary>
    /// <param name="From">The first day of use.</param>
    /// <param name="Until">The last day of use.</param>
    public sealed record ClearanceShort(Condition Condition, Clearance Clearance, DateOnly From, DateOnly Until, Location At) : Objection(Condition, At);

    /// <summary>The clearance holds, but not for this dose or position.</summary>
    public sealed record BeyondLimit(Condition Condition, Clearance Clearance, ClearanceLimit Limit, WeekDose Week, Location At) : Objection(Condition, At);
}
