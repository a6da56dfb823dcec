namespace Gradus.Domain;

/// <summary>How hard: a share of the hardest the client could do there as the client perceives it, or a felt effort.</summary>
public abstract record Effort
{
    private Effort() { }

    public abstract bool IsSettled { get; }

    /// <summary>What comes of it, by its kind: whoever asks must know them all.</summary>
    public abstract T Match<T>(Func<Steady, T> steady, Func<Ramp, T> ramp, Func<Felt, T> felt);

    /// <param name="Percent">1 to 100.</param>
    public sealed record Steady(Count Percent) : Effort
    {
        public Count Percent { get; } = DoseBounds.Checked(Percent, DoseBounds.Percents, nameof(Percent));

        public override bool IsSettled => Percent.IsSingle;

        public override T Match<T>(Func<Steady, T> steady, Func<Ramp, T> ramp, Func<Felt, T> felt) => steady(this);
    }

    /// <summary>Equal steps from the first effort to the last, both included, up or down.</summary>
    /// <param name="First">Per cent, 1 to 100.</param>
    /// <param name="Last">Per cent, 1 to 100.</param>
    /// <param name="Steps">2 to 20.</param>
    public sealed record Ramp(Count First, Count Last, int Steps) : Effort
    {
        public Count First { get; } = DoseBounds.Checked(First, DoseBounds.Percents, nameof(First));

        public Count Last { get; } = DoseBounds.Checked(Last, DoseBounds.Percents, nameof(Last));

        public int Steps { get; } = DoseBounds.Checked(Steps, DoseBounds.RampSteps, nameof(Steps));

        public override bool IsSettled => First.IsSingle && Last.IsSingle;

        public override T Match<T>(Func<Steady, T> steady, Func<Ramp, T> ramp, Func<Felt, T> felt) => ramp(this);

        /// <summary>Whether the steps cut the span into whole seconds, at both its ends.</summary>
        public bool Divides(Amount amount) =>
            amount is Amount.Span(var seconds) && seconds.Low % Steps == 0 && seconds.High % Steps == 0;
    }

    /// <param name="Rating">0 to 10.</param>
    public sealed record Felt(Count Rating) : Effort
    {
        public Count Rating { get; } = DoseBounds.Checked(Rating, DoseBounds.Ratings, nameof(Rating));

        public override bool IsSettled => Rating.IsSingle;

        public override T Match<T>(Func<Steady, T> steady, Func<Ramp, T> ramp, Func<Felt, T> felt) => felt(this);
    }
}
