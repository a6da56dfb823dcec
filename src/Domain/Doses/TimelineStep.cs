namespace Gradus.Domain;

/// <summary>One timed piece of a dose; never of 0 seconds.</summary>
/// <param name="Side">The side at work, of a rest or a switch the one it leads to; null where both work at once, or there are no
/// sides.</param>
public abstract record TimelineStep(Side? Side, Seconds Seconds)
{
    /// <summary>The verb, or pause, rest or switch.</summary>
    public abstract StepKind Kind { get; }

    /// <summary>One repetition of an action, or one step of its ramp.</summary>
    /// <param name="RampStep">From 1; null where the effort is no ramp.</param>
    /// <param name="EffortPercent">Of this step; null where no percentage is written. Of a ramp it may be a fraction.</param>
    public sealed record Work(
        Side? Side,
        Seconds Seconds,
        StepPlace Place,
        int? RampStep,
        decimal? EffortPercent,
        SettledAction Action
    ) : TimelineStep(Side, Seconds)
    {
        public override StepKind Kind => Action.Verb.Step();

        /// <summary>From 0 to 10; null where none is written.</summary>
        public int? FeltEffort => (Action.Effort as SettledEffort.Felt)?.Rating;
    }

    /// <summary>Between two repetitions of an action.</summary>
    public sealed record Pause(Side? Side, Seconds Seconds) : TimelineStep(Side, Seconds)
    {
        public override StepKind Kind => StepKind.Pause;
    }

    /// <summary>Between two sets.</summary>
    public sealed record Rest(Side? Side, Seconds Seconds) : TimelineStep(Side, Seconds)
    {
        public override StepKind Kind => StepKind.Rest;
    }

    /// <summary>Between two sides.</summary>
    public sealed record Switch(Side? Side, Seconds Seconds) : TimelineStep(Side, Seconds)
    {
        public override StepKind Kind => StepKind.Switch;
    }
}

/// <summary>Where in its dose a piece of work stands.</summary>
/// <param name="Set">From 1, counted for each side on its own; the sets of <c>plus</c> count on.</param>
/// <param name="Sets">How many that side has.</param>
/// <param name="Round">Of the bracketed group, from 1; 1 where there is none.</param>
/// <param name="Rounds">How many the group has; 1 where there is none.</param>
/// <param name="Repetition">Of the count before the verb, from 1.</param>
public sealed record StepPlace(int Set, int Sets, int Round, int Rounds, int Repetition);
