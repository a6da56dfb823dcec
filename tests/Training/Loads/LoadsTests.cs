using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What a motion and side gets in a week, against published sums and sums by hand.</summary>
public sealed class LoadsTests
{
    private const string EveryDay = "[Mon, Tue, Wed, Thu, Fri]";

    /// <summary>reference-values.md, Stretching: 3 x 20 s in 5 sessions are 5.0 min a week, 4 x 30 s are 10.0 (computed), of each
    /// side.</summary>
    [Theory]
    [InlineData("3 x hold 20 s, rest 10 s, each side", 300)]
    [InlineData("4 x hold 30 s, rest 10 s, each side", 600)]
    [InlineData("2 x hold 30 s, each side", 300)]
    [InlineData("4 x hold 15 s, both sides", 300)]
    public void Five_sessions_of_stretch(string dose, int seconds)
    {
        var loads = Load(dose, EveryDay);
        Assert.Equal([Side.Left, Side.Right], loads.Select(l => l.Side));
        Assert.All(loads, l => Assert.Equal((seconds, 5, 5), (l.Work.StretchSeconds.Value, l.Sessions, l.Days)));
    }

    /// <summary>reference-values.md, Contractions (Clinical Hypertension 2023, 29, doi 10.1186/s40885-022-00232-3, Table 4: seen;
    /// sums computed): handgrip 4 × 2 min at 30 %, rest 3 min, 3 days: 8 min of work, 17 min a session, 51 min a week; wall squat
    /// with 2 min rest 14 and 42.</summary>
    [Theory]
    [InlineData("4 x press 2 min at 30%, rest 3 min, on left", 17, 51)]
    [InlineData("4 x press 2 min at 30%, rest 2 min, on left", 14, 42)]
    public void Published_isometric_doses(string dose, int session, int week)
    {
        var load = Assert.Single(Load(dose, "[Mon, Wed, Fri]"));
        Assert.Equal(3 * 8 * 60, load.Work.ContractionSeconds.Value);
        Assert.Equal(3 * 8 * 60 * 0.3m, load.Work.EffortSeconds);
        var planned = Practice(dose, "[Mon, Wed, Fri]").Plan("ansel");
        Assert.Equal(session * 60, planned.Sessions[0].Uses[0].Doses[0].Seconds.Value);
        Assert.Equal(week * 60, 3 * planned.Sessions[0].Uses[0].Doses[0].Seconds.Value);
    }

    /// <summary>reference-values.md, Growth: ten per cent a week for 8 weeks is × 2.1436 (computed).</summary>
    [Fact]
    public void Ten_per_cent_a_week() =>
        Assert.Equal(2.1436m, decimal.Round(Enumerable.Repeat(1.1m, 8).Aggregate(1m, (all, step) => all * step), 4));

    /// <summary>reference-values.md, Breathing: seconds a breath are 60 / rate: 4 a minute 15 s, 6 a minute 10 s, 10 a minute 6 s
    /// (computed).</summary>
    [Theory]
    [InlineData(15, 4)]
    [InlineData(10, 6)]
    [InlineData(6, 10)]
    public void Breaths_take_what_their_rate_says(int seconds, int rate)
    {
        Assert.Equal(60 / rate, seconds);
        var practice = Practice($"breathe {rate} breaths, on left", "[Mon]").Settings($"{{ breath: {seconds} s }}").Read();
        var load = Assert.Single(Training.Of(practice, practice.Clients.Single()).Loads);
        Assert.Equal(60, load.Work.StretchSeconds.Value);
    }

    /// <summary>Days 0, 2, 4, 6 of the first week are four, days 8, 10, 12 of the second three.</summary>
    [Fact]
    public void Every_second_day_is_four_days_and_three_in_turn() =>
        Assert.Equal([4, 3, 4, 3], Load("hold 30 s, on left", "every 2 days", weeks: 4).Select(l => l.Days));

    [Fact]
    public void A_side_of_its_own_and_a_motion_without_sides()
    {
        Assert.Equal([(Side?)Side.Right], Load("hold 30 s, on right", "[Mon]").Select(l => l.Side));
        Assert.Equal([(Side?)null], Load("hold 30 s", "[Mon]", trains: "thoracolumbar extension").Select(l => l.Side));
    }

    [Fact]
    public void One_side_more_counts_on_that_side() =>
        Assert.Equal(
            [(Side.Left, 60), (Side.Right, 90)],
            Load("2 x hold 30 s, each side, plus 1 x on right", "[Mon]")
                .OrderBy(l => l.Side)
                .Select(l => (l.Side!.Value, l.Work.StretchSeconds.Value))
        );

    [Fact]
    public void Sessions_before_play_come_on_top_and_are_in_no_figure()
    {
        var load = Assert.Single(Load("hold 30 s, on left", "before play"));
        Assert.Equal((true, 0, 0, 0), (load.BeforePlay, load.Sessions, load.Days, load.Work.StretchSeconds.Value));
    }

    [Fact]
    public void Days_that_the_client_chooses_count_as_days_of_their_own() =>
        Assert.Equal(
            (3, 3, 90),
            Assert.Single(Load("hold 30 s, on left", "3 a week, a day between")) is var l
                ? (l.Sessions, l.Days, l.Work.StretchSeconds.Value)
                : default
        );

    [Fact]
    public void Two_sessions_on_one_day_are_two_sessions_and_one_day()
    {
        var practice = Club.Empty.Exercise("sway", "hold 30 s, on left").Member("ansel", ["- use: sway", "- use: sway"]).Read();
        var load = Assert.Single(Training.Of(practice, practice.Clients.Single()).Loads);
        Assert.Equal((2, 1, 60), (load.Sessions, load.Days, load.Work.StretchSeconds.Value));
    }

    [Fact]
    public void A_week_has_seven_days_however_many_the_client_chooses()
    {
        var load = OfTwo("days: 4 a week", "days: 4 a week");
        Assert.Equal((8, 7), (load.Sessions, load.Days));
    }

    [Fact]
    public void A_session_before_play_comes_on_top_of_one_that_has_its_day()
    {
        var load = OfTwo("days: [Mon]", "days: before play");
        Assert.Equal((true, 1, 1, 30), (load.BeforePlay, load.Sessions, load.Days, load.Work.StretchSeconds.Value));
    }

    private static WeekLoad OfTwo(string first, string second)
    {
        const string path = "clients/ansel/programme.md";
        var club = Club.Empty.Exercise("sway", "hold 30 s, on left").Member("ansel", ["- use: sway", "- use: sway"]);
        var parts = club[path].Split("days: [Mon]");
        var practice = club.With(path, parts[0] + first + parts[1] + second + parts[2]).Read();
        return Assert.Single(Training.Of(practice, practice.Clients.Single()).Loads);
    }

    private static Series<WeekLoad> Load(string dose, string days, int weeks = 1, string trains = "ankle dorsiflexion")
    {
        var practice = Practice(dose, days, weeks, trains).Read();
        return Training.Of(practice, practice.Clients.Single()).Loads;
    }

    private static LittlePractice Practice(string dose, string days, int weeks = 1, string trains = "ankle dorsiflexion") =>
        Club
            .Empty.Exercise("sway", dose, trains: trains)
            .Member("ansel", ["- use: sway"], weeks)
            .Edit("clients/ansel/programme.md", "    days: [Mon]", $"    days: {days}");
}
