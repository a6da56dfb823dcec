using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>Mistakes that somebody who measures a dose may make.</summary>
internal enum MeasureSlip
{
    None,
    BothSidesOnce,
    RampAtItsFirstEffort,
    UnratedAtFullEffort,
    BreathingIsNoStretch,
    UncountedIsOneRep,
    CountBeforeRepsForgotten,
    MoveIsContraction,
}

/// <summary>Adds up measures from the steps of a dose. With a slip it makes that mistake.</summary>
internal static class StepSum
{
    public static WorkMeasures Of(IEnumerable<TimelineStep.Work> work, int times, MeasureSlip slip = MeasureSlip.None)
    {
        var steps = work.ToArray();
        var contractions = steps
            .Where(s =>
                s.Kind is StepKind.Press or StepKind.Pull or StepKind.Raise
                || (slip == MeasureSlip.MoveIsContraction && s.Kind == StepKind.Move)
            )
            .ToArray();
        var stretches = steps.Where(s =>
            s.Kind is StepKind.Hold || (s.Kind is StepKind.Breathe && slip != MeasureSlip.BreathingIsNoStretch)
        );
        var effort = contractions.Sum(s => s.Seconds.Value * EffortOf(s, slip) / 100);
        var all = new WorkMeasures(
            Sum(stretches),
            Sum(contractions),
            Sum(contractions.Where(s => s.EffortPercent is null)),
            effort,
            steps.Sum(s => Reps(s, slip))
        );
        return all * (slip == MeasureSlip.BothSidesOnce ? 1 : times);
    }

    private static Seconds Sum(IEnumerable<TimelineStep.Work> steps) => new(steps.Sum(s => s.Seconds.Value));

    private static decimal EffortOf(TimelineStep.Work step, MeasureSlip slip) =>
        step.Action.Effort switch
        {
            SettledEffort.Ramp(var first, _, _) when slip == MeasureSlip.RampAtItsFirstEffort => first,
            _ => step.EffortPercent ?? (slip == MeasureSlip.UnratedAtFullEffort ? 100 : 0),
        };

    /// <summary>The reps of one step: of a ramp, those of its first step only.</summary>
    private static int Reps(TimelineStep.Work step, MeasureSlip slip)
    {
        if (step.RampStep > 1)
            return 0;
        if (step.Action.In(AmountUnit.Reps) is { } reps)
            return slip == MeasureSlip.CountBeforeRepsForgotten && step.Place.Repetition > 1 ? 0 : reps;
        return step.Action.Times is not null || slip == MeasureSlip.UncountedIsOneRep ? 1 : 0;
    }
}
