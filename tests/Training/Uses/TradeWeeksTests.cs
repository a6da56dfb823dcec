using Gradus.Planning;

namespace Gradus.Tests.Trainings;

/// <summary>Check values of the trade, common practice with no published source, carried through six weeks of even growth: a long
/// stretch of 90 to 120 s, then two to three rounds of ramp, pull and stretch, then raises of three to four repetitions of 8 to
/// 10 s, begun with less and grown in time and repetitions.</summary>
public sealed class TradeWeeksTests
{
    private static readonly Plan Six = Club
        .Empty.Exercise("long-stretch", "hold 90-120 s, on left")
        .Exercise("rounds", "2-3 x (press 20-25 s at 20 to 100% in 5 steps then pull 5-10 s then hold 20-30 s), on left")
        .Exercise("raises", "3-4 x raise 8-10 s, rest 20 s, on left")
        .Exercise("raises-in-one-set", "1 x 3-4 x raise 8-10 s, pause 5 s, on left")
        .Member("ansel", ["- use: long-stretch\n- use: rounds\n- use: raises\n- use: raises-in-one-set"], 6)
        .Plan("ansel");

    /// <summary>By hand after dose-line.md, How it grows: stretch 90 s in steps of 5; 2·20, 2·24, 2·27, 3·21, 3·24, 3·30 s in
    /// rounds with their ramps and pulls; raises 3·8, 3·8, 3·9, 4·8, 4·9, 4·10 s.</summary>
    [Fact]
    public void They_grow_from_the_low_end_to_the_high_one()
    {
        Assert.Equal([90, 95, 100, 105, 110, 120], ByWeek(0));
        Assert.Equal(
            [2 * (20 + 5 + 20), 2 * (20 + 7 + 24), 2 * (25 + 9 + 27), 3 * (20 + 6 + 21), 3 * (20 + 7 + 24), 3 * (25 + 10 + 30)],
            ByWeek(1)
        );
        Assert.Equal([(3 * 8) + 40, (3 * 8) + 40, (3 * 9) + 40, (4 * 8) + 60, (4 * 9) + 60, (4 * 10) + 60], ByWeek(2));
        Assert.Equal([(3 * 8) + 10, (3 * 8) + 10, (3 * 9) + 10, (4 * 8) + 15, (4 * 9) + 15, (4 * 10) + 15], ByWeek(3));
    }

    /// <summary>Get ready four times 5, three transitions of 10, beside the doses.</summary>
    [Fact]
    public void The_session_of_each_week_is_their_sum() =>
        Assert.Equal(
            Enumerable.Range(0, 6).Select(w => Enumerable.Range(0, 4).Sum(use => ByWeek(use)[w]) + 20 + 30),
            Six.Sessions[0].Weeks.SelectMany(w => w.Weeks.Select(_ => w.Total.Value))
        );

    [Fact]
    public void What_is_new_is_said_for_every_week_that_is_not_like_the_one_before() =>
        Assert.Equal(
            ["Starting point", "+1 s each raise", "1 more set, a little shorter", "+1 s each raise", "+1 s each raise"],
            Six.Sessions[0].Uses[2].Doses.Select(d => d.Change)
        );

    private static int[] ByWeek(int use) =>
        [.. Six.Sessions[0].Uses[use].Doses.SelectMany(d => d.Weeks.Select(_ => d.Seconds.Value))];
}
