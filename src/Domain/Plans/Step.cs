namespace Gradus.Domain;

/// <summary>One timed piece of a session, as one item of its list.</summary>
/// <param name="Exercise">The exercise it belongs to; of a transition the one it leads to.</param>
/// <param name="Side">The side at work; of a switch or a transition the one it leads to; null for both or none.</param>
/// <param name="Words">What the item says: verb, exercise and side.</param>
/// <param name="Detail">Set, effort and load, or empty.</param>
public sealed record Step(StepKind Kind, ExerciseId Exercise, Side? Side, Seconds Seconds, string Words, string Detail);

public enum StepKind
{
    GetReady,
    Hold,
    Breathe,
    Press,
    Pull,
    Raise,
    Move,
    Carry,
    Pause,
    Rest,
    Switch,
    Transition,
}
