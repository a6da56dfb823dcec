namespace Gradus.Domain;

/// <summary>What readings must have in common to be compared: motion with its method, side, mode and instrument.</summary>
/// <param name="Side">Null where the motion has no left and right.</param>
/// <param name="Instrument">In small letters, with single spaces.</param>
public sealed record SeriesKey(Motion Motion, Side? Side, RangeMode Mode, string Instrument)
{
    public static SeriesKey Of(RangeReading reading) =>
        new(reading.Motion, reading.Side, reading.Mode, Spacing.Collapse(reading.Instrument).ToLowerInvariant());

    /// <summary>Null where no published error can agree.</summary>
    public InstrumentClass? InstrumentClass => Instruments.ClassOf(Instrument);

    /// <summary>The same series of the other side, and of this one: what the two have in common.</summary>
    public SeriesKey WithoutSide => this with { Side = null };

    /// <summary>Written out here, because a record would write <see cref="WithoutSide"/> too, and that its own, without
    /// end.</summary>
    public override string ToString() => $"{Motion.Name} {Side} {Mode} {Instrument}";
}

/// <summary>All readings of one client that may be compared with each other.</summary>
/// <param name="Occasions">In the order of their days; at least one, unless every reading followed training.</param>
/// <param name="AfterTraining">Shown and never judged, in the order of the file.</param>
public sealed record RangeSeries(SeriesKey Key, Series<Occasion> Occasions, Series<RangeReading> AfterTraining)
{
    public IEnumerable<DayValue> Days => Occasions.SelectMany(o => o.Days);

    public Occasion? Latest => Occasions.Count == 0 ? null : Occasions[^1];

    /// <summary>A series for every key, by motion, side, mode and instrument.</summary>
    /// <param name="today">A reading of a later day does not count yet.</param>
    public static Series<RangeSeries> Of(IEnumerable<RangeReading> readings, DateOnly today) =>
        readings
            .Where(r => r.Date <= today)
            .GroupBy(SeriesKey.Of)
            .OrderBy(s => s.Key.Motion.Name, StringComparer.Ordinal)
            .ThenBy(s => s.Key.Side)
            .ThenBy(s => s.Key.Mode)
            .ThenBy(s => s.Key.Instrument, StringComparer.Ordinal)
            .Select(s => new RangeSeries(
                s.Key,
                Occasion.Of(s.Where(r => !r.IsAfterTraining).GroupBy(r => r.Date).Select(DayValue.Of)),
                s.Where(r => r.IsAfterTraining).ToSeries()
            ))
            .ToSeries();

    /// <summary>The last occasion that began before a programme did, or on its first day; null where there is none. One that
    /// reaches into the programme is still one: so few days cannot show training.</summary>
    public Occasion? BaselineFor(DateOnly start) => Occasions.LastOrDefault(o => o.First <= start);
}

/// <summary>The readings of one day in one series.</summary>
/// <param name="Value">Their mean, each counted as often as it has tries, to one decimal.</param>
/// <param name="Trials">All tries of the day.</param>
/// <param name="By">Who measured; null where nobody says, or more than one did.</param>
public sealed record DayValue(DateOnly Date, decimal Value, int Trials, string? By)
{
    internal static DayValue Of(IEnumerable<RangeReading> readings)
    {
        var day = readings.ToArray();
        var trials = day.Sum(r => r.Trials);
        return new(
            day[0].Date,
            Decimals.ToOne(day.Sum(r => r.Value * r.Trials) / trials),
            trials,
            day.Select(r => r.By).Distinct(StringComparer.OrdinalIgnoreCase).Count() == 1 ? day[0].By : null
        );
    }
}

/// <summary>Days that lie less than a week from the first of them: so little time cannot show training, but it does show
/// error.</summary>
/// <param name="Days">At least one, in their order.</param>
public sealed record Occasion(Series<DayValue> Days)
{
    /// <summary>Fewer days than these from the first one are the same occasion.</summary>
    public const int DaysApart = 7;

    /// <summary>The mean of its days, to one decimal, as it is printed: whoever subtracts what is printed gets what is
    /// judged.</summary>
    public decimal Value { get; } = Decimals.ToOne(Days.Sum(d => d.Value) / Days.Count);

    public DateOnly First => Days[0].Date;

    public DateOnly Last => Days[^1].Date;

    /// <summary>The fewest tries of any of its days.</summary>
    public int Trials => Days.Min(d => d.Trials);

    internal static Series<Occasion> Of(IEnumerable<DayValue> days)
    {
        var occasions = new List<List<DayValue>>();
        foreach (var day in days.OrderBy(d => d.Date))
        {
            if (occasions.Count == 0 || day.Date.DayNumber - occasions[^1][0].Date.DayNumber >= DaysApart)
                occasions.Add([]);
            occasions[^1].Add(day);
        }

        return occasions.Select(o => new Occasion(o.ToSeries())).ToSeries();
    }
}

internal static class Decimals
{
    /// <summary>To one decimal, the half away from zero.</summary>
    public static decimal ToOne(decimal value) => Math.Round(value, 1, MidpointRounding.AwayFromZero);
}
