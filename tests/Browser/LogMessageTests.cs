using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gradus.Tests.Browser.GuideScripts;

namespace Gradus.Tests.Browser;

/// <summary>The short text for the coach: a line that a person reads, in the words of the page, and below it the line that a
/// program checks, which has been the same since December 2026.</summary>
public sealed class LogMessageTests(PublishedContent content)
{
    private const string English = """
        {
          "language": "en", "day": "{weekday} {day} {month}", "told": "{day}, week {week}, {session}: {how} Effort {effort}, pain {pain}.",
          "stepsOne": "{done} of {of} step.", "stepsOther": "{done} of {of} steps.", "toldDone": "done.", "toldStopped": "Stopped early.",
          "toldAlarm": "Stopped for a sign that cannot wait.", "toldSession": "session {number}", "titles": "1=Ankles and hips\n2=Shoulders = both"
        }
        """;

    private const string German = """
        {
          "language": "de", "day": "{weekday}, {day}. {month}", "told": "{day}, Woche {week}, {session}: {how} Anstrengung {effort}, Schmerz {pain}.",
          "stepsOne": "{done} von {of} Schritt.", "stepsOther": "{done} von {of} Schritten.", "toldDone": "gemacht.",
          "toldStopped": "Vorzeitig beendet.", "toldAlarm": "Beendet.", "toldSession": "Einheit {number}", "titles": "1=Knöchel und Hüfte"
        }
        """;

    [Theory]
    [InlineData(
        """{"day":"2026-12-07","week":1,"session":2,"edition":"0a1b2c3d","pain":3,"where":"knee","side":"left"}""",
        "gradus 2026-12-07; edition 0a1b2c3d; week 1; session 2; done; pain 3 of 10, left knee; sum "
    )]
    [InlineData(
        """{"day":"2026-12-07","week":1,"session":2,"done":false,"exercises":[{"exercise":"wall-lean","stopped":true}]}""",
        "gradus 2026-12-07; edition unknown; week 1; session 2; stopped; pain not said; left out wall-lean; sum "
    )]
    public async Task The_last_line_says_what_was_done_and_its_own_sum(string row, string begins)
    {
        var lines = (await Message(row, English)).Split('\n');
        Assert.Equal(2, lines.Length);
        Assert.Equal(begins + await Ask(new JsonObject { ["kind"] = "sum", ["text"] = begins[..^"; sum ".Length] }), lines[1]);
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
                + "gradus 2026-12-07; edition unknown; week 1; session 1; stopped; pain 2 of 10; sum [0-9a-f]{8}$",
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
