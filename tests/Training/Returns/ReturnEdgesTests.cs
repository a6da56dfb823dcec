using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What is counted of a log, and what not; the bands and days are those of PainCameBack.md and
/// log-format.md.</summary>
public sealed class ReturnEdgesTests
{
    private static readonly DayRules Rules = new(7, 14, 2, 5);

    /// <summary>Once, at its place; and which exercise it was.</summary>
    [Theory]
    [InlineData("+0; bend sharp left knee", "Stopped left knee bend")]
    [InlineData("+0; during 6 left knee; bend sharp left knee", "Stopped left knee bend")]
    [InlineData("+0; bend dull 6 left knee; nod dull 1 left knee", "Stopped left knee bend")]
    [InlineData("+0; before 1 knee; during 6 left knee", "Stopped left knee ")]
    [InlineData("+0; before 1 knee; during 6 left knee; morning 1 neck", "Stopped left knee ")]
    [InlineData("+0; during 6 left knee; morning 1 right knee", "Stopped left knee ")]
    [InlineData("+0; during 5 left knee", "")]
    [InlineData("+0; bend numb left hand; nod numb left hand", "SameDay left hand bend,nod")]
    public void What_stopped_it_is_told_once_with_its_place(string log, string told) =>
        Assert.Equal(
            told,
            string.Join(
                "; ",
                ReturnedPains.Of(ToldLog.Log(log), Rules).Select(p => $"{p.Kind} {p.Place} {string.Join(",", p.Stopped)}")
            )
        );

    /// <summary>Again within 14 days; and of mornings within 14 days after the seven that were left out.</summary>
    [Theory]
    [InlineData("during 6 left knee", "0 14", "First Clinician")]
    [InlineData("during 6 left knee", "0 15", "First First")]
    [InlineData("before 0; morning 3 left knee", "0 14", "First Out")]
    [InlineData("before 0; morning 3 left knee", "0 15", "First First")]
    [InlineData("before 0; morning 3 left knee", "0 14 35", "First Out Clinician")]
    [InlineData("before 0; morning 3 left knee", "0 14 36", "First Out First")]
    [InlineData("before 0; morning 3 left knee", "0 14 35 56", "First Out Clinician Clinician")]
    public void What_comes_again_in_time_goes_further(string said, string days, string steps) =>
        Assert.Equal(
            steps,
            string.Join(
                ' ',
                ReturnedPains.Of(ToldLog.Log([.. days.Split(' ').Select(d => $"+{d}; {said}")]), Rules).Select(p => p.Step)
            )
        );

    /// <summary>With the worst of them, on the last of their days.</summary>
    [Fact]
    public void Pain_above_the_ease_off_again_is_told_with_its_worst_and_its_last_day()
    {
        var log = ToldLog.Log("+0; during 5 lower-back", "+3; during 3 lower-back", "+5; during 1 lower-back");
        var told = Assert.Single(PainTrend.Of(Made().Client.Programme, log, Rules));
        Assert.Equal((PainKind.AboveEase, 5, ToldLog.Start.AddDays(3)), (told.Kind, told.Level ?? 0, told.Day));
    }

    /// <summary>A side that was said once is meant where none is said.</summary>
    [Fact]
    public void Pain_that_lasts_is_told_of_the_side_that_was_named()
    {
        var (client, _) = Made();
        var log = ToldLog.Log(
            "+0; during 1 knee",
            "+2; during 1 left knee",
            "+4; during 1 left knee",
            "+6; during 1 knee",
            "+8; during 1 left knee",
            "+10; during 1 left knee"
        );
        Assert.Equal(["Lasting left knee"], PainTrend.Of(client.Programme, log, Rules).Select(p => $"{p.Kind} {p.Place}"));
    }

    [Fact]
    public void What_was_quiet_is_told_from_its_least_to_its_most()
    {
        var (client, training) = Made("+0; during 1; morning 0", "+1; during 2; better", "+2; during 0");
        var quiet = QuietPain.Of(CountedLog.Of(client, training, ToldLog.Start.AddDays(20)), []);
        Assert.Equal((0, 2, 2, 1, 3), (quiet.Lowest, quiet.Highest, quiet.Quiet, quiet.NotSaid, quiet.Sessions));
    }

    [Theory]
    [InlineData("+0 session 0", "NoSuchSession")]
    [InlineData("+0 session 1", "")]
    [InlineData("+0 session 2", "")]
    [InlineData("+0 session 3", "NoSuchSession")]
    [InlineData("-1 session 1", "OutsideProgramme")]
    [InlineData("+20 session 1", "")]
    [InlineData("+21 session 1", "OutsideProgramme")]
    [InlineData("+26 session 1", "Future")]
    public void Only_sessions_of_the_programme_count(string entry, string why)
    {
        var (client, training) = Made(entry);
        var log = CountedLog.Of(client, training, ToldLog.Start.AddDays(25));
        Assert.Equal(why, string.Join(", ", log.Others.Select(o => o.Why)));
        Assert.Equal(why.Length == 0 ? 1 : 0, log.Entries.Count);
    }

    [Theory]
    [InlineData("+0", true)]
    [InlineData("+0; steps 0 of 20", false)]
    [InlineData("+0; steps 1 of 20", true)]
    [InlineData("+0; sets bend left 0", false)]
    [InlineData("+0; sets bend left 1", true)]
    [InlineData("+0; sets bend left 0; sets bend right 1", true)]
    [InlineData("+0; sets bend left ?", true)]
    [InlineData("+0; not today time", false)]
    public void A_session_was_done_where_one_piece_of_work_was(string entry, bool isDone)
    {
        var (client, training) = Made(entry);
        Assert.Equal(isDone, CountedLog.Of(client, training, ToldLog.Start.AddDays(20)).Done.Any());
    }

    /// <summary>Two of the first session and one of the second are planned in a week; the fuller of two on a day
    /// counts.</summary>
    [Fact]
    public void Of_two_on_a_day_the_fuller_counts_and_days_stand_in_order()
    {
        var practice = Practice
            .Edit("clients/ada/programme.md", "Session 1\n    days: [Mon]", "Session 1\n    days: [Mon, Fri]")
            .Read();
        var client = practice.Clients[0] with
        {
            Log = ToldLog.Log(
                "+0; steps 12 of 20",
                "+2 session 2; steps 10 of 20",
                "+4; start 08:00; steps 5 of 20",
                "+4; start 18:00; steps 20 of 20",
                "+4; start 19:00; steps 6 of 20",
                "+7"
            ),
        };
        var training = Training.Of(practice, client);
        var week = ReturnedWeek.Of(client, training, CountedLog.Of(client, training, ToldLog.Start.AddDays(20))).First();
        Assert.Equal(
            [(0, 12), (2, 10), (4, 20)],
            week.Counted.Select(e => (e.Day.DayNumber - ToldLog.Start.DayNumber, e.StepsDone ?? 0))
        );
    }

    /// <summary>Two sets on each side, and one more on the left.</summary>
    [Theory]
    [InlineData("+0 session 2; sets more left 2; sets more right 2", "Left 2 of 3, Right 2 of 2")]
    [InlineData("+0; sets bend left 3", "Left 3 of 2")]
    public void Sets_are_held_against_those_of_the_same_exercise_and_side(string entry, string sets)
    {
        var (client, training) = Made(entry);
        var done = SetsDone.Of(client, training, CountedLog.Of(client, training, ToldLog.Start.AddDays(20)));
        Assert.Equal(sets, string.Join(", ", done.Select(d => $"{d.Side} {d.Done} of {d.Planned}")));
    }

    /// <summary>A set that leaves four repetitions is felt as 6 of 10 (Zourdos 2016, J Strength Cond Res 30:267-75, from memory).
    /// The middle of four is between the two in the middle; two points are said, and two sessions of 9 are harder than
    /// meant.</summary>
    [Theory]
    [InlineData("8 8 8", null, false, false)]
    [InlineData("8 8 8 8", 2, true, false)]
    [InlineData("7 7 7 7", 1, false, false)]
    [InlineData("4 4 4 4", -2, true, false)]
    [InlineData("6 6 8 9", 1, false, false)]
    [InlineData("5 6 8 9 9", 2, true, true)]
    public void Effort_is_held_against_what_was_meant(string efforts, int? difference, bool isSaid, bool isHarder)
    {
        var practice = Club
            .Empty.Exercise("lift", "2 x move 6 reps, each side, leave 4")
            .Member("ada", ["- use: lift"], weeks: 3)
            .Read();
        var client = practice.Clients[0] with
        {
            Log = ToldLog.Log([.. efforts.Split(' ').Index().Select(e => $"+{e.Index}; effort {e.Item}")]),
        };
        var training = Training.Of(practice, client);
        var effort = EffortAgainstPlan.Of(training, CountedLog.Of(client, training, ToldLog.Start.AddDays(20)));
        Assert.Equal((difference, isSaid, isHarder), ((int?)effort.Difference, effort.IsSaid, effort.IsHarderThanMeant));
    }

    [Theory]
    [InlineData("+14", true)] // two weeks are told of, and nothing was done in them
    [InlineData("+0 | +7 | +14", false)] // two of four
    [InlineData("+0 | +0 session 2 | +7 | +7 session 2 | +14", false)]
    [InlineData("", false)]
    public void Where_fewer_than_half_were_done_a_reading_tells_little(string log, bool tellsLittle)
    {
        var (client, training) = Made(log.Split(" | ", StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(tellsLittle, ClientReturn.Of(Practice.Read(), client, training, ToldLog.Start.AddDays(20)).TellsLittle);
    }

    private static readonly LittlePractice Practice = Club
        .Empty.Exercise("bend", "2 x hold 30 s, each side")
        .Exercise("more", "2 x hold 30 s, each side, plus 1 x on left")
        .Member("ada", ["- use: bend", "- use: more"], weeks: 3);

    private static (Client Client, Training Training) Made(params string[] log)
    {
        var practice = Practice.Read();
        var client = practice.Clients[0] with { Log = ToldLog.Log(log) };
        return (client, Training.Of(practice, client));
    }
}
