using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>A reason why a client may not do an exercise, as things stand.</summary>
/// <param name="At">Where the exercise names the condition; the exercise's file where it does not.</param>
public abstract record Objection(ConditionId Condition, Aside<Location> At)
{
    /// <summary>The client answered yes, and the exercise is not done with that, clearance or not.</summary>
    public sealed record Forbidden(ConditionId Condition, Aside<Answer> Answer, Aside<Location> At) : Objection(Condition, At);

    /// <summary>The client answered yes, and the exercise loads that region on that side, though it does not name the
    /// condition.</summary>
    public sealed record Loaded(ConditionId Condition, Aside<Answer> Answer, Side? Side, Aside<Location> At)
        : Objection(Condition, At);

    /// <summary>It hurts more than the practice trains with at all; or more than it works hard with, and the work on the place
    /// is hard, loaded or jumped.</summary>
    /// <param name="IsTooMuch">Whether nothing is trained with it.</param>
    public sealed record Painful(ConditionId Condition, Aside<Answer> Answer, Pain Pain, bool IsTooMuch, Aside<Location> At)
        : Objection(Condition, At);

    /// <summary>Pain came back after the answers, so that nobody knows what hurts now; or a clinician must look at it
    /// first.</summary>
    /// <param name="Day">The day of the entry that tells of it.</param>
    /// <param name="IsAsked">Whether the client was asked again since, so that only a clinician is missing.</param>
    /// <param name="Log">The place of that entry.</param>
    public sealed record CameBack(
        ConditionId Condition,
        PainKind Kind,
        PainPlace Place,
        DateOnly Day,
        bool IsAsked,
        Aside<Location> Log,
        Aside<Location> At
    ) : Objection(Condition, At);

    /// <summary>Hard work in the first weeks of somebody who is not regularly active.</summary>
    /// <param name="Week">The first in which it is hard.</param>
    public sealed record TooEarly(ConditionId Condition, Aside<Answer> Answer, WeekDose Week, Aside<Location> At)
        : Objection(Condition, At);

    /// <summary>There is no answer, which is not a no.</summary>
    public sealed record NotAsked(ConditionId Condition, Aside<Location> At) : Objection(Condition, At);

    /// <summary>There is an answer that cannot be read, which was said where it is written.</summary>
    public sealed record Unread(ConditionId Condition, Aside<Location> At) : Objection(Condition, At);

    /// <summary>The client answered yes, and nobody has cleared it.</summary>
    /// <param name="Need">What the decision before training asks for; none where the exercise itself asks for the
    /// clearance.</param>
    /// <param name="With">What of the work asks for it, where the exercise does not name the condition; otherwise null.</param>
    public sealed record NotCleared(
        ConditionId Condition,
        Aside<Answer> Answer,
        ClearanceNeed Need,
        string? With,
        Aside<Location> At
    ) : Objection(Condition, At);

    /// <summary>There is a clearance, but not for every day on which the exercise is to be done.</summary>
    /// <param name="From">The first day of the first week that is not covered.</param>
    /// <param name="Until">The last day of the last week that is not covered.</param>
    /// <param name="Need">As above.</param>
    public sealed record ClearanceShort(
        ConditionId Condition,
        Aside<Clearance> Clearance,
        DateOnly From,
        DateOnly Until,
        ClearanceNeed Need,
        Aside<Location> At
    ) : Objection(Condition, At);

    /// <summary>The clearance holds, but not for this dose or position.</summary>
    public sealed record BeyondLimit(
        ConditionId Condition,
        Aside<Clearance> Clearance,
        ClearanceLimit Limit,
        WeekDose Week,
        Aside<Location> At
    ) : Objection(Condition, At);
}
