namespace Gradus.Domain;

/// <summary>What a dose asks of one side in one session, in whole numbers that can be compared to the last one. Different
/// measures are never added to each other.</summary>
/// <param name="Stretch">Seconds of hold and breathe.</param>
/// <param name="Effort">Effort-seconds of press, pull and raise, in 200ths: 10 s at 50 % are 1000; a felt 5 of 10 counts as 50 %,
/// a ramp as the mean of its ends. 0 where some contraction says no effort.</param>
/// <param name="Contraction">Seconds of press, pull and raise, where some of them says no effort; 0 otherwise.</param>
/// <param name="Tension">Seconds of moves.</param>
/// <param name="Metres">Of carries.</param>
public readonly record struct SideWork(long Stretch, long Effort, long Contraction, long Tension, long Metres)
{
    /// <summary>200ths of a second at full effort.</summary>
    public const int EffortUnit = 200;

    public static SideWork operator +(SideWork left, SideWork right) =>
        new(
            left.Stretch + right.Stretch,
            left.Effort + right.Effort,
            left.Contraction + right.Contraction,
            left.Tension + right.Tension,
            left.Metres + right.Metres
        );

    public static SideWork operator *(SideWork work, long times) =>
        new(work.Stretch * times, work.Effort * times, work.Contraction * times, work.Tension * times, work.Metres * times);

    public static SideWork Add(SideWork left, SideWork right) => left + right;

    public static SideWork Multiply(SideWork left, long right) => left * right;

    /// <summary>Of one side that does as many sets as the dose has; what <c>plus</c> gives one side more is not in it.</summary>
    public static SideWork Of(SettledDose dose, DoseSettings settings)
    {
        var states = dose.Actions.All(a => !a.Verb.IsContraction() || a.Effort is not null);
        var set = new SideWork();
        foreach (var part in dose.Parts)
        foreach (var action in part.Actions)
            set += Of(action, DoseTime.Once(action, dose, settings), states) * part.Times;
        return set * dose.Sets;
    }

    /// <summary>The measures by name, the same ones in the same order each time.</summary>
    public IEnumerable<(SideMeasure Measure, long Amount)> Measures =>
        [
            (SideMeasure.Stretch, Stretch),
            (SideMeasure.Effort, Effort),
            (SideMeasure.Contraction, Contraction),
            (SideMeasure.Tension, Tension),
            (SideMeasure.Metres, Metres),
        ];

    /// <summary>How much more it is than before: the largest over the measures that there were; 1 where there were none, for work
    /// that begins has no percentage.</summary>
    public Growth Since(SideWork before)
    {
        var largest = new Growth(0, 1);
        var any = false;
        foreach (var ((_, was), (_, now)) in before.Measures.Zip(Measures))
        {
            if (was == 0)
                continue;
            var grown = new Growth(now, was);
            (largest, any) = (!any || grown > largest ? grown : largest, true);
        }

        return any ? largest : new(1, 1);
    }

    /// <summary>Whether no measure is less than before.</summary>
    public bool IsNoLessThan(SideWork before) =>
        Stretch >= before.Stretch
        && Effort >= before.Effort
        && Contraction >= before.Contraction
        && Tension >= before.Tension
        && Metres >= before.Metres;

    private static SideWork Of(SettledAction action, Seconds once, bool states)
    {
        var times = action.Times ?? 1;
        var seconds = (long)once.Value * times;
        if (action.Unit == AmountUnit.Metres)
            return new() { Metres = (long)action.Amount * times };
        if (action.Verb.IsStretch())
            return new() { Stretch = seconds };
        if (!action.Verb.IsContraction())
            return new() { Tension = seconds };
        return states ? new() { Effort = seconds * Share(action.Effort) } : new() { Contraction = seconds };
    }

    private static long Share(SettledEffort? effort) =>
        effort?.Match(steady => 2L * steady.Percent, ramp => ramp.First + ramp.Last, felt => 20L * felt.Rating) ?? 0;
}

/// <summary>What is measured of the work of a side.</summary>
public enum SideMeasure
{
    Stretch,
    Effort,
    Contraction,
    Tension,
    Metres,
}
