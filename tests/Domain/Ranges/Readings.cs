using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>Readings of one made measure, written shortly.</summary>
internal static class Readings
{
    public static readonly Motion Lunge = new("lunge ankle dorsiflexion", true, Limb.Leg);

    public static readonly SeriesKey Key = new(Lunge, Side.Right, RangeMode.Active, "inclinometer");

    private static readonly DateOnly First = new(2027, 1, 1);

    public static decimal Number(string written) => decimal.Parse(written, System.Globalization.CultureInfo.InvariantCulture);

    public static DateOnly Day(int day) => First.AddDays(day);

    /// <param name="days">The day, counted from any first one, and the value.</param>
    public static RangeSeries Series(params (int Day, decimal Value)[] days) =>
        Series([.. days.Select(d => One(d.Day, d.Value))]);

    public static RangeSeries Series(RangeReading[] readings) => Assert.Single(RangeSeries.Of(readings, DateOnly.MaxValue));

    public static RangeReading One(int day, decimal value, string? by = "oq", int trials = 1, bool after = false) =>
        new(Day(day), Lunge, Side.Right, RangeMode.Active, value, "inclinometer", new("readings.csv", 1, 1))
        {
            By = by,
            Trials = trials,
            IsAfterTraining = after,
        };

    /// <summary>An error that agrees with every reading here.</summary>
    public static MeasuringError Error(decimal mdc, ErrorLevel level = ErrorLevel.NinetyFive, int trials = 1) =>
        new(mdc, level, null, InstrumentClass.Inclinometer, null, trials, ErrorService.BetweenDays, "made", "made", "computed");

    public static Measure Measure(params MeasuringError[] errors) =>
        new(Lunge, null, "In a lunge.", PlausibleSpan.Of(MotionUnit.Degrees), errors.ToSeries(), []);

    public static ErrorInUse InUse(MeasuringError error, RangeSeries series) =>
        ErrorInUse.For(Measure(error), Key, series.Days, OwnErrors.None)
        ?? throw new InvalidOperationException("The error does not agree.");

    /// <summary>The latest occasion beside the first.</summary>
    public static RangeChange Change(MeasuringError error, bool gained, params (int Day, decimal Value)[] days)
    {
        var series = Series(days);
        return RangeChange.Of(series.Occasions[0], series.Occasions[^1], InUse(error, series), gained);
    }
}
