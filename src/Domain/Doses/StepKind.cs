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

/// <summary>Where the time of a session goes.</summary>
public enum TimeUse
{
    /// <summary>What a verb asks for.</summary>
    Work,

    /// <summary>Rests and pauses.</summary>
    Rest,

    /// <summary>Getting ready, changing sides, going from one exercise to the next.</summary>
    Moving,
}

public static class StepKinds
{
    public static TimeUse Use(this StepKind kind) =>
        kind switch
        {
            StepKind.Hold
            or StepKind.Breathe
            or StepKind.Press
            or StepKind.Pull
            or StepKind.Raise
            or StepKind.Move
            or StepKind.Carry => TimeUse.Work,
            StepKind.Pause or StepKind.Rest => TimeUse.Rest,
            StepKind.GetReady or StepKind.Switch or StepKind.Transition => TimeUse.Moving,
        };
}
