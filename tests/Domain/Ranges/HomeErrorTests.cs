using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>Knee to wall, measured by the client alone. The rule is the house's own; 2.771859 is 1.96 · √2.</summary>
public sealed class HomeErrorTests
{
    private static readonly Motion KneeToWall = new("knee to wall", true, Limb.Leg, MotionUnit.Centimetres);

    private static readonly DateOnly Start = new(2027, 1, 4);

    [Theory]
    // SD 1: 2.771859 · 1 · 1.7.
    [InlineData("8 9 10", "4.71216")]
    // SD 0.5.
    [InlineData("8 8.5 9", "2.35608")]
    // SD 0.28868, four tenths of which would be 1.36; no less than 2.
    [InlineData("9 9 9.5", "2")]
    [InlineData("9 9 9", "2")]
    [InlineData("8 9", null)]
    public void It_is_the_scatter_of_three_days_and_never_below_2_cm(string values, string? change) =>
        Assert.Equal<decimal?>(
            change is null ? null : Readings.Number(change),
            HomeError.Of(Key("tape at home"), Occasion(values), Start) is { } home ? Roots.Of(home.Square) : null
        );

    [Fact]
    public void It_is_no_error_of_what_a_coach_measured_nor_of_an_angle()
    {
        Assert.Null(HomeError.Of(Key("tape"), Occasion("8 9 10"), Start));
        Assert.Null(HomeError.Of(new(Readings.Lunge, Side.Right, RangeMode.Active, "phone at home"), Occasion("8 9 10"), Start));
        Assert.Null(HomeError.Of(Key("tape at home"), null, Start));
    }

    [Fact]
    public void A_day_after_the_programme_began_does_not_count() =>
        Assert.Null(HomeError.Of(Key("tape at home"), Occasion("8 9 10"), Start.AddDays(-3)));

    [Fact]
    public void Means_make_it_no_smaller()
    {
        var home = HomeError.Of(Key("tape at home"), Occasion("8 9 10"), Start) ?? throw new InvalidOperationException();
        var error = ErrorInUse.Of(home, Occasion("8 9 10").Days);
        Assert.Equal(error.Change, error.ChangeBetween(3, 1));
        Assert.Equal(error.HalfWidth(1), error.HalfWidth(3));
    }

    private static SeriesKey Key(string instrument) => new(KneeToWall, Side.Right, RangeMode.Active, instrument);

    /// <summary>A day each, two days apart, the last on 2027-01-02.</summary>
    private static Occasion Occasion(string values)
    {
        var all = values.Split(' ').Select(Readings.Number).ToArray();
        return new(all.Select((v, i) => new DayValue(Start.AddDays(-2 - (2 * (all.Length - 1 - i))), v, 3, null)).ToSeries());
    }
}
