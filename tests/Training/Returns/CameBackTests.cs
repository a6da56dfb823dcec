using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What comes back acts on the next publishing: what a clinician would sign, and what not.</summary>
public sealed class CameBackTests
{
    /// <summary>A knee and a wrist, from 2027-01-04 for two weeks, answered on 2026-11-02.</summary>
    private static readonly LittlePractice Practice = Club
        .Empty.Exercise("knee-work", "2 x press 10 s at 50%, each side", position: "supine", trains: "knee flexion")
        .Exercise("wrist-work", "2 x press 10 s at 50%, each side", position: "supine", trains: "wrist flexion")
        .Member("ada", ["- use: knee-work\n- use: wrist-work"], weeks: 2);

    [Theory]
    [InlineData("Nothing came back", "", "", "nothing")]
    [InlineData("A quiet session", "+0; before 1 left knee; during 2 left knee; morning 1 left knee", "", "nothing")]
    [InlineData("A sign: nothing goes on", "+0; alarm faint", "", "stale + not cleared")]
    [InlineData("A sign, asked again, no leave", "+0; alarm faint", "answered 2027-01-06", "not cleared")]
    [InlineData("A sign, a leave, not asked", "+0; alarm faint", "leave 2027-01-05 2027-12-31", "stale")]
    [InlineData("A leave from before", "+0; alarm faint", "leave 2027-01-03 2027-12-31; answered 2027-01-06", "not cleared")]
    [InlineData("A leave of that day", "+0; alarm faint", "leave 2027-01-04 2027-12-31; answered 2027-01-06", "not cleared")]
    [InlineData("A leave, and asked again", "+0; alarm faint", "leave 2027-01-05 2027-12-31; answered 2027-01-06", "nothing")]
    [InlineData(
        "A leave of that day of asking",
        "+0; alarm faint",
        "leave 2027-01-06 2027-12-31; answered 2027-01-06",
        "nothing"
    )]
    [InlineData(
        "A leave of the day after asking",
        "+0; alarm faint",
        "leave 2027-01-07 2027-12-31; answered 2027-01-06",
        "short"
    )]
    [InlineData("A leave that is still to come", "+0; alarm faint", "leave 2027-01-08 2027-12-31; answered 2027-01-06", "short")]
    [InlineData("A leave that ends early", "+0; alarm faint", "leave 2027-01-05 2027-01-12; answered 2027-01-06", "short")]
    [InlineData(
        "Two leaves with days between them",
        "+0; alarm faint",
        "leave 2027-01-05 2027-01-07; leave 2027-01-10 2027-12-31; answered 2027-01-04",
        "stale + short"
    )]
    [InlineData(
        "Two leaves, one after the other",
        "+0; alarm faint",
        "leave 2027-01-05 2027-01-09; leave 2027-01-10 2027-12-31; answered 2027-01-04",
        "stale"
    )]
    [InlineData("Its limit holds", "+0; alarm faint", "leave 2027-01-05 2027-12-31 40; answered 2027-01-06", "beyond")]
    [InlineData("A sign of the programme before", "-30; alarm faint; course 0123456789abcdef", "", "stale + not cleared")]
    [InlineData("Pain in the chest", "+0; during 1 chest", "answered 2027-01-06", "not cleared")]
    [InlineData("A snap", "+0; knee-work snap left calf", "", "stale")]
    [InlineData("A snap, asked again, no clinician", "+0; knee-work snap left calf", "answered 2027-01-06", "clinician")]
    [InlineData("A snap, seen", "+0; knee-work snap left calf", "answered 2027-01-06; seen 2027-01-05", "nothing")]
    [InlineData("Sharp once", "+0; knee-work sharp left knee", "", "stale")]
    [InlineData("Sharp once, asked on that day", "+0; knee-work sharp left knee", "answered 2027-01-04", "stale")]
    [InlineData("Sharp once, asked again", "+0; knee-work sharp left knee", "answered 2027-01-05", "nothing")]
    [InlineData("Worse on the morning after", "+0; before 0; morning 3 left knee", "", "stale")]
    [InlineData("Worse, asked again", "+0; before 0; morning 3 left knee", "answered 2027-01-06", "nothing")]
    [InlineData("7 before and after", "+0; before 7 neck; morning 7 neck", "", "stale")]
    public void The_next_publishing_waits(string why, string log, string then, string comes)
    {
        Assert.NotEqual("", why);
        Assert.Equal(comes, string.Join(" + ", Against(log == "" ? [] : [log], then).Values.First()));
    }

    [Fact]
    public void Twice_at_one_place_waits_for_a_clinician_where_the_place_is_loaded_and_nowhere_else()
    {
        string[] twice = ["-20; knee-work sharp left knee", "-10; knee-work sharp left knee"];
        var against = Against(twice, "answered 2027-01-03");
        Assert.Equal(["clinician"], against["knee-work"]);
        Assert.Equal(["nothing"], against["wrist-work"]);
        Assert.Equal(["nothing"], Against(twice, "answered 2027-01-03; seen 2026-12-28")["knee-work"]);
        Assert.Equal(["clinician"], Against(twice, "answered 2027-01-03; seen 2026-12-20")["knee-work"]);
    }

    private static Dictionary<string, string[]> Against(string[] log, string then)
    {
        var practice = Practice.Read();
        var client = practice.Clients[0] with { Log = ToldLog.Log(log) };
        foreach (var part in then.Split("; ", StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split(' ')))
            client = part[0] switch
            {
                "answered" => client with { Answered = Day(part[1]) },
                "leave" => Cleared(client, AlwaysAsked.Symptoms, Day(part[1]), Day(part[2]), part.Length > 3),
                _ => Cleared(client, AlwaysAsked.PainNow, Day(part[1]), Day(part[1]).AddYears(1), false),
            };
        return Training
            .Of(practice, client)
            .Uses.ToDictionary(u => u.Exercise.Id.Text, u => Words(u) is { Length: > 0 } words ? words : ["nothing"]);
    }

    private static string[] Words(Use use) =>
        [
            // What the little club asks of wrists is not what is asked here.
            .. use
                .Against.Where(a => a is not Objection.NotAsked)
                .Select(a =>
                    a switch
                    {
                        Objection.CameBack { IsAsked: true } => "clinician",
                        Objection.CameBack => "stale",
                        Objection.NotCleared => "not cleared",
                        Objection.ClearanceShort => "short",
                        Objection.BeyondLimit => "beyond",
                        _ => a.GetType().Name,
                    }
                )
                .OrderDescending(StringComparer.Ordinal),
        ];

    private static Client Cleared(Client client, ConditionId condition, DateOnly on, DateOnly until, bool limited) =>
        client with
        {
            Clearances =
            [
                .. client.Clearances,
                new(
                    condition,
                    "a doctor",
                    on,
                    until,
                    limited ? [new ClearanceLimit.EffortAtMost(40, "effort at most 40 %")] : [],
                    client.At
                ),
            ],
        };

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd");
}
