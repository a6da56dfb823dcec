using Gradus.Domain;

namespace Gradus.Tests.Reading;

public sealed class ProgrammeReaderTests
{
    private const string Path = "clients/ansel/programme.md";

    private static readonly Programme Programme = LittlePractice.Golden.Client("ansel").Programme;

    [Fact]
    public void The_programme_is_bound()
    {
        Assert.Equal(("A lower guard", new DateOnly(2027, 1, 4), 6), (Programme.Title, Programme.Start, Programme.Weeks));
        Assert.Equal([3, 5], Programme.Lighter);
        Assert.Null(Programme.Retest);
        Assert.Equal(["Ansel, keep the sway slow."], Programme.Letter.Lines());
        Assert.Equal(
            new ExerciseId("calf-sway"),
            Assert.Single(Programme.Letter.Inlines().OfType<Inline.ExerciseLink>()).Exercise
        );
        Assert.Equal(Location.Whole(Path), Programme.At);
    }

    [Theory]
    [InlineData("2027-02-17", "2027-02-17 2027-02-17")]
    [InlineData("6", "2027-02-08 2027-02-14")]
    public void The_time_to_measure_again_is_a_day_or_a_week(string written, string days)
    {
        var retest = Again(written).Client("ansel").Programme.Retest;
        Assert.Equal(days, $"{retest?.From:yyyy-MM-dd} {retest?.Until:yyyy-MM-dd}");
    }

    [Theory]
    [InlineData("7", "'7' is no day and no week of the programme.")]
    [InlineData("soon", "'soon' is no day and no week of the programme.")]
    [InlineData("2027-01-04", "'2027-01-04' is not behind the first day of the programme.")]
    public void Another_time_to_measure_again_is_refused(string written, string message) =>
        Assert.Equal(message, Assert.Single(Again(written).Findings()).Message);

    private static LittlePractice Again(string written) =>
        LittlePractice.Golden.Edit(Path, "weeks: 6\n", $"weeks: 6\nretest: {written}\n");

    /// <summary>dose-line.md, What a week asks: week w is the seven days from start + 7(w − 1).</summary>
    [Fact]
    public void A_week_is_the_seven_days_from_its_start()
    {
        Assert.Equal((new DateOnly(2027, 1, 11), new DateOnly(2027, 1, 17)), (Programme.FirstDayOf(2), Programme.LastDayOf(2)));
        Assert.Equal(new DateOnly(2027, 2, 14), Programme.End);
    }

    [Fact]
    public void The_days_of_a_session_are_weekdays_or_one_of_three_texts()
    {
        Assert.Equal(["Rear ankle", "Every other day", "Now and then", "Warm"], Programme.Sessions.Select(s => s.Name));
        Assert.Equal(
            [
                new SessionDays.On([DayOfWeek.Monday, DayOfWeek.Thursday]),
                new SessionDays.EveryDays(2),
                new SessionDays.TimesAWeek(3, true),
                new SessionDays.BeforePlay(),
            ],
            Programme.Sessions.Select(s => s.Days)
        );
        Assert.Equal(new Location(Path, 7, 5), Programme.Sessions[0].At);
    }

    [Fact]
    public void A_use_is_bound_key_by_key()
    {
        var use = Programme.Sessions[0].Do[0];
        Assert.Equal(new(new("calf-sway"), new(Path, 10, 14)), use.Exercise);
        Assert.Equal(new(new SideTerm.On(SideName.Of("rear leg")), new(Path, 11, 15)), use.Side);
        Assert.Equal((2, 5), (use.FromWeek, use.UntilWeek));
        Assert.True(use.KeepWhenShort);
        Assert.Equal(["pain at most 2", "two sessions running"], use.MoveOn);
    }

    [Fact]
    public void The_lines_by_week_stand_in_the_order_of_the_weeks_with_their_places() =>
        Assert.Equal(
            [(2, "2 x hold 30 s", new Location(Path, 14, 14)), (4, "3 x hold 45 s, rest 30 s", new Location(Path, 13, 14))],
            Programme.Sessions[0].Do[0].ByWeek.Select(l => (l.Week, l.Dose.Line, l.Dose.At))
        );

    [Fact]
    public void What_a_use_leaves_out_is_not_there()
    {
        var use = Programme.Sessions[0].Do[1];
        Assert.Equal((null, null, null, false), (use.Side, use.FromWeek, use.UntilWeek, use.KeepWhenShort));
        Assert.Empty(use.ByWeek);
        Assert.Empty(use.MoveOn);
    }
}
