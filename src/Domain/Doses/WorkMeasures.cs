namespace Gradus.Domain;

/// <summary>What some work amounts to. Different measures are never added to each other.</summary>
/// <param name="StretchSeconds">hold and breathe.</param>
/// <param name="ContractionSeconds">press, pull and raise, with or without a percentage.</param>
/// <param name="UnratedContractionSeconds">Those of them with no percentage.</param>
/// <param name="EffortSeconds">Contraction seconds × effort as a fraction, exact: 10 s at 50 % are 5. A ramp counts d·(first +
/// last)/2.</param>
/// <param name="Reps">The amount in reps times the count before the verb, or else that count as written; no count adds
/// none.</param>
public sealed record WorkMeasures(
    Seconds StretchSeconds,
    Seconds ContractionSeconds,
    Seconds UnratedContractionSeconds,
    decimal EffortSeconds,
    int Reps
)
{
    public static readonly WorkMeasures None = new(Seconds.Zero, Seconds.Zero, Seconds.Zero, 0, 0);

    public static WorkMeasures operator +(WorkMeasures left, WorkMeasures right) =>
        new(
            left.StretchSeconds + right.StretchSeconds,
            left.ContractionSeconds + right.ContractionSeconds,
            left.UnratedContractionSeconds + right.UnratedContractionSeconds,
            left.EffortSeconds + right.EffortSeconds,
            left.Reps + right.Reps
        );

    public static WorkMeasures operator *(WorkMeasures work, int times) =>
        new(
            Times(work.StretchSeconds, times),
            Times(work.ContractionSeconds, times),
            Times(work.UnratedContractionSeconds, times),
            work.EffortSeconds * times,
            checked(work.Reps * times)
        );

    public static WorkMeasures Add(WorkMeasures left, WorkMeasures right) => left + right;

    public static WorkMeasures Multiply(WorkMeasures left, int right) => left * right;

    /// <summary>One action with its count.</summary>
    /// <param name="once">The seconds of one repetition.</param>
    internal static WorkMeasures Of(SettledAction action, Seconds once)
    {
        var seconds = Times(once, action.Times ?? 1);
        var contraction = action.Verb.IsContraction() ? seconds : Seconds.Zero;
        return new(
            action.Verb.IsStretch() ? seconds : Seconds.Zero,
            contraction,
            action.Effort is SettledEffort.Steady or SettledEffort.Ramp ? Seconds.Zero : contraction,
            contraction.Value * MeanPercent(action.Effort) / 100,
            action.In(AmountUnit.Reps) is { } reps ? reps * (action.Times ?? 1) : action.Times ?? 0
        );
    }

    private static decimal MeanPercent(SettledEffort? effort) =>
        effort?.Match(steady => steady.Percent, ramp => (ramp.First + ramp.Last) / 2m, _ => 0m) ?? 0;

    private static Seconds Times(Seconds seconds, int times) => new(checked(seconds.Value * times));
}
