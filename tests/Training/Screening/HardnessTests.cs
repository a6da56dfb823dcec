using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>From which week work is too hard for whom. Four gentle weeks for somebody who is not regularly active, and 70 per
/// cent (7 of 10) as hard, are common practice, no source; so is what the practice asks of people under 18 at most, 60 per cent
/// where it says nothing.</summary>
public sealed class HardnessTests
{
    [Theory]
    [InlineData("1: 2 x press 10 s at 69%", null)]
    [InlineData("1: 2 x press 10 s at 70%", 1)]
    [InlineData("1: 2 x press 10 s at 50%\n    3: 2 x press 10 s at 80%", 3)]
    [InlineData("1: 2 x press 10 s at 50%\n    4: 2 x press 10 s at 80%", 4)]
    [InlineData("1: 2 x press 10 s at 50%\n    5: 2 x press 10 s at 80%", null)]
    public void The_first_hard_week_of_four_is_too_early(string byWeek, int? week) =>
        Assert.Equal(week, Hardness.TooEarly(Of(byWeek).Use)?.Week);

    [Theory]
    [InlineData("2011", "1: 2 x press 10 s at 60%", null)]
    [InlineData("2011", "1: 2 x press 10 s at 61%", 1)]
    [InlineData("2011", "1: 2 x press 10 s at 50%\n    3: 2 x press 10 s at 70%", 3)]
    [InlineData("1990", "1: 2 x press 10 s at 90%", null)]
    public void The_first_week_beyond_the_limit_for_the_young_is_named(string born, string byWeek, int? week)
    {
        var (practice, use) = Of(byWeek, born);
        Assert.Equal(week, Hardness.BeyondYouthLimit(practice, practice.Clients.Single(), use)?.Week);
    }

    private static (Gradus.Domain.Practice Practice, Use Use) Of(string byWeek, string born = "1990")
    {
        var practice = Club
            .Empty.Exercise("push", "2 x press 10 s at 10-100%, each side", position: "supine")
            .Member("ada", [$"- use: push\n  side: left\n  by-week:\n    {byWeek}"], weeks: 6)
            .Edit("clients/ada/client.yaml", "born: 1990", $"born: {born}")
            .Edit("clients/ada/client.yaml", "{ training: 2026-11-02 }", "{ training: 2026-11-02, guardian: 2026-11-02 }")
            .Read();
        return (practice, Assert.Single(Planned.Uses(practice)));
    }
}
