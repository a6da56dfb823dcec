using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What of a pain concerns the coach, each case for one reason. The bands were tested in tendons and a few joint
/// troubles
/// only (Thomeé 1997, second-hand; Silbernagel 2007, Am J Sports Med 35:897-906, abstract seen; the bands not seen in it); 14
/// days
/// and six weeks are common practice, no source.</summary>
public sealed class PainTableTests
{
    private static readonly DayRules Rules = new(7, 14, 2, 5);

    private static readonly PainCase[] All = [.. PainCases.All, .. PainCases.Again];

    private static readonly Programme Programme = Club
        .Empty.Exercise("drill", "2 x hold 30 s, each side")
        .Member("ada", ["- use: drill"], weeks: 8)
        .Client("ada")
        .Programme;

    public static TheoryData<string> Reasons => [.. All.Select(c => c.Why)];

    [Theory, MemberData(nameof(Reasons))]
    public void The_row_is_the_one_that_a_clinician_would_take(string reason)
    {
        var judged = All.Single(c => c.Why == reason);
        Assert.Equal(judged.Comes, Judged(ToldLog.Log(judged.Log), Rules));
    }

    [Fact]
    public void The_table_has_every_row_and_no_reason_twice()
    {
        Assert.True(All.Length >= 40);
        Assert.Equal(All.Length, All.Select(c => c.Why).Distinct().Count());
        Assert.All(Enum.GetValues<PainKind>(), kind => Assert.Contains(All, c => c.Comes.Contains(Kebab.Of($"{kind}"))));
        Assert.Contains(All, c => c.Comes == "nothing");
    }

    /// <summary>Ease-off and stop are the practice's: with other ones other rows apply.</summary>
    [Theory]
    [InlineData(3, 5, "+0; morning 3 left knee", "nothing")]
    [InlineData(3, 5, "+0; morning 4 left knee", "next-morning left knee")]
    [InlineData(2, 6, "+0; during 6 left knee", "nothing")]
    [InlineData(2, 4, "+0; during 5 left knee", "stopped left knee")]
    public void The_bands_are_those_of_the_practice(int ease, int stop, string entry, string comes) =>
        Assert.Equal(comes, Judged(ToldLog.Log(entry), new(7, 14, ease, stop)));

    /// <summary>A table that were judged by other bands would be seen to differ.</summary>
    [Theory]
    [InlineData(1, 5)]
    [InlineData(3, 5)]
    [InlineData(2, 4)]
    [InlineData(2, 6)]
    public void Another_band_would_be_seen(int ease, int stop) =>
        Assert.Contains(All, c => Judged(ToldLog.Log(c.Log), new(7, 14, ease, stop)) != c.Comes);

    private static string Judged(Series<LogEntry> log, DayRules rules)
    {
        var found = ReturnedPains
            .Of(log, rules)
            .Concat(PainTrend.Of(Programme, LogBook.Joined(log), rules))
            .OrderBy(p => p.Kind)
            .ThenByDescending(p => p.Day)
            .Select(p =>
                $"{Kebab.Of($"{p.Kind}")} {(p.Place == PainPlace.NotSaid ? "not said" : p.Place)}"
                + (p.Step == PainStep.First || p.Kind < PainKind.Stopped ? "" : $" {Kebab.Of($"{p.Step}")}")
            )
            .ToArray();
        return found.Length == 0 ? "nothing" : string.Join(" + ", found);
    }
}
