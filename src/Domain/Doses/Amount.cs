namespace Gradus.Domain;

/// <summary>How much of a verb.</summary>
public abstract record Amount
{
    private Amount() { }

    public abstract AmountUnit Unit { get; }

    /// <summary>In the unit.</summary>
    public abstract Count Number { get; }

    /// <summary>Another number of the same.</summary>
    public abstract Amount With(Count number);

    /// <param name="Seconds">1 s to 60 min.</param>
    public sealed record Span(Count Seconds) : Amount
    {
        public Count Seconds { get; } = DoseBounds.Checked(Seconds, DoseBounds.Spans, nameof(Seconds));

        public override AmountUnit Unit => AmountUnit.Seconds;

        public override Count Number => Seconds;

        public override Amount With(Count number) => new Span(number);
    }

    /// <param name="Number">1 to 100.</param>
    public sealed record Breaths(Count Number) : Amount
    {
        public override AmountUnit Unit => AmountUnit.Breaths;

        public override Count Number { get; } = DoseBounds.Checked(Number, DoseBounds.Counts, nameof(Number));

        public override Amount With(Count number) => new Breaths(number);
    }

    /// <param name="Number">1 to 100.</param>
    public sealed record Reps(Count Number) : Amount
    {
        public override AmountUnit Unit => AmountUnit.Reps;

        public override Count Number { get; } = DoseBounds.Checked(Number, DoseBounds.Counts, nameof(Number));

        public override Amount With(Count number) => new Reps(number);
    }

    /// <param name="Number">1 to 3600.</param>
    public sealed record Metres(Count Number) : Amount
    {
        public override AmountUnit Unit => AmountUnit.Metres;

        public override Count Number { get; } = DoseBounds.Checked(Number, DoseBounds.Metres, nameof(Number));

        public override Amount With(Count number) => new Metres(number);
    }
}

/// <summary>What an amount is counted in.</summary>
public enum AmountUnit
{
    Seconds,
    Breaths,
    Reps,
    Metres,
}
