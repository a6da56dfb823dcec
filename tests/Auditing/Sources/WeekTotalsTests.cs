using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Auditing;

/// <summary>What a motion and side gets in each week, in the measures in which doses grow.</summary>
public sealed class WeekTotalsTests
{
    /// <summary>Every second day is 3.5 times a week in each; before play is in none. By hand: 2 x 30 s of each side on
    /// two days are 120 s; 10 s at 50 % in a session every second day 5 · 3.5 = 17.5 effort-seconds.</summary>
    [Fact]
    public void Work_is_added_up_over_the_sessions_of_a_week()
    {
        var practice = Club
            .Empty.Exercise("sway", "2 x hold 30 s, each side")
            .Exercise("brace", "1 x press 10 s at 50%, on left")
            .Exercise("bow", "1 x hold 30 s", trains: "thoracolumbar extension")
            .Member("ansel", ["- use: sway", "- use: brace", "- use: sway", "- use: bow"], 2, lighter: "[2]")
            .Read();
        var client = practice.Clients.Single();
        var programme = client.Programme;
        client = client with
        {
            Programme = programme with
            {
                Sessions = programme
                    .Sessions.Select(
                        (s, i) =>
                            s with
                            {
                                Days = i switch
                                {
                                    0 => new SessionDays.On([DayOfWeek.Monday, DayOfWeek.Thursday]),
                                    1 => new SessionDays.EveryDays(2),
                                    2 => new SessionDays.BeforePlay(),
                                    _ => s.Days,
                                },
                            }
                    )
                    .ToSeries(),
            },
        };
        var totals = WeekTotals.Of(practice, client, Training.Of(practice, client)).ToArray();
        Assert.Equal(
            [("ankle dorsiflexion", (Side?)Side.Left), ("ankle dorsiflexion", Side.Right), ("thoracolumbar extension", null)],
            totals.Select(t => (t.Motion.Name, t.Side))
        );
        Assert.All(totals, t => Assert.Equal([(1, false), (2, true)], t.Weeks.Select(w => (w.Week, w.IsLighter))));
        Assert.Equal((120, 17.5m), (Sum(totals[0], SideMeasure.Stretch), Sum(totals[0], SideMeasure.Effort)));
        Assert.Equal((120, 0), (Sum(totals[1], SideMeasure.Stretch), Sum(totals[1], SideMeasure.Effort)));
        Assert.Equal(30, Sum(totals[2], SideMeasure.Stretch));
    }

    [Theory]
    [InlineData(SideMeasure.Stretch, "stretch seconds")]
    [InlineData(SideMeasure.Effort, "effort-weighted seconds")]
    [InlineData(SideMeasure.Contraction, "contraction seconds")]
    [InlineData(SideMeasure.Tension, "seconds of moves")]
    [InlineData(SideMeasure.Metres, "metres")]
    public void A_measure_has_its_words(SideMeasure measure, string words) => Assert.Equal(words, measure.Words());

    private static decimal Sum(WeekTotal total, SideMeasure measure) => total.Weeks[0].Uses.Sum(u => u.Of(measure));
}
