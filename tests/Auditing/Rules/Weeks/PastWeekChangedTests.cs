using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Auditing;

/// <summary>"A week is over after its last day, and earlier where the log says that the client has done something of a later one"
/// (PastWeekChanged.md). Today is the first day of the programme.</summary>
public sealed class PastWeekChangedTests
{
    private static readonly string Course = CourseKey.Of(
        PracticeReader
            .Read(
                SourceFolder.Of(LittlePractice.Files.Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(f.Value)))),
                []
            )
            .Practice!.Find(new ClientId("tess"))!
    );

    private const string Stretch = "clients/tess/programme.md\n- 1: 2 x hold 30 s\n+ 1: 2 x hold 35 s";
    private const string Press = "clients/tess/programme.md\n- 1: 2 x press 10 s at 50%\n+ 1: 2 x press 10 s at 55%";

    private static readonly string[] Body =
    [
        $"programme: {Course}",
        "title: \"A longer lunge\"",
        "start: 2026-12-07",
        "weeks: 2",
        "sessions:",
        "  - name: \"Ankles\"",
        "    days: \"Mon, Thu\"",
        "    times: [2, 2]",
        "    uses:",
        "      - exercise: wall-calf-stretch",
        "        asks:",
        "          - { weeks: 1, side: \"left\", dose: \"2 x hold 30 s, rest 20 s\" }",
        "          - { weeks: 2, side: \"left\", dose: \"2 x hold 45 s, rest 20 s\" }",
        "      - exercise: calf-press",
        "        asks:",
        "          - { weeks: 1-2, side: \"left\", dose: \"2 x press 10 s at 50%, rest 30 s\" }",
    ];

    private static readonly string Edition = string.Join(
        "\n+ ",
        [
            "clients/tess/editions/1.yaml",
            "# What was published, for comparing. Gradus writes this; leave it as it is.",
            "edition: 1",
            "date: 2026-12-01",
            "training: 61e8e47540c9f0e75e6071ca7635dfa8acbe83ce3e4a1c7d5df2412095b77e39",
            $"plan: {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', Body) + "\n")))}",
            .. Body,
        ]
    );

    [Theory]
    [InlineData("2026-12-07,18:05,1,2,1,COURSE,", "clients/tess/programme.md:9:14")]
    [InlineData("2026-12-07,18:05,1,1,1,COURSE,", "")] // of the week that is not over
    [InlineData("2026-12-08,18:05,1,2,1,COURSE,", "")] // still to come
    [InlineData("2026-12-07,18:05,1,2,1,0123456789abcdef,", "")] // of another programme
    [InlineData("2026-12-07,18:05,1,2,1,COURSE,time", "")] // not done
    public void A_week_is_over_when_something_of_a_later_one_was_done(string entry, string at) =>
        Assert.Equal(at, string.Join(", ", Found(entry, Stretch)));

    [Fact]
    public void What_is_asked_otherwise_is_shown_at_its_use() =>
        Assert.Equal(["clients/tess/programme.md:14:14"], Found("2026-12-07,18:05,1,2,1,COURSE,", Press));

    private static IEnumerable<string> Found(string entry, string change) =>
        OneRule
            .Says(
                "past-week-changed",
                Edition,
                change,
                "clients/tess/log.csv\n+ date,start,session,week,edition,course,not-today\n+ "
                    + entry.Replace("COURSE", Course, StringComparison.Ordinal)
            )
            .Select(f => $"{f.At}");
}
