using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gradus.Tests.Browser.GuideScripts;

namespace Gradus.Tests.Browser;

/// <summary>The short text for the coach: a line that a person reads, in the words of the page, and below it the line that a
/// program checks (log-format.md).</summary>
public sealed class LogMessageTests(PublishedContent content)
{
    private const string English = """
        {
          "language": "en", "day": "{weekday} {day} {month}", "told": "{day}, week {week}, {session}: {how} Effort {effort}, pain {pain}.",
          "stepsOne": "{done} of {of} step.", "stepsOther": "{done} of {of} steps.", "toldDone": "done.", "toldStopped": "Stopped early.",
          "toldAlarm": "Stopped for a sign that cannot wait.", "toldSession": "session {number}",
          "toldSkipped": "not today.", "titles": "1=Ankles and hips\n2=Shoulders = both"
        }
        """;

    private const string German = """
        {
          "language": "de", "day": "{weekday}, {day}. {month}", "told": "{day}, Woche {week}, {session}: {how} Anstrengung {effort}, Schmerz {pain}.",
          "stepsOne": "{done} von {of} Schritt.", "stepsOther": "{done} von {of} Schritten.", "toldDone": "gemacht.",
          "toldStopped": "Vorzeitig beendet.", "toldAlarm": "Beendet.", "toldSkipped": "heute nicht.", "toldSession": "Einheit {number}", "titles": "1=Knöchel und Hüfte"
        }
        """;

    [Theory]
    [InlineData(
        """{"day":"2026-12-07","week":1,"session":2,"edition":"0a1b2c3d","pain":3,"where":"knee","side":"left"}""",
        "gradus 2026-12-07; edition 0a1b2c3d; week 1; session 2; done; pain-during 3 left knee; sum "
    )]
    [InlineData(
        """
            {"day":"2026-12-07","week":1,"session":2,"done":false,
             "exercises":[{"exercise":"wall-lean","sets":0,"stopped":true}]}
            """,
        "gradus 2026-12-07; week 1; session 2; stopped; sets wall-lean 0; left out wall-lean; sum "
    )]
    [InlineData(
        """
            {"day":"2026-12-07","start":"18:05","week":1,"session":1,"kind":"full","edition":"0a1b2c3d","course":"9f8e7d6c5b4a3210",
             "did":12,"of":20,"minutes":17.5,"effort":4,"before":{"level":0},"pain":2,"where":"knee","side":"left",
             "after":{"level":3,"where":"lower-back","side":""},"morning":"yes","note":"slept badly; sore\nback",
             "exercises":[{"exercise":"ankle-rock","side":"left","sets":2},{"exercise":"ankle-rock","side":"right","sets":1},
             {"exercise":"plank","sets":0,"stopped":true,"feel":"sharp","places":[{"where":"knee","side":"left"}]},
             {"exercise":"ankle-test","side":"left","sets":3,"measured":[9.5,10,10]}]}
            """,
        "gradus 2026-12-07 18:05; edition 0a1b2c3d; course 9f8e7d6c5b4a3210; week 1; session 1; kind full; done; steps 12 of 20; "
            + "minutes 17.5; effort 4; pain-before 0; pain-during 2 left knee; pain-morning 3 lower-back; worse yes; "
            + "sets ankle-rock left 2, ankle-rock right 1, plank 0, ankle-test left 3; left out plank sharp left knee; "
            + "measured ankle-test left 9.5 10 10; note slept badly, sore,back; sum "
    )]
    [InlineData(
        """{"day":"2026-12-07","week":1,"session":2,"done":false,"skip":"ill"}""",
        "gradus 2026-12-07; week 1; session 2; not today ill; sum "
    )]
    public async Task The_last_line_says_what_was_done_and_its_own_sum(string row, string begins)
    {
        var lines = (await Message(row, English)).Split('\n');
        Assert.Equal(2, lines.Length);
        Assert.Equal(begins + await Ask(new JsonObject { ["kind"] = "sum", ["text"] = begins[..^"; sum ".Length] }), lines[1]);
    }

    /// <summary>The morning after is known when the next session is told.</summary>
    [Fact]
    public async Task The_session_before_is_told_again_to_the_program()
    {
        var lines = (
            await Message(
                """
                [{"day":"2026-12-01","week":1,"session":1},
                 {"day":"2026-12-07","week":1,"session":1,"morning":"no"},{"day":"2026-12-09","week":1,"session":2}]
                """,
                English
            )
        ).Split('\n');
        Assert.Equal(3, lines.Length);
        Assert.StartsWith("Wed 9 Dec", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("gradus 2026-12-07; week 1; session 1; done; worse no; sum ", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("gradus 2026-12-09; week 1; session 2; done; sum ", lines[2], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(
        """{"day":"2026-12-07","week":1,"session":1,"done":false,"did":1,"of":20}""",
        "Mon 7 Dec, week 1, Ankles and hips: 1 of 20 steps. Stopped early. Effort –, pain –."
    )]
    [InlineData(
        """{"day":"2027-03-02","week":12,"session":2,"did":20,"of":20,"effort":6,"pain":0}""",
        "Tue 2 Mar, week 12, Shoulders = both: 20 of 20 steps. Effort 6, pain 0."
    )]
    [InlineData(
        """{"day":"2027-03-02","week":1,"session":1,"did":1,"of":1,"effort":0}""",
        "Tue 2 Mar, week 1, Ankles and hips: 1 of 1 step. Effort 0, pain –."
    )]
    [InlineData("""{"day":"2027-03-02","week":1,"session":1}""", "Tue 2 Mar, week 1, Ankles and hips: done. Effort –, pain –.")]
    [InlineData(
        """{"day":"2027-03-02","week":1,"session":1,"done":false,"did":3,"of":9,"alarm":"chest"}""",
        "Tue 2 Mar, week 1, Ankles and hips: 3 of 9 steps. Stopped for a sign that cannot wait. Effort –, pain –."
    )]
    [InlineData(
        """{"day":"2027-03-02","week":1,"session":7,"done":false}""",
        "Tue 2 Mar, week 1, session 7: Stopped early. Effort –, pain –."
    )]
    [InlineData(
        """{"day":"2027-03-02","week":1,"session":1,"effort":4,"pain":2,"where":"knee","side":"left","placed":"knee, left"}""",
        "Tue 2 Mar, week 1, Ankles and hips: done. Effort 4, pain 2 (knee, left)."
    )]
    [InlineData(
        """{"day":"2027-03-02","week":1,"session":1,"done":false,"skip":"time"}""",
        "Tue 2 Mar, week 1, Ankles and hips: not today. Effort –, pain –."
    )]
    [InlineData("""{"day":"2027-99-99","week":1,"session":1}""", "2027-99-99, week 1, Ankles and hips: done. Effort –, pain –.")]
    public async Task The_first_line_is_for_a_person(string row, string said) =>
        Assert.Equal(said, (await Message(row, English)).Split('\n')[0]);

    [Fact]
    public async Task It_speaks_the_language_of_the_page() =>
        Assert.Equal(
            "Mo., 7. Dez., Woche 1, Knöchel und Hüfte: 1 von 20 Schritten. Vorzeitig beendet. Anstrengung –, Schmerz –.",
            (await Message("""{"day":"2026-12-07","week":1,"session":1,"done":false,"did":1,"of":20}""", German)).Split('\n')[0]
        );

    /// <summary>A log that was saved before holds neither steps nor an edition.</summary>
    [Fact]
    public async Task The_page_of_the_weeks_tells_of_the_last_session_of_a_log_that_is_opened()
    {
        await using var context = await content.ContextAsync(new() { Offline = true });
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + content.PagesOf("rufus").First(p => Path.GetFileName(p) == "weeks.html"));
        await page.SetInputFilesAsync(
            "[data-log='open']",
            new FilePayload
            {
                Name = "log.csv",
                MimeType = "text/csv",
                Buffer = "date,session,week,effort,pain,stopped\r\n2026-12-07,1,1,6,2,yes\r\n"u8.ToArray(),
            }
        );
        await page.ClickAsync("[data-log-page] [data-log='message']");
        Assert.Matches(
            "^Mon 7 Dec, week 1, Ankles and hips: Stopped early\\. Effort 6, pain 2\\.\n"
                + "gradus 2026-12-07; week 1; session 1; stopped; effort 6; pain-during 2; sum [0-9a-f]{8}$",
            await page.InputValueAsync("[data-log-page] [data-log-text]")
        );
    }

    private static Task<string> Message(string row, string phrases) =>
        Ask(
            new JsonObject
            {
                ["kind"] = "message",
                ["row"] = JsonNode.Parse(row),
                ["phrases"] = JsonNode.Parse(phrases),
            }
        );
}
