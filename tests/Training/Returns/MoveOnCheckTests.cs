using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What the log says of a condition before somebody goes on: met, not met, or not told, for a blank is never a no
/// (practice-format.md, log-format.md). Two sets on each side are planned.</summary>
public sealed class MoveOnCheckTests
{
    private const string Good = "sets bend left 2; sets bend right 2; during 1; morning 0";

    [Theory]
    [InlineData("pain at most 2, two sessions running", $"+0; {Good} | +7; {Good}", MoveOnWord.Met, 7)]
    [InlineData("pain at most 2, two sessions running", $"+0; {Good}", MoveOnWord.NotTold, null)]
    [InlineData("pain at most 2", $"+0; {Good}", MoveOnWord.Met, 0)]
    [InlineData("pain at most 1", $"+0; {Good}", MoveOnWord.Met, 0)]
    [InlineData("pain at most 0", $"+0; {Good}", MoveOnWord.NotMet, null)]
    [InlineData("1 sessions running", $"+0; {Good}", MoveOnWord.Met, 0)]
    [InlineData("four sessions running", $"+0; {Good} | +1; {Good} | +7; {Good}", MoveOnWord.NotTold, null)]
    [InlineData("four sessions running", $"+0; {Good} | +1; {Good} | +7; {Good} | +8; {Good}", MoveOnWord.Met, 8)]
    [InlineData("two sessions running, three sessions running", $"+0; {Good} | +7; {Good}", MoveOnWord.NotTold, null)]
    [InlineData("pain at most 2", "+0; sets bend left 2; sets bend right 1; during 1; morning 0", MoveOnWord.NotMet, null)]
    [InlineData("pain at most 2", "+0; sets bend left 2; sets bend right ?; during 1; morning 0", MoveOnWord.NotTold, null)]
    [InlineData("pain at most 2", "+0; sets bend left 2; sets bend right 2; during 1", MoveOnWord.NotTold, null)]
    [InlineData("pain at most 2", "+0; sets bend left 2; sets bend right 2; during 1; better", MoveOnWord.Met, 0)]
    [InlineData("pain at most 2", "+0; sets bend left 2; sets bend right 2; before 3; during 1; better", MoveOnWord.NotMet, null)]
    [InlineData("pain at most 2", "+0; sets bend left 2; bend dull; during 1; morning 0", MoveOnWord.NotMet, null)]
    [InlineData("1 sessions running", "+0; sets bend left 2; bend dull", MoveOnWord.NotMet, null)]
    public void The_log_answers_what_it_can(string conditions, string log, MoveOnWord word, int? since)
    {
        var check = Assert.Single(Checked(conditions, log));
        Assert.Equal(word, check.Word);
        Assert.Equal(since, check.Since?.DayNumber - ToldLog.Start.DayNumber);
        Assert.Empty(check.Asked);
    }

    [Fact]
    public void What_the_log_cannot_answer_the_coach_is_asked()
    {
        var check = Assert.Single(Checked("pain at most 2, the heel stays down", $"+0; {Good}"));
        Assert.Equal(["pain at most 2"], check.Computed);
        Assert.Equal(["the heel stays down"], check.Asked);
        Assert.Null(Assert.Single(Checked("the heel stays down", $"+0; {Good}")).Word);
    }

    /// <summary>Of a use that cannot be planned nothing is met.</summary>
    [Fact]
    public void A_use_that_is_refused_has_no_conditions() =>
        Assert.Empty(Checked("pain at most 2", $"+0; {Good}", "\n  side: parry arm"));

    /// <summary>Whatever was done before it.</summary>
    [Theory]
    [InlineData("sets bend left 1; sets bend right 1", MoveOnWord.Met)]
    [InlineData("sets bend left 1; sets bend right 1; bend dull", MoveOnWord.NotMet)]
    public void What_was_stopped_is_not_met(string log, MoveOnWord word) =>
        Assert.Equal(word, Assert.Single(Checked("1 sessions running", "+0; " + log, dose: "1 x hold 30 s, each side")).Word);

    private static MoveOnCheck[] Checked(
        string conditions,
        string log,
        string more = "",
        string dose = "2 x hold 30 s, each side"
    )
    {
        var practice = Club
            .Empty.Exercise("bend", dose)
            .Member("ada", [$"- use: bend{more}\n  move-on: [{conditions}]"], weeks: 3)
            .Read();
        var client = practice.Clients[0] with { Log = ToldLog.Log(log.Split(" | ")) };
        var training = Training.Of(practice, client);
        return [.. MoveOnCheck.Of(client, training, CountedLog.Of(client, training, ToldLog.Start.AddDays(20)))];
    }
}
