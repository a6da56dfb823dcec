namespace Gradus.Domain;

/// <summary>One timed piece of a dose; never of 0 seconds.</summary>
/// <param name="Side">The side at work under each or alternate sides, otherwise null; of a rest or a switch the side it leads
/// to.</param>
public abstract record TimelineStep(DoseSide? Side, Seconds Seconds)
{
    /// <summary>The verb, or pause, rest or switch.</summary>
    public abstract StepKind Kind { get; }

    /// <summary>One repetition of an action, or one step of its ramp.</summary>
    /// <param name="Set">From 1, counted for each side on its own; the sets of <c>plus</c> count on.</param>
    /// <param name="Round">Of the bracketed group, from 1; 1 where there is none.</param>
    /// <param name="Repetition">Of the count before the verb, from 1.</param>
    /// <param name="RampStep">From 1; null where the effort is no ramp.</param>
    /// <param name="EffortPercent">Of this step; null where no percentage is written. Of a ramp it may be a fraction.</param>
    /// <param name="Action">As settled: its amount says how many breaths, reps or metres, and its felt effort.</param>
    public sealed record Work(
        DoseSide? Side,
        Seconds Seconds,
        int Set,
        int Round,
        int Repetition,
        int? RampStep,
        decimal? EffortPercent,
        DoseAction Action
    ) : TimelineStep(Side, Seconds)
    {
        public override StepKind Kind =>
            Action.Verb switch
            {
                Verb.Hold => StepKind.Hold,
                Verb.Breathe => StepKind.Breathe,
                Verb.Press => StepKind.Press,
                Verb.Pull => StepKind.Pull,
                Verb.Raise => StepKind.Raise,
                Verb.Move => StepKind.Move,
                Verb.Carry => StepKind.Carry,
                _ => throw new InvalidOperationException("An unknown verb."),
            };

        /// <summary>From 0 to 10; null where none is written.</summary>
        public int? FeltEffort => (Action.Effort as Effort.Felt)?.Rating;
    }

    /// <summary>Between two repetitions of an action.</summary>
    public sealed record Pause(DoseSide? Side, Seconds Seconds) : TimelineStep(Side, Seconds)
    {
        public override StepKind Kind => StepKind.Pause;
    }

    /// <summary>Between two sets.</summary>
    public sealed record Rest(DoseSide? Side, Seconds Seconds) : TimelineStep(Side, Seconds)
    {
        public override StepKind Kind => StepKind.Rest;
    }

    /// <summary>Between two sides.</summary>
    public sealed record Switch(DoseSide? Side, Seconds Seconds) : TimelineStep(Side, Seconds)
    {
        public override StepKind Kind => StepKind.Switch;
    }
}

/// <summary>The two sides in the order they are worked: first is the side that <c>plus</c> names, otherwise left.</summary>
public enum DoseSide
{
    First,
    Second,
}
