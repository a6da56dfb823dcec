namespace Gradus.Domain;

/// <summary>A fact about a client's health that some exercise cares about.</summary>
/// <param name="Name">Reads well after "not with": an ankle injury in the last 12 weeks.</param>
/// <param name="Question">The question that asks it, answered yes, no, or not asked.</param>
/// <param name="IsSided">Whether a yes may be for one side.</param>
public sealed record Condition(ConditionId Id, string Name, string Question, Region Where, bool IsSided, Location At);
