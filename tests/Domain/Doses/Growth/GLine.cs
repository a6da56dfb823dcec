namespace Gradus.Tests.Domain;

internal enum GVerb
{
    Hold,
    Breathe,
    Press,
    Pull,
    Raise,
    Move,
    Carry,
}

internal enum GUnit
{
    Seconds,
    Breaths,
    Reps,
    Metres,
}

internal enum GEffortKind
{
    Steady,
    Ramp,
    Felt,
}

/// <summary>A range of whole numbers, both ends in it; its unit is said where it is used.</summary>
internal readonly record struct GRange(int Low, int High);

/// <summary>An effort: Steady, per cent; Ramp, per cent from First to Last over Steps steps; Felt, a rating 0-10.</summary>
internal sealed record GEffort(GEffortKind Kind, GRange First, GRange Last, int Steps)
{
    internal static GEffort Steady(int low, int high) => new(GEffortKind.Steady, new(low, high), new(low, high), 1);

    internal static GEffort Felt(int low, int high) => new(GEffortKind.Felt, new(low, high), new(low, high), 1);

    internal static GEffort Ramp(GRange first, GRange last, int steps) => new(GEffortKind.Ramp, first, last, steps);

    /// <summary>What one notch adds: 5 percentage points, or one point of a felt rating.</summary>
    internal int Notch => Kind == GEffortKind.Felt ? 1 : 5;

    /// <summary>How many notches lead from the low end to the high end (the longer way of a ramp's two ends).</summary>
    internal int Notches => (Math.Max(First.High - First.Low, Last.High - Last.Low) + Notch - 1) / Notch;
}

/// <summary>One action. Times: the written times T (null: 1). Amount: in Unit.</summary>
internal sealed record GAction(GVerb Verb, GRange? Times, GRange Amount, GUnit Unit, GEffort? Effort)
{
    internal GRange T => Times ?? new(1, 1);
    internal bool Contracts => Verb is GVerb.Press or GVerb.Pull or GVerb.Raise;

    /// <summary>The grain s of the amount, in its unit: k for a ramp of k steps, else 1.</summary>
    internal int Grain => Effort is { Kind: GEffortKind.Ramp } ramp ? ramp.Steps : 1;

    /// <summary>The step u of the amount, in its unit: k for a ramp of k steps; 1 repetition or breath; 5 m; 1 or 5 s.</summary>
    internal int Step =>
        Effort is { Kind: GEffortKind.Ramp }
            ? Grain
            : Unit switch
            {
                GUnit.Reps or GUnit.Breaths => 1,
                GUnit.Metres => 5,
                _ => Amount.High - Amount.Low <= 10 ? 1 : 5,
            };
}

/// <summary>A part: a bracketed group with its times G, or (Times null: G = 1) a single action.</summary>
internal sealed record GPart(GRange? Times, GAction[] Actions)
{
    internal GRange G => Times ?? new(1, 1);
}

/// <summary>The beats of one repetition, in seconds each.</summary>
internal sealed record GTempo(decimal[] Beats);

/// <summary>A line: its sets and its parts in order.</summary>
internal sealed record GLine(int SetsLow, int SetsHigh, GPart[] Parts, GTempo? Tempo)
{
    internal GAction[] Actions => Parts.SelectMany(p => p.Actions).ToArray();

    /// <summary>For each action, the number of the part it stands in.</summary>
    internal int[] PartOf => Parts.SelectMany((p, n) => p.Actions.Select(_ => n)).ToArray();
}

/// <summary>A setting of all numbers. Groups: G of each part. Times, Amounts (in the action's unit), First and Last (the
/// effort's two ends in per cent, or the felt rating; 0 where there is none): of each action in written order.</summary>
internal sealed record GDose(int Sets, int[] Groups, int[] Times, int[] Amounts, int[] First, int[] Last)
{
    /// <summary>All numbers as one text, to compare by.</summary>
    internal string Key => $"S{Sets} G{Join(Groups)} T{Join(Times)} A{Join(Amounts)} E{Join(First)}-{Join(Last)}";

    private static string Join(int[] numbers) => string.Join(",", numbers);
}

/// <summary>A week. Rung: the place in the ladder, -1 in a lighter week. NothingTaken: lighter, but still above 0.75.</summary>
internal sealed record GWeek(int Number, bool Lighter, GDose Dose, int Rung, bool NothingTaken);

/// <summary>All weeks; Need and Full in weeks; Reached: the last full week is at the high end.</summary>
internal sealed record GWalk(GWeek[] Weeks, int Need, int Full, bool Reached);
