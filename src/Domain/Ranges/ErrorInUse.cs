namespace Gradus.Domain;

/// <summary>The error that a comparison is judged by, with where it comes from. Roots are taken last, once.</summary>
/// <param name="Square">Of the smallest change between two single days that is more than the error, at 95 per cent.</param>
/// <param name="Published">Null where it is the practice's or the client's own.</param>
/// <param name="Own">The practice's; null where it is another.</param>
/// <param name="Trials">The fewest tries of the days that are compared. Fewer than the error was found with make it
/// larger.</param>
public sealed record ErrorInUse(decimal Square, MeasuringError? Published, OwnError? Own, RaterRelation Raters, int Trials)
{
    /// <summary>Null unless it is a client's own, from home. It counts as it stands, between means too.</summary>
    public HomeError? Home { get; private init; }

    /// <param name="days">All days that are compared.</param>
    public static ErrorInUse Of(HomeError home, IEnumerable<DayValue> days) =>
        new(home.Square, null, null, RaterRelation.One, days.Min(d => d.Trials)) { Home = home };

    /// <summary>Between two single days.</summary>
    public decimal Change => Roots.Of(Square);

    /// <summary>Of how many tries the mean was taken where the error was found.</summary>
    public int TrialsThere => Published?.Trials ?? Own?.Trials ?? 1;

    /// <summary>Whether it was made larger for too few tries: an upper bound, because the mean of several lowers only the part of
    /// the error that lies within a day.</summary>
    public bool IsForFewerTrials => Trials < TrialsThere;

    /// <summary>Whether a number other than a published one is used.</summary>
    public bool IsComputed => Own is not null || IsForFewerTrials || Published?.Level == ErrorLevel.Ninety;

    /// <summary>Between the means of so many days: MDC95 · √((1/n₁ + 1/n₂)/2).</summary>
    public decimal ChangeBetween(int from, int to) => Home is null ? Roots.Of(Square * (from + to) / (2 * from * to)) : Change;

    /// <summary>Half the width of one reading, or of the mean of several days: MDC95/√2 = 1.96 · SEM, divided by √n.</summary>
    public decimal HalfWidth(int days) => Roots.Of(Square / (2 * (Home is null ? days : 1)));

    /// <summary>Of the change of the difference of two sides, the errors of the sides taken as independent: √2 · MDC95.</summary>
    public decimal ChangeOfSides => Roots.Of(Square * 2);

    /// <summary>Of the change along a straight line through days: MDC95 · T/(√2 · √Σ(t − t̄)²), T the days from the first to the
    /// last.</summary>
    /// <param name="days">At least two different ones, in their order.</param>
    public decimal ChangeAlong(Series<DateOnly> days)
    {
        var (length, spread) = (days[^1].DayNumber - days[0].DayNumber, RangeLine.SpreadOf(days));
        return Roots.Of(Square * length * length / (2 * spread));
    }

    /// <summary>The practice's own where it has one; else of the published ones that agree the largest; else null: none is
    /// borrowed.</summary>
    /// <param name="days">All days that are compared.</param>
    public static ErrorInUse? For(Measure measure, SeriesKey key, IEnumerable<DayValue> days, OwnErrors own) =>
        Chosen(measure, key, [.. days], own, ErrorService.BetweenDays);

    /// <summary>The published error of the change of a difference of sides; null where there is none.</summary>
    public static ErrorInUse? ForChangeOfSides(Measure measure, SeriesKey key, IEnumerable<DayValue> days) =>
        Chosen(measure, key, [.. days], OwnErrors.None, ErrorService.ChangeOfSides);

    private static ErrorInUse? Chosen(Measure measure, SeriesKey key, DayValue[] days, OwnErrors own, ErrorService service)
    {
        var (raters, trials) = (RatersOf(days), days.Min(d => d.Trials));
        if (own.Find(key, raters) is { } ours)
            return new(ours.Square * Factor(ours.Trials, trials), null, ours, raters, trials);
        return measure
            .Errors.Where(e => e.Serves == service && e.Agrees(key.Mode, key.InstrumentClass, raters))
            .Select(e => new ErrorInUse(e.At95 * e.At95 * Factor(e.Trials, trials), e, null, raters, trials))
            .MaxBy(e => e.Square);
    }

    public static RaterRelation RatersOf(IEnumerable<DayValue> days)
    {
        var raters = days.Select(d => d.By?.ToUpperInvariant()).Distinct().ToArray();
        return raters is [not null] ? RaterRelation.One : RaterRelation.Two;
    }

    /// <summary>k/trials where there are fewer than k, in the square.</summary>
    private static decimal Factor(int there, int here) => here < there ? (decimal)there / here : 1;
}
