namespace Gradus.Domain;

/// <summary>How much of a verb.</summary>
public abstract record Amount
{
    private Amount() { }

    /// <summary>Seconds, breaths, reps or metres, as the kind says.</summary>
    public abstract Count Number { get; }

    /// <param name="Seconds">1 s to 60 min.</param>
    public sealed record Span(Count Seconds) : Amount
    {
        public Count Seconds { get; } = DoseBounds.Checked(Seconds, DoseBounds.Spans, nameof(Seconds));

        public override Count Number => Seconds;
    }

    /// <param name="Number">1 to 100.</param>
    public sealed record Breaths(Count Number) : Amount
    {
        public override Count Number { get; } = DoseBounds.Checked(Number, DoseBounds.Counts, nameof(Number));
    }

    /// <param name="Number">1 to 100.</param>
    public sealed record Reps(Count Number) : Amount
    {
        public override Count Number { get; } = DoseBounds.Checked(Number, DoseBounds.Counts, nameof(Number));
    }

    /// <param name="Number">1 to 3600.</param>
    public sealed record Metres(Count Number) : Amount
    {
        public override Count Number { get; } = DoseBounds.Checked(Number, DoseBounds.Metres, nameof(Number));
    }
}
