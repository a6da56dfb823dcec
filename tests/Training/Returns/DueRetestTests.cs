using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>When a range is measured again: at the first of the day that the coach set, six full weeks, the last week of the
/// programme, what must be true before going on, a reading beside a demand that is older than 180 days, and a loss; not within 14
/// days of the latest reading. All of it common practice, no source. The programme begins on 2027-01-04.</summary>
public sealed class DueRetestTests
{
    private const string Before = "2026-12-28";

    [Theory]
    [InlineData("six weeks", Before, 12, "", "2027-02-07", "")]
    [InlineData("six weeks", Before, 12, "", "2027-02-08", "SixWeeks 2027-02-08")]
    [InlineData("the last week", Before, 4, "", "2027-01-24", "")]
    [InlineData("the last week", Before, 4, "", "2027-01-25", "LastWeek 2027-01-25")]
    [InlineData("not within 14 days", "2027-01-20", 4, "", "2027-02-02", "")]
    [InlineData("not within 14 days", "2027-01-20", 4, "", "2027-02-03", "LastWeek 2027-02-03")]
    [InlineData("measured in the last week", "2027-01-25", 4, "", "2027-02-28", "")]
    [InlineData("the coach's day", Before, 12, "2027-01-18", "2027-01-17", "")]
    [InlineData("the coach's day", Before, 12, "2027-01-18", "2027-01-18", "SetByCoach 2027-01-18")]
    [InlineData("measured on the coach's day", "2027-01-18", 12, "2027-01-18", "2027-02-20", "")]
    public void It_is_due_at_the_first_of_the_reasons(string why, string read, int weeks, string retest, string today, string due)
    {
        Assert.NotEqual("", why);
        Assert.Equal(due, Due([(read, 10)], weeks, retest, today));
    }

    [Theory]
    [InlineData("bend", "2027-01-12", "MoveOnMet 2027-01-12")]
    [InlineData("bend", Before, "")] // met before it was measured
    [InlineData("nod", "2027-01-12", "")] // of another exercise
    public void What_must_be_true_before_going_on_is_met(string exercise, string since, string due) =>
        Assert.Equal(
            due,
            Due(
                [(Before, 10)],
                12,
                "",
                "2027-01-20",
                [new(new(exercise), null, ["pain at most 2"], MoveOnWord.Met, Day(since), [])]
            )
        );

    /// <summary>Nothing trains it here.</summary>
    [Theory]
    [InlineData("2027-06-26", "")]
    [InlineData("2027-06-27", "Old 2027-06-27")]
    public void A_reading_beside_a_demand_is_good_for_180_days(string today, string due) =>
        Assert.Equal(due, Due([(Before, 10)], 4, "", today, trains: "knee flexion", demand: true));

    [Theory]
    [InlineData(9, "2027-01-10", "")]
    [InlineData(9, "2027-01-11", "Less 2027-01-11")]
    [InlineData(11, "2027-02-28", "")] // within the error of 1.9 cm
    public void A_loss_is_measured_again(int now, string today, string due) =>
        Assert.Equal(due, Due([("2026-11-01", 12), (Before, now)], 4, "", today, trains: "knee flexion"));

    private static string Due(
        (string Day, int Value)[] read,
        int weeks,
        string retest,
        string today,
        Series<MoveOnCheck>? moveOn = null,
        string trains = "ankle dorsiflexion",
        bool demand = false
    )
    {
        var club = Club
            .Empty.Exercise("bend", "2 x hold 30 s, each side", trains: trains)
            .Exercise("nod", "2 x hold 30 s", trains: "cervical flexion")
            .Member("ada", ["- use: bend"], weeks)
            .With(
                "clients/ada/readings.csv",
                "date,motion,side,mode,value,unit,instrument,by,trials\n"
                    + string.Concat(read.Select(r => $"{r.Day},knee to wall,left,active,{r.Value},cm,tape,om,1\n"))
            );
        if (retest.Length > 0)
            club = club.Edit("clients/ada/programme.md", $"weeks: {weeks}", $"weeks: {weeks}\nretest: {retest}");
        if (demand)
            club = club.With(
                "sports/epee.yaml",
                "name: Épée fencing\nstance: Which hand holds the weapon?\nroles: { rear leg: left }\ndemands:\n"
                    + "  - { position: lunge, motion: knee to wall, side: left, mode: active, at-least: 9, because: Reach. }\n"
            );
        var practice = club.Read();
        var client = practice.Clients[0];
        var training = Training.Of(practice, client);
        var ranges = ClientRanges.Of(practice, client, training, Day(today));
        return string.Join(
            ", ",
            DueRetest.Of(client, training, ranges, moveOn ?? []).Select(d => $"{d.Why} {d.Since:yyyy-MM-dd}")
        );
    }

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd");
}
