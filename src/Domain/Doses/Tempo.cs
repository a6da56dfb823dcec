namespace Gradus.Domain;

/// <summary>The beats of one repetition in seconds: lower, pause, raise, pause; together at least 1 s. Null is <c>x</c>, fast:
/// counted as 1 s, and the total is about.</summary>
public sealed record Tempo
{
    public Tempo(int? lower, int? pauseLow, int? raise, int? pauseHigh)
    {
        foreach (var beat in new[] { lower, pauseLow, raise, pauseHigh })
        {
            ArgumentOutOfRangeException.ThrowIfNegative(beat ?? 0, nameof(lower));
            ArgumentOutOfRangeException.ThrowIfGreaterThan(beat ?? 0, DoseBounds.Longest.Value, nameof(lower));
        }

        (Lower, PauseLow, Raise, PauseHigh) = (lower, pauseLow, raise, pauseHigh);
        ArgumentOutOfRangeException.ThrowIfLessThan(Seconds.Value, 1, nameof(lower));
    }

    public int? Lower { get; }

    public int? PauseLow { get; }

    public int? Raise { get; }

    public int? PauseHigh { get; }

    /// <summary>One repetition.</summary>
    public Seconds Seconds => new((Lower ?? 1) + (PauseLow ?? 1) + (Raise ?? 1) + (PauseHigh ?? 1));

    public bool IsAbout => Lower is null || PauseLow is null || Raise is null || PauseHigh is null;

    /// <summary>As a dose line writes it: <c>3-1-x-0</c>.</summary>
    public override string ToString() =>
        string.Join(
            "-",
            new[] { Lower, PauseLow, Raise, PauseHigh }.Select(b => b is { } beat ? new Count(beat).ToString() : "x")
        );
}
