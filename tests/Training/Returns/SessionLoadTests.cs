using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>Effort × minutes (Foster 1998, Med Sci Sports Exerc 30:1164-8; abstract seen), and what may be said of a
/// week.</summary>
public sealed class SessionLoadTests
{
    private static readonly LittlePractice Practice = Club
        .Empty.Exercise("drill", "2 x hold 30 s, each side")
        .Member("ada", ["- use: drill"], weeks: 3);

    /// <summary>The first is Foster's worked week; the second is computed.</summary>
    [Theory]
    [InlineData("240 90 240 0 180 360 0", "1110", "1.1749", "1304.19")]
    [InlineData("100 200 300 0 400 300 100", "1400", "1.4142", "1979.90")]
    public void A_week_has_its_load_monotony_and_strain(string days, string load, string monotony, string strain)
    {
        var entries = days.Split(' ').Index().Where(d => d.Item != "0").Select(d => Entry(d.Index, int.Parse(d.Item, Plain)));
        var week = Weeks([.. entries, "+7"])[0];
        Assert.Equal(load, week.Total.ToString("0", Plain));
        Assert.Equal(monotony, week.Monotony?.ToString("0.0000", Plain));
        Assert.Equal(strain, week.Strain?.ToString("0.00", Plain));
    }

    /// <summary>√(6n/(7(7 − n))), computed: whatever was done, it only counts days.</summary>
    [Theory]
    [InlineData(1, "0.378")]
    [InlineData(2, "0.586")]
    [InlineData(3, "0.802")]
    [InlineData(4, "1.069")]
    [InlineData(5, "1.464")]
    [InlineData(6, "2.268")]
    [InlineData(7, null)]
    public void The_monotony_of_equal_sessions_counts_days(int sessions, string? monotony)
    {
        var days = Enumerable.Range(0, 7).Select(i => i < sessions ? 120m : 0m).ToSeries();
        Assert.Equal(monotony, LoadedWeek.MonotonyOf(days)?.ToString("0.000", Plain));
        var said = Weeks([.. Enumerable.Range(0, sessions).Select(i => Entry(i, 120)), "+7"])[0];
        Assert.Equal(
            sessions < 4 ? NoMonotony.FewDays
                : sessions == 7 ? NoMonotony.EveryDayAlike
                : null,
            said.Why
        );
        Assert.Equal(sessions is >= 4 and < 7, said.Strain is not null);
    }

    [Fact]
    public void A_session_without_effort_makes_the_week_at_least_so_much()
    {
        var week = Weeks(Entry(0, 100), Entry(1, 100), Entry(2, 100), Entry(3, 100), "+4; minutes 20", "+7")[0];
        Assert.Equal((400, true, NoMonotony.AtLeast, null), (week.Total, week.IsAtLeast, week.Why, week.Strain));
    }

    [Fact]
    public void An_effort_of_0_is_a_load_of_0_and_no_blank()
    {
        var week = Weeks("+0; effort 0; minutes 20", Entry(1, 100), Entry(2, 50), Entry(3, 50), "+7")[0];
        Assert.Null(week.Why);
        Assert.Equal(200, week.Total);
    }

    /// <summary>Two sets of 30 s on each side, as dose-line.md and the steps of the page count them.</summary>
    [Fact]
    public void Blank_minutes_are_those_of_the_plan_and_are_marked()
    {
        var (client, training) = Made();
        var told = SessionLoad
            .Of(training, CountedLog.Of(client with { Log = ToldLog.Log("+0; effort 3") }, training, ToldLog.Start.AddDays(20)))
            .Single();
        Assert.True(told.IsPlannedTime);
        Assert.Equal(3 * training.Sessions[0].Weeks[0].Total.Value / 60m, told.Load);
    }

    [Fact]
    public void A_week_that_the_log_does_not_cover_has_no_days_of_rest()
    {
        string[] four = [Entry(0, 100), Entry(1, 200), Entry(2, 100), Entry(3, 100)];
        Assert.Equal(NoMonotony.NotCovered, Weeks(four)[0].Why);
        Assert.Equal(NoMonotony.NotCovered, Weeks([.. four, "+6; effort 0; minutes 0"])[0].Why);
        Assert.Null(Weeks([.. four, "+7"])[0].Why);
    }

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    private static string Entry(int day, int load) =>
        string.Create(Plain, $"+{day}; effort {(load % 10 == 0 ? 10 : 1)}; minutes {(load % 10 == 0 ? load / 10 : load)}");

    private static (Client Client, Training Training) Made()
    {
        var practice = Practice.Read();
        return (practice.Clients[0], Training.Of(practice, practice.Clients[0]));
    }

    private static Series<LoadedWeek> Weeks(params string[] entries)
    {
        var (client, training) = Made();
        var log = CountedLog.Of(client with { Log = ToldLog.Log(entries) }, training, ToldLog.Start.AddDays(20));
        return LoadedWeek.Of(client, training, log, SessionLoad.Of(training, log).ToSeries()).ToSeries();
    }
}
