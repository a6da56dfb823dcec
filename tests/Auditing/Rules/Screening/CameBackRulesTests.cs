using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What stands in a log against the next publishing, on the first day on which it does and on the last. Today is
/// 2026-12-07; Bram answered on 2026-11-21 and has one use, an ankle stretch. The days are those of the rules' pages.</summary>
public sealed class CameBackRulesTests
{
    private const string Mornings = "date,start,session,week,edition,pain-before,pain-during,pain-morning";
    private const string NotToday = "date,start,session,week,edition,not-today";
    private const string Alarm = "date,start,session,week,edition,alarm";
    private const string Stops = "date,start,session,week,edition,stopped,stopped-for,pain-during";

    /// <summary>A leave of a cardiologist from that day on.</summary>
    private const string Leave = "clearances: [{ condition: signs-or-symptoms, by: a cardiologist, on: DAY, until: 2027-06-30 }]";

    public static readonly Series<PlantedSourceFault> Faults =
    [
        new(
            "worse on two mornings, the second seven days ago",
            "error trained-while-out",
            [Log(Mornings, Worse("2026-11-25"), Worse("2026-11-30")), .. Answered("2026-12-01")]
        ),
        new(
            "worse on two mornings, the second yesterday",
            "error trained-while-out",
            [Log(Mornings, Worse("2026-12-01"), Worse("2026-12-06")), .. Answered("2026-12-07")]
        ),
        new(
            "the same for a use of one week",
            "error trained-while-out",
            [Log(Mornings, Worse("2026-12-01"), Worse("2026-12-06")), OneWeek, .. Answered("2026-12-07")]
        ),
        new(
            "worse on two mornings, and nobody asked again: that comes first",
            "error pain-came-back",
            [Log(Mornings, Worse("2026-12-01"), Worse("2026-12-05")), .. Answered("2026-12-02")]
        ),
        new(
            "worse on two mornings at another place",
            "",
            [Log(Mornings, Worse("2026-12-01", "left wrist"), Worse("2026-12-05", "left wrist")), .. Answered("2026-12-06")]
        ),
        new(
            "worse on two mornings, nobody said where: whatever is done loads it",
            "error trained-while-out",
            [Log(Mornings, Worse("2026-12-01", ""), Worse("2026-12-05", "")), .. Answered("2026-12-06")]
        ),
        new("news on the day of the answers", "error health-news-came-back", [Log(NotToday, News("2026-11-21"))]),
        new("news of today", "error health-news-came-back", [Log(NotToday, News("2026-12-07"))]),
        new("news from before the answers", "", [Log(NotToday, News("2026-11-20"))]),
        new(
            "a sign, and a leave of the same day",
            "error sign-came-back",
            [
                Log(Alarm, "2026-12-01,18:05,1,1,1,chest"),
                .. Answered("2026-12-02", Leave.Replace("DAY", "2026-12-01", StringComparison.Ordinal)),
            ]
        ),
        new(
            "a sign, a leave, and asked on the day of the sign",
            "error sign-came-back",
            [
                Log(Alarm, "2026-12-01,18:05,1,1,1,chest"),
                .. Answered("2026-12-01", Leave.Replace("DAY", "2026-12-02", StringComparison.Ordinal)),
            ]
        ),
        new(
            "a sign, and a leave for something else",
            "error sign-came-back",
            [
                Log(Alarm, "2026-12-01,18:05,1,1,1,chest"),
                .. Answered(
                    "2026-12-02",
                    "clearances: [{ condition: ankle-injury, by: a doctor, on: 2026-12-02, until: 2027-06-30 }]"
                ),
            ]
        ),
        new(
            "stopped twice, for a use of one week",
            "error pain-came-back",
            [Log(Stops, Stop("2026-11-23"), Stop("2026-11-30")), OneWeek, .. Answered("2026-12-01")]
        ),
        new(
            "stopped twice at another place",
            "",
            [Log(Stops, Stop("2026-11-23", "left wrist"), Stop("2026-11-30", "left wrist")), .. Answered("2026-12-01")]
        ),
    ];

    public static TheoryData<PlantedSourceFault> All => new(Faults);

    [Theory]
    [MemberData(nameof(All))]
    public void It_stands_against_the_next_publishing_as_long_as_it_should(PlantedSourceFault fault) => fault.MustBeFound();

    /// <summary>What cannot be planned is said once; what it would load, nobody knows.</summary>
    [Theory]
    [InlineData("worse on two mornings", Mornings, "2026-12-01,18:05,1,1,1,0,2,4", "2026-12-05,18:05,1,1,1,0,2,4")]
    [InlineData("stopped twice", Stops, "2026-11-23,18:05,1,1,1,yes,sharp,4", "2026-11-30,18:05,1,1,1,yes,sharp,4")]
    public void Nothing_is_said_of_a_use_that_is_refused(string why, string head, string first, string second) =>
        new PlantedSourceFault(
            why,
            "error side-unresolved",
            [
                Log(head, first, second),
                "clients/bram/programme.md\n- - use: wall-calf-stretch\n+ - use: wall-calf-stretch\n+   side: parry arm",
                .. Answered("2026-12-06"),
            ]
        ).MustBeFound();

    /// <summary>Who said yes needs a leave that can know of what came later.</summary>
    [Fact]
    public void A_leave_is_asked_for_from_the_day_after_a_sign_on() =>
        Assert.Contains(
            Trial.Of([
                Edited(Log(Alarm, "2026-12-05,18:05,1,1,1,chest")),
                Edited("clients/bram/answers.yaml\n- signs-or-symptoms: no\n+ signs-or-symptoms: yes"),
                .. Answered("2026-11-21", Leave.Replace("DAY", "2026-11-25", StringComparison.Ordinal)).Select(Edited),
            ]),
            f =>
                f.Sentence.EndsWith(
                    "there is none from 2026-12-06 on, the day after a sign that came back.",
                    StringComparison.Ordinal
                )
        );

    private const string OneWeek = "clients/bram/programme.md\n- weeks: 2\n+ weeks: 1";

    private static Edit Edited(string text) => Edit.Of(text.Split('\n')[0], text.Split('\n').Skip(1));

    private static string Log(params string[] lines) =>
        string.Join('\n', lines.Select(line => "+ " + line).Prepend("clients/bram/log.csv"));

    private static string Worse(string day, string where = "left ankle") => $"{day},18:05,1,1,1,0,2 {where},4 {where}";

    private static string Stop(string day, string where = "left ankle") => $"{day},18:05,1,1,1,yes,sharp,4 {where}";

    private static string News(string day) => $"{day},18:05,1,1,1,health";

    /// <summary>Asked again on that day.</summary>
    private static string[] Answered(string day, string more = "") =>
        [
            $"clients/bram/client.yaml\n- answered: 2026-11-21\n+ answered: {day}" + (more == "" ? "" : $"\n+ {more}"),
            $"clients/bram/answers.yaml\n- answered: 2026-11-21\n+ answered: {day}",
        ];
}
