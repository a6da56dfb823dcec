namespace Gradus.Domain;

/// <summary>The terms beside the work. What is null is not written.</summary>
/// <param name="Rest">Between sets.</param>
/// <param name="Pause">Between the counted repetitions of an action.</param>
/// <param name="Switch">Between the two sides.</param>
/// <param name="Load">What is held or worn, as the coach writes it.</param>
/// <param name="Leave">How many good repetitions are left undone at the end of a set.</param>
public sealed record DoseTerms(
    Seconds? Rest = null,
    Seconds? Pause = null,
    Seconds? Switch = null,
    SideTerm? Side = null,
    Plus? Plus = null,
    Tempo? Tempo = null,
    string? Load = null,
    int? Leave = null)
{
    public static readonly DoseTerms None = new();
}

/// <summary>Which side or sides the work is for.</summary>
public abstract record SideTerm
{
    private SideTerm()
    {
    }

    /// <summary>All sets of one side, then all of the other.</summary>
    public sealed record Each : SideTerm;

    /// <summary>The sides take turns, set by set.</summary>
    public sealed record Alternate : SideTerm;

    /// <summary>Both at once.</summary>
    public sealed record Both : SideTerm;

    /// <param name="Name">left, right, or a side named by the sport, in small letters.</param>
    public sealed record On(string Name) : SideTerm;
}

/// <summary>More sets for one side than for the other.</summary>
/// <param name="Sets">1 to 100.</param>
/// <param name="Side">left, right, or a side named by the sport, in small letters.</param>
public sealed record Plus(int Sets, string Side);

/// <summary>The beats of one repetition in seconds: lower, pause, raise, pause. Null is <c>x</c>, fast: counted as 1 s, and the total is about.</summary>
public sealed record Tempo
{
    public Tempo(int? lower, int? pauseLow, int? raise, int? pauseHigh)
    {
        foreach (var beat in new[] { lower, pauseLow, raise, pauseHigh })
            if (beat is { } seconds) ArgumentOutOfRangeException.ThrowIfNegative(seconds);
        (Lower, PauseLow, Raise, PauseHigh) = (lower, pauseLow, raise, pauseHigh);
        ArgumentOutOfRangeException.ThrowIfLessThan(Seconds.Value, 1);
    }

    public int? Lower { get; }

    public int? PauseLow { get; }

    public int? Raise { get; }

    public int? PauseHigh { get; }

    /// <summary>One repetition.</summary>
    public Seconds Seconds => new((Lower ?? 1) + (PauseLow ?? 1) + (Raise ?? 1) + (PauseHigh ?? 1));

    public bool IsAbout => Lower is null || PauseLow is null || Raise is null || PauseHigh is null;

    public override string ToString() => string.Join("-", new[] { Lower, PauseLow, Raise, PauseHigh }.Select(b => b?.ToString() ?? "x"));
}
