namespace Gradus.Domain;

/// <summary>What a timed piece of a session is: a verb, or what stands between.</summary>
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
