using Gradus.Domain;
using static Gradus.Tests.Domain.Readings;

namespace Gradus.Tests.Domain;

/// <summary>Numbers that were worked out by hand before there was a program, and published ones with their source.</summary>
public sealed class RangeArithmeticTests
{
    [Theory]
    [InlineData("4.7", ChangeWord.Gain)]
    [InlineData("4.6", ChangeWord.NotShown)]
    [InlineData("0", ChangeWord.NotShown)]
    [InlineData("-4.6", ChangeWord.NotShown)]
    [InlineData("-4.7", ChangeWord.Less)]
    public void A_change_as_large_as_the_error_counts_and_one_below_it_does_not(string more, ChangeWord word)
    {
        var difference = decimal.Parse(more, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(word, Change(Error(4.7m), true, (0, 20), (14, 20 + difference)).Word);
    }

    [Theory]
    [InlineData(14, true, ChangeWord.Gain)]
    [InlineData(13, true, ChangeWord.More)]
    [InlineData(14, false, ChangeWord.More)]
    [InlineData(7, true, ChangeWord.More)]
    public void More_is_a_gain_only_after_two_weeks_with_work_to_gain_it(int days, bool gained, ChangeWord word) =>
        Assert.Equal(word, Change(Error(4.7m), gained, (0, 20), (days, 30)).Word);

    [Fact]
    public void A_figure_at_90_per_cent_is_turned_into_95() =>
        Assert.Equal(5.95745m, InUse(Error(5, ErrorLevel.Ninety), Series((0, 20))).Change);

    /// <summary>5.6 · √3; with three tries it is as it stands, and more of them change nothing.</summary>
    [Theory]
    [InlineData(1, "9.69948")]
    [InlineData(2, "6.85857")]
    [InlineData(3, "5.60000")]
    [InlineData(4, "5.60000")]
    public void Fewer_tries_than_the_study_took_make_the_error_larger(int trials, string error) =>
        Assert.Equal(
            decimal.Parse(error, System.Globalization.CultureInfo.InvariantCulture),
            InUse(Error(5.6m, trials: 3), Series([One(0, 20, trials: trials)])).Change
        );

    [Fact]
    public void One_reading_is_good_to_half_the_width() =>
        Assert.Equal(3.32340m, InUse(Error(4.7m), Series((0, 20))).HalfWidth(1));

    [Fact]
    public void The_mean_of_several_days_has_a_smaller_error()
    {
        var change = Change(Error(4.7m), false, (0, 20), (2, 20), (4, 20), (20, 20));
        Assert.Equal((3, 1), (change.From.Days.Count, change.To.Days.Count));
        // 4.7 · √(2/3) = 3.837534.
        Assert.Equal(3.83753m, change.Margin);
    }

    [Fact]
    public void A_line_through_four_occasions_has_nearly_the_error_of_two()
    {
        var series = Series((0, 20), (14, 21), (28, 22), (42, 23));
        var line = RangeLine.Of(series.Occasions, InUse(Error(4.7m), series));
        Assert.Equal((3m, 4.45881m), (line.Change, line.Margin));
        var three = Series((0, 20), (14, 21), (28, 22));
        Assert.Equal(4.7m, RangeLine.Of(three.Occasions, InUse(Error(4.7m), three)).Margin);
    }

    [Theory]
    [InlineData(6, 1)]
    [InlineData(7, 2)]
    public void Less_than_a_week_is_one_occasion(int days, int occasions) =>
        Assert.Equal(occasions, Series((0, 20), (days, 24)).Occasions.Count);

    [Fact]
    public void The_readings_of_a_day_are_one_mean_by_their_tries()
    {
        var day = Assert.Single(Series([One(0, 20, trials: 3), One(0, 21)]).Days);
        Assert.Equal((20.3m, 4), (day.Value, day.Trials));
    }

    [Fact]
    public void A_reading_after_training_is_kept_and_not_judged()
    {
        var series = Series([One(0, 20), One(14, 30, after: true)]);
        Assert.Equal((20m, 1), (Assert.Single(series.Occasions).Value, series.AfterTraining.Count));
    }

    [Theory]
    [InlineData("oq", "OQ", RaterRelation.One)]
    [InlineData("oq", "mt", RaterRelation.Two)]
    [InlineData("oq", null, RaterRelation.Two)]
    [InlineData(null, null, RaterRelation.Two)]
    public void One_rater_is_one_who_is_named_at_both(string? first, string? second, RaterRelation raters) =>
        Assert.Equal(raters, ErrorInUse.RatersOf(Series([One(0, 20, first), One(9, 20, second)]).Days));

    [Fact]
    public void Of_several_that_agree_the_largest_is_used_and_one_of_another_kind_never()
    {
        var series = Series((0, 20), (14, 22));
        MeasuringError[] errors =
        [
            Error(4),
            Error(6),
            Error(9) with
            {
                Raters = RaterRelation.Two,
            },
            Error(10) with
            {
                Mode = RangeMode.Passive,
            },
            Error(11) with
            {
                Instrument = InstrumentClass.Goniometer,
            },
            Error(12) with
            {
                Serves = ErrorService.OnlyShown,
            },
            Error(13) with
            {
                Serves = ErrorService.ChangeOfSides,
            },
            Error(14) with
            {
                Instrument = InstrumentClass.NotStated,
            },
        ];
        Assert.Equal(6, ErrorInUse.For(Measure(errors), Key, series.Days, OwnErrors.None)?.Change);
        Assert.Null(ErrorInUse.For(Measure(errors[2..]), Key, series.Days, OwnErrors.None));
    }

    [Theory]
    [InlineData("a long-arm goniometer", InstrumentClass.Goniometer)]
    [InlineData("Inclinometer", InstrumentClass.Inclinometer)]
    [InlineData("phone", InstrumentClass.Inclinometer)]
    [InlineData("tape", InstrumentClass.Tape)]
    [InlineData("tape at home", null)]
    [InlineData("eye", null)]
    public void The_words_of_an_instrument_say_its_kind(string words, InstrumentClass? kind) =>
        Assert.Equal(kind, Instruments.ClassOf(words));

    /// <summary>x ± 3.3234 beside a mark of 15, the edges included where the table of words has them so.</summary>
    [Theory]
    [InlineData("12", MarkWord.NotTold)]
    [InlineData("11", MarkWord.Short)]
    [InlineData("11.6", MarkWord.Short)]
    [InlineData("11.7", MarkWord.NotTold)]
    [InlineData("18.3", MarkWord.NotTold)]
    [InlineData("18.4", MarkWord.Enough)]
    public void A_mark_is_reached_missed_or_neither(string value, MarkWord word)
    {
        var series = Series((0, decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal(word, RangeMark.Of(series.Occasions[0], 15, InUse(Error(4.7m), series)).Word);
    }

    /// <summary>Edges that are no roots: an error of √2 · 3 makes h exactly 3.</summary>
    [Fact]
    public void The_edges_of_a_mark_are_inclusive_above_and_exclusive_below()
    {
        var error = new ErrorInUse(18, Error(1), null, RaterRelation.One, 1);
        Assert.Equal(MarkWord.Enough, RangeMark.Of(Series((0, 18)).Occasions[0], 15, error).Word);
        Assert.Equal(MarkWord.NotTold, RangeMark.Of(Series((0, 12)).Occasions[0], 15, error).Word);
        Assert.Equal(MarkWord.NotJudged, RangeMark.Of(Series((0, 12)).Occasions[0], 15, null).Word);
    }

    /// <summary>A change of the sides: √2 · 4.7 = 6.64680.</summary>
    [Fact]
    public void Sides_differ_from_the_error_on_and_their_change_has_a_larger_one()
    {
        var error = InUse(Error(4.7m), Series((0, 20)));
        var (left, right) = (Series((0, 24.7m)).Occasions[0], Series((0, 20)).Occasions[0]);
        Assert.Equal(SidesWord.Differ, RangeSides.Of(left, right, error).Word);
        Assert.Equal(SidesWord.NotShown, RangeSides.Of(Series((0, 24.6m)).Occasions[0], right, error).Word);
        var change = SidesChange.Of(RangeSides.Of(left, left, error), RangeSides.Of(left, right, error), error, null);
        Assert.Equal((6.64680m, false), (change.Margin, change.IsShown));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(2, 1.41421)]
    [InlineData(22.09, 4.7)]
    [InlineData(0.0001, 0.01)]
    [InlineData(1000000, 1000)]
    public void Roots_have_five_decimals(double square, double root) => Assert.Equal((decimal)root, Roots.Of((decimal)square));
}
