using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>Which exercise hurt, until it has been done twice with no more pain than one trains with; and what was asked
/// then.</summary>
public sealed class HurtExerciseTests
{
    private const string Hurts = "bend dull 4 left knee";

    [Theory]
    [InlineData("+0; bend dull 4 left knee", "bend +0 4")]
    [InlineData("+0; bend dull 4 left knee | +2; bend dull 3 left knee", "bend +2 3")]
    [InlineData("+0; sets bend left 2; during 0 | +1; sets bend left 2; during 0 | +2; bend dull 4 left knee", "bend +2 4")]
    [InlineData("+0; bend dull 4 left knee | +2; sets bend left 2; during 1 left knee", "bend +0 4")]
    [InlineData(Hurts0 + " | +2; sets bend left 1; during 1 left knee | +4; sets bend left 1; during 0", "")]
    [InlineData(Hurts0 + " | +2; sets bend left 0; during 0 | +4; sets bend left 0; during 0", "bend +0 4")]
    [InlineData(Hurts0 + " | +2; sets more left 2; during 0 | +4; sets more left 2; during 0", "bend +0 4")]
    [InlineData(
        Hurts0 + " | +2; sets bend left 2; during 1 left knee; morning 4 left knee | +4; sets bend left 2; during 0",
        "bend +0 4"
    )]
    [InlineData(Hurts0 + " | +2; sets bend left 2; during 0; morning 4 neck | +4; sets bend left 2; during 0", "")]
    public void It_is_remembered_until_it_was_done_twice_without(string log, string told) =>
        Assert.Equal(
            told,
            string.Join(
                "; ",
                HurtExercise
                    .Of(Made(log).Client, Rules, ToldLog.Start.AddDays(20))
                    .Select(h => $"{h.Exercise} +{h.Entry.Day.DayNumber - ToldLog.Start.DayNumber} {h.Level}")
            )
        );

    /// <summary>A log says whose programme it is of; another's asked something else.</summary>
    [Theory]
    [InlineData("", true)]
    [InlineData("; course 0123456789abcdef", false)]
    [InlineData("; course KEY", true)]
    public void What_was_asked_is_known_of_this_programme(string course, bool isKnown)
    {
        var (client, training) = Made("");
        var entry = ToldLog.Entry("+0; " + Hurts + course.Replace("KEY", CourseKey.Of(client), StringComparison.Ordinal));
        var asked = AskedThen.Of(client, training, entry, new("bend"), "none of that name");
        Assert.Equal(isKnown ? "2 x hold 30 s, each side" : null, asked?.ToString());
    }

    private const string Hurts0 = "+0; " + Hurts;

    private static readonly DayRules Rules = new(7, 14, 2, 5);

    private static (Client Client, Training Training) Made(string log)
    {
        var practice = Club
            .Empty.Exercise("bend", "2 x hold 30 s, each side")
            .Exercise("more", "2 x hold 30 s, each side")
            .Member("ada", ["- use: bend", "- use: more"], weeks: 3)
            .Read();
        var client = practice.Clients[0] with { Log = ToldLog.Log(log.Split(" | ", StringSplitOptions.RemoveEmptyEntries)) };
        return (client, Training.Of(practice, client));
    }
}
