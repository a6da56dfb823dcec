using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Auditing;

/// <summary>What hurt and is asked for more: MoreAfterPain.md. Today is 2026-12-07; Bram has one use, an ankle stretch, of which
/// week 1 asks 3 x hold 30 s and week 2 longer. A dull stop and pain of 3 out of 10 ask for no new answers.</summary>
public sealed class MoreAfterPainTests
{
    private const string Head =
        "clients/bram/log.csv\n+ date,start,session,week,edition,exercise,side,sets,pain-during,stopped,stopped-for,where";

    private const string Weeks = "by-week: { 1: 3 x hold 30 s, 2: 3 x hold 40 s }";

    /// <summary>The side, whether it was stopped, why, and where it hurt.</summary>
    [Theory]
    [InlineData("left,1,,yes,dull,3 left ankle", 1)]
    [InlineData("left,1,,yes,dull,", 1)]
    [InlineData("left,1,,yes,tired,", 0)]
    [InlineData("left,1,,yes,time,", 0)]
    [InlineData("left,1,,yes,,2 left ankle", 1)] // where it hurt when it was stopped
    [InlineData("left,1,,yes,,0", 0)]
    [InlineData("left,1,,yes,,", 0)]
    [InlineData("left,3,,,,3 left ankle", 1)] // above the ease-off
    [InlineData("left,3,,,,2 left ankle", 0)]
    [InlineData("left,1,,yes,tired,3 left ankle", 1)]
    public void It_is_told_of_what_hurt(string line, int told) => Assert.Equal(told, Found([Line("2026-12-05", line)]).Length);

    [Theory]
    [InlineData("2026-11-10", 1)]
    [InlineData("2026-11-09", 0)]
    public void It_is_remembered_for_28_days(string day, int told) =>
        Assert.Equal(
            told,
            Found(
                [Line(day, "left,1,,yes,dull,3 left ankle")],
                "clients/bram/programme.md\n- start: 2026-12-07\n- weeks: 2\n+ start: 2026-11-09\n+ weeks: 6",
                "clients/bram/client.yaml\n- agreed: { training: 2026-11-21 }\n+ agreed: { training: 2026-11-01 }"
            ).Length
        );

    /// <summary>Of each day the worst pain while it was done; blank is not 0.</summary>
    [Theory]
    [InlineData("0", "1 left ankle", 0)]
    [InlineData("2 left ankle", "2 left ankle", 0)]
    [InlineData("0", "3 left ankle", 1)]
    [InlineData("0", "", 1)]
    public void It_is_forgotten_once_it_has_been_done_twice_without(string first, string second, int told) =>
        Assert.Equal(
            told,
            Found([
                Line("2026-12-03", "left,1,,yes,dull,3 left ankle"),
                Line("2026-12-05", "left,3,,,,", first),
                Line("2026-12-06", "left,3,,,,", second),
            ]).Length
        );

    [Fact]
    public void A_week_that_is_over_asks_nothing_more() =>
        Assert.Empty(
            Found(
                [Line("2026-11-24", "left,1,,yes,dull,3 left ankle")],
                "clients/bram/programme.md\n- start: 2026-12-07\n- weeks: 2\n+ start: 2026-11-23\n+ weeks: 3",
                "clients/bram/programme.md\n- " + Weeks + "\n+ by-week: { 1: 3 x hold 30 s, 2: 3 x hold 40 s, 3: 3 x hold 30 s }"
            )
        );

    /// <summary>Week 2 ends today, and what is marked is its line.</summary>
    [Fact]
    public void A_week_on_its_last_day_is_not_over()
    {
        var found = Assert.Single(
            Found(
                [Line("2026-11-28", "left,1,,yes,dull,3 left ankle")],
                "clients/bram/programme.md\n- start: 2026-12-07\n+ start: 2026-11-24"
            )
        );
        Assert.Equal("3 x hold 40 s".Length, found.Length);
    }

    /// <summary>Of two uses the one that asks more first.</summary>
    [Fact]
    public void The_earliest_week_is_told() =>
        Assert.Contains(
            "; week 2 asks more",
            Assert
                .Single(
                    Found(
                        [Line("2026-12-05", "left,1,,yes,dull,3 left ankle")],
                        "clients/bram/programme.md\n- - use: wall-calf-stretch\n+ - use: wall-calf-stretch\n+   as: late\n"
                            + "+   by-week: { 1: 3 x hold 30 s, 3: 3 x hold 40 s }\n+ - use: wall-calf-stretch",
                        "clients/bram/programme.md\n- weeks: 2\n+ weeks: 3"
                    )
                )
                .Sentence,
            StringComparison.Ordinal
        );

    [Fact]
    public void The_harder_version_is_more() =>
        Assert.EndsWith(
            ": its harder version, 'Calf press'.",
            Assert
                .Single(
                    Found(
                        [Line("2026-12-05", "left,1,,yes,dull,3 left ankle")],
                        "clients/bram/programme.md\n- " + Weeks + "\n+ by-week: { 1: 3 x hold 30 s, 2: { use: harder } }"
                    )
                )
                .Sentence,
            StringComparison.Ordinal
        );

    /// <summary>Who could not be asked again yet reads that alone.</summary>
    [Fact]
    public void Where_an_error_stands_it_is_silent() =>
        Assert.Empty(Found([Line("2026-12-05", "left,1,,yes,sharp,4 left ankle")]));

    /// <summary>Worse on a second morning, so that it is out for some days, which is an error of its own.</summary>
    [Theory]
    [InlineData("4 left ankle", 0)]
    [InlineData("1 left ankle", 1)]
    public void Where_it_is_out_it_is_silent(string firstMorning, int told) =>
        Assert.Equal(
            told,
            OneRule
                .Says(
                    "more-after-pain",
                    "clients/bram/log.csv\n+ date,start,session,week,edition,exercise,pain-before,pain-morning,where"
                        + $"\n+ 2026-12-03,18:05,1,1,1,,0,{firstMorning},\n+ 2026-12-05,18:05,1,1,1,,0,4 left ankle,"
                        + "\n+ 2026-12-05,18:05,1,1,1,wall-calf-stretch,,,3 left ankle",
                    "clients/bram/programme.md\n- by-week: { 1: 3 x hold 30 s }\n+ " + Weeks,
                    "clients/bram/programme.md\n- start: 2026-12-07\n+ start: 2026-12-01",
                    "clients/bram/client.yaml\n- answered: 2026-11-21\n+ answered: 2026-12-06",
                    "clients/bram/answers.yaml\n- answered: 2026-11-21\n+ answered: 2026-12-06"
                )
                .Length
        );

    /// <summary>A leave after a second stop takes the error away, and not the warning.</summary>
    [Theory]
    [InlineData("", 0)]
    [InlineData("clearances: [{ condition: pain-now, by: a doctor, on: 2026-12-06, until: 2027-06-30 }]", 1)]
    public void After_a_leave_it_is_told(string leave, int told) =>
        Assert.Equal(
            told,
            Found(
                [Line("2026-12-03", "left,1,,yes,sharp,4 left ankle"), Line("2026-12-05", "left,1,,yes,sharp,4 left ankle")],
                $"clients/bram/client.yaml\n- answered: 2026-11-21\n+ answered: 2026-12-06\n+ {leave}",
                "clients/bram/answers.yaml\n- answered: 2026-11-21\n+ answered: 2026-12-06"
            ).Length
        );

    /// <summary>The week in which it hurt is changed in the next edition, and asked less in the one before.</summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    public void What_was_asked_stands_in_the_edition(int edition, int week)
    {
        var line = $"2026-12-07,18:05,1,1,{edition},wall-calf-stretch,left,1,,yes,dull,3 left ankle";
        var said = Assert.Single(
            OneRule.Says(
                "more-after-pain",
                "clients/tess/programme.md\n- 1: 2 x hold 30 s\n+ 1: 2 x hold 35 s",
                Edition(1, "30 s"),
                Edition(2, "35 s"),
                Head.Replace("bram", "tess", StringComparison.Ordinal) + $"\n+ 2026-12-07,18:05,1,1,{edition},,,,3,,,\n+ {line}"
            )
        );
        Assert.Contains(
            $"when '2 x hold {(edition == 1 ? 30 : 35)} s, rest 20 s, on left' was asked; week {week} asks more",
            said.Sentence,
            StringComparison.Ordinal
        );
    }

    private static string Edition(int number, string hold)
    {
        var tess = PracticeReader
            .Read(
                SourceFolder.Of(LittlePractice.Files.Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(f.Value)))),
                []
            )
            .Practice!.Find(new ClientId("tess"))!;
        string[] body =
        [
            $"programme: {CourseKey.Of(tess)}",
            "title: \"A longer lunge\"",
            "start: 2026-12-07",
            "weeks: 2",
            "sessions:",
            "  - name: \"Ankles\"",
            "    days: \"Mon, Thu\"",
            "    times: [2, 2]",
            "    uses:",
            "      - exercise: calf-press",
            "        asks:",
            "          - { weeks: 1-2, side: \"left\", dose: \"2 x press 10 s at 50%, rest 30 s\" }",
            "      - exercise: wall-calf-stretch",
            "        asks:",
            $"          - {{ weeks: 1-2, side: \"left\", dose: \"2 x hold {hold}, rest 20 s\" }}",
        ];
        return string.Join(
            "\n+ ",
            [
                $"clients/tess/editions/{number}.yaml",
                "# What was published, for comparing. Gradus writes this; leave it as it is.",
                $"edition: {number}",
                "date: 2026-12-07",
                "training: 61e8e47540c9f0e75e6071ca7635dfa8acbe83ce3e4a1c7d5df2412095b77e39",
                $"plan: {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', body) + "\n")))}",
                .. body,
            ]
        );
    }

    private static Finding[] Found(string[] lines, params string[] edits) =>
        OneRule.Says(
            "more-after-pain",
            [
                string.Join('\n', lines.Prepend(Head)),
                "clients/bram/programme.md\n- by-week: { 1: 3 x hold 30 s }\n+ " + Weeks,
                .. edits.Any(e => e.Contains("+ start", StringComparison.Ordinal))
                    ? (string[])[]
                    : ["clients/bram/programme.md\n- start: 2026-12-07\n+ start: 2026-12-01"],
                .. edits,
            ]
        );

    /// <summary>A session and its one exercise.</summary>
    private static string Line(string day, string exercise, string during = "") =>
        $"+ {day},18:05,1,1,1,,,,{during},,,\n+ {day},18:05,1,1,1,wall-calf-stretch,{exercise}";
}
