namespace Gradus.Domain;

/// <summary>What a practice's own pairs of readings say about its error: readings of one series on two days at most a week apart,
/// no training between.</summary>
/// <param name="Pairs">How many.</param>
/// <param name="Sum">Of the differences, later less earlier.</param>
/// <param name="SumOfSquares">Of the differences.</param>
/// <param name="Trials">The most tries of any of the days.</param>
public sealed record OwnError(int Pairs, decimal Sum, decimal SumOfSquares, int Trials)
{
    /// <summary>Fewer pairs than these say nothing.</summary>
    public const int PairsNeeded = 10;

    /// <summary>MDC95 = 1.96 · √2 · SEM (Weir JP 2005, J Strength Cond Res 19(1):231-40).</summary>
    public const decimal ChangePerSem = 2.771859m;

    /// <summary>SEM = √(Σd²/(2n)).</summary>
    public decimal Sem => Roots.Of(SumOfSquares / (2 * Pairs));

    /// <summary>Whether the mean of the differences is more than 2 · SD/√n from nothing: something other than error is in
    /// them.</summary>
    public bool IsSystematic => Sum * Sum * (Pairs - 1) > 4 * ((Pairs * SumOfSquares) - (Sum * Sum));

    /// <summary>Nothing is measured without error: pairs that never differ are rounded too coarsely to show it.</summary>
    public bool IsUsable => Pairs >= PairsNeeded && SumOfSquares > 0 && !IsSystematic;

    /// <summary>Of MDC95 = 2.771859 · SEM · f(n).</summary>
    public decimal Square => ChangePerSem * ChangePerSem * SumOfSquares / (2 * Pairs) * Allowance * Allowance;

    /// <summary>The upper one-sided 80 per cent bound of the SEM, √(n/χ²), at the smallest n of each step; computed.</summary>
    public decimal Allowance =>
        Pairs switch
        {
            < 15 => 1.27m,
            < 20 => 1.21m,
            < 30 => 1.17m,
            _ => 1.13m,
        };
}

/// <summary>The own errors of a practice, by what is measured and how, and by who measured. Pairs of all clients and both sides
/// count together.</summary>
public sealed class OwnErrors
{
    public static readonly OwnErrors None = new(new Dictionary<(SeriesKey, RaterRelation), OwnError>());

    private readonly IReadOnlyDictionary<(SeriesKey Key, RaterRelation Raters), OwnError> errors;

    private OwnErrors(IReadOnlyDictionary<(SeriesKey, RaterRelation), OwnError> errors) => this.errors = errors;

    /// <summary>Usable or not, in the order of motion, mode and instrument.</summary>
    public IEnumerable<(SeriesKey Key, RaterRelation Raters, OwnError Error)> All =>
        errors
            .OrderBy(e => e.Key.Key.Motion.Name, StringComparer.Ordinal)
            .ThenBy(e => e.Key.Key.Mode)
            .ThenBy(e => e.Key.Key.Instrument, StringComparer.Ordinal)
            .ThenBy(e => e.Key.Raters)
            .Select(e => (e.Key.Key, e.Key.Raters, e.Value));

    /// <summary>The one that may be used for such readings; null where there is none.</summary>
    public OwnError? Find(SeriesKey key, RaterRelation raters) =>
        errors.GetValueOrDefault((key.WithoutSide, raters)) is { IsUsable: true } own ? own : null;

    /// <summary>From the series of everybody. Each day belongs to one pair at most, in the order of the days; a pair with days of
    /// the client's programme between them is none.</summary>
    public static OwnErrors Of(IEnumerable<(Programme Programme, Series<RangeSeries> Measured)> clients) =>
        new(
            (
                from client in clients
                from series in client.Measured
                from pair in PairsIn([.. series.Days], client.Programme)
                group pair by (series.Key.WithoutSide, ErrorInUse.RatersOf([pair.Earlier, pair.Later])) into pairs
                let differences = pairs.Select(p => p.Later.Value - p.Earlier.Value).ToArray()
                select (
                    pairs.Key,
                    Error: new OwnError(
                        differences.Length,
                        differences.Sum(),
                        differences.Sum(d => d * d),
                        pairs.Max(p => Math.Max(p.Earlier.Trials, p.Later.Trials))
                    )
                )
            ).ToDictionary(e => e.Key, e => e.Error)
        );

    private static IEnumerable<(DayValue Earlier, DayValue Later)> PairsIn(DayValue[] days, Programme programme)
    {
        for (var i = 0; i + 1 < days.Length; i++)
        {
            var (earlier, later) = (days[i], days[i + 1]);
            if (later.Date.DayNumber - earlier.Date.DayNumber > 7)
                continue;
            if (later.Date > programme.Start && earlier.Date <= programme.End)
                continue;
            yield return (earlier, later);
            i++;
        }
    }
}
