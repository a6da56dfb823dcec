using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gradus.Tests.Browser.GuideScripts;

namespace Gradus.Tests.Browser;

/// <summary>A saved log stays a log: its columns are found by their names, what is not known is kept, and what cannot be read is
/// said.</summary>
public sealed class LogColumnsTests(PublishedContent content)
{
    /// <summary>As these pages saved it in December 2026: no log of a client may become unreadable.</summary>
    private const string Before =
        "date,session,week,exercise,sets,repetitions,load,effort,pain,where,side,stopped,note,worse-next-morning\r\n"
        + "2026-12-07,1,1,,,,,6,3,knee,left,,\"slow, \"\"careful\"\"\",no\r\n"
        + "2026-12-07,1,1,ankle-press-ramp,2,8,\"'-5 kg\",,,,,,,\r\n"
        + "2026-12-07,1,1,wall-lean,0,,,,,knee,left,yes,,\r\n"
        + "2026-12-09,2,1,,,,,,,,,,,\r\n"
        + "2026-12-11,1,1,,,,,,,,,yes,\"'=tired\",\r\n"
        + "2026-12-11,1,1,ankle-press-ramp,1,,,,,,,,,\r\n";

    /// <summary>With two columns that nobody knows here, one of them among the others.</summary>
    private const string Future =
        "date,session,week,heart-rate,exercise,sets,repetitions,load,effort,pain,where,side,stopped,note,"
        + "worse-next-morning,__proto__\r\n"
        + "2026-12-07,1,1,131,,,,,6,3,knee,left,,fine,no,a\r\n"
        + "2026-12-07,1,1,142,ankle-press-ramp,2,8,,,,,,,,,\"'=b\"\r\n"
        + "2026-12-09,2,1,,,,,,,,,,,,,\r\n";

    private const string Old =
        "date,session,week,exercise,sets,repetitions,load,effort,pain,where,side,stopped,note,worse-next-morning";

    private const string Known =
        "date,start,session,week,kind,edition,course,exercise,side,sets,repetitions,load,steps-done,steps-planned,minutes,"
        + "effort,pain-before,pain-during,pain-morning,worse-next-morning,stopped,stopped-for,where,not-today,alarm,measured,"
        + "note";

    [Fact]
    public async Task A_log_of_before_is_read_whole_and_saved_in_the_columns_of_today()
    {
        Assert.Equal("3 0", await Read(Before));
        Assert.Equal(
            Lines(
                "date=2026-12-07 session=1 week=1 effort=6 pain-during=3_left_knee worse-next-morning=no "
                    + "note=\"slow,_\"\"careful\"\"\"",
                "date=2026-12-07 session=1 week=1 exercise=ankle-press-ramp sets=2 repetitions=8 load=\"'-5_kg\"",
                "date=2026-12-07 session=1 week=1 exercise=wall-lean sets=0 stopped=yes where=left_knee",
                "date=2026-12-09 session=2 week=1",
                "date=2026-12-11 session=1 week=1 stopped=yes note=\"'=tired\"",
                "date=2026-12-11 session=1 week=1 exercise=ankle-press-ramp sets=1"
            ),
            await Save(Before)
        );
    }

    /// <summary>Every column of the page of the format, with what it may hold.</summary>
    [Fact]
    public async Task A_log_of_today_is_read_whole_and_saved_again_to_the_letter()
    {
        var text = Lines(
            "date=2026-12-07 start=18:05 session=1 week=1 kind=full edition=0a1b2c3d course=9f8e7d6c5b4a3210 steps-done=12 "
                + "steps-planned=20 minutes=17.5 effort=4 pain-before=0 pain-during=2_left_knee pain-morning=3_lower-back "
                + "worse-next-morning=yes stopped=yes stopped-for=sharp note=slow",
            "date=2026-12-07 session=1 week=1 exercise=ankle-test side=left sets=3 measured=9.5_10_10",
            "date=2026-12-07 session=1 week=1 exercise=plank sets=0 stopped=yes stopped-for=giving-way where=left_knee",
            "date=2026-12-08 start=07:30 session=1 week=1 kind=short course=9f8e7d6c5b4a3210 not-today=ill",
            "date=2026-12-09 start=07:30 session=2 week=1 stopped=yes alarm=chest"
        );
        Assert.Equal("3 0", await Read(text));
        Assert.Equal(text, await Save(text));
    }

    [Fact]
    public async Task A_column_of_the_future_is_kept_when_the_log_is_opened_changed_and_saved()
    {
        Assert.Equal("2 0", await Read(Future));
        Assert.Equal(Expected(""), await Save(Future));
        var changed = await Save(Future, """{"note":"changed"}""");
        Assert.Equal(Expected(" note=changed"), changed);
        Assert.Equal(changed, await Save(changed));

        string Expected(string note) =>
            LinesOf(
                Known + ",heart-rate,__proto__",
                "date=2026-12-07 session=1 week=1 effort=6 pain-during=3_left_knee worse-next-morning=no note=fine "
                    + "heart-rate=131 __proto__=a",
                "date=2026-12-07 session=1 week=1 exercise=ankle-press-ramp sets=2 repetitions=8 heart-rate=142 "
                    + "__proto__=\"'=b\"",
                "date=2026-12-09 session=2 week=1" + note
            );
    }

    [Theory]
    [InlineData("date,session,week\n2026-12-07,1,1\n", "1 0", "date=2026-12-07 session=1 week=1")]
    [InlineData("note,week,session,date\nfine,2,1,2026-12-14\n", "1 0", "date=2026-12-14 session=1 week=2 note=fine")]
    [InlineData(" Date ,SESSION,Week,effort\n2026-12-07,1,1,6\n", "1 0", "date=2026-12-07 session=1 week=1 effort=6")]
    [InlineData("date;session;week;note\n2026-12-07;1;1;a, b\n", "1 0", "date=2026-12-07 session=1 week=1 note=\"a,_b\"")]
    [InlineData("date\tsession\tweek\tpain\n2026-12-07\t1\t1\t4\n", "1 0", "date=2026-12-07 session=1 week=1 pain-during=4")]
    [InlineData(
        "\n\nMy log\ndate,session,week,pain\n2026-12-07,1,1,4\n",
        "1 0",
        "date=2026-12-07 session=1 week=1 pain-during=4"
    )]
    public async Task Columns_may_be_missing_or_stand_in_any_order(string text, string read, string line)
    {
        Assert.Equal(read, await Read(text));
        Assert.Equal(Lines(line), await Save(text));
    }

    /// <summary>What stands in a cell and cannot be read is written again; a line that is no session's is not.</summary>
    [Theory]
    [InlineData("soon,1,1,,,,,,,,,,,\n2026-12-07,1,1,,,,,6,,,,,,", "1 1", "date=2026-12-07 session=1 week=1 effort=6")]
    [InlineData("2026-12-07,1,1,,,,,hard,2,,,,,", "1 1", "date=2026-12-07 session=1 week=1 effort=hard pain-during=2")]
    [InlineData("2026-12-07,1,1,,,,,,11,,,perhaps,,", "1 1", "date=2026-12-07 session=1 week=1 pain-during=11 stopped=perhaps")]
    [InlineData("2026-12-07,1,1,,,,,6,2,,,,,,,lost", "1 1", "date=2026-12-07 session=1 week=1 effort=6 pain-during=2")]
    [InlineData("2026-12-07,1,1,,,,,6", "1 0", "date=2026-12-07 session=1 week=1 effort=6")]
    [InlineData(
        "2026-12-07,1,1,,,,,6,,,,,,\n2026-12-08,1,1,wall-lean,2,,,,,,,,,",
        "1 1",
        "date=2026-12-07 session=1 week=1 effort=6"
    )]
    [InlineData(
        "2026-12-07,1,1,,,,,6,,,,,,\ndate,week,session\n2026-12-09,2,1",
        "2 0",
        "date=2026-12-07 session=1 week=1 effort=6|date=2026-12-09 session=1 week=2"
    )]
    public async Task What_is_damaged_is_said_and_the_rest_is_kept(string lines, string read, string kept)
    {
        Assert.Equal(read, await Read($"{Old}\n{lines}\n"));
        Assert.Equal(Lines(kept.Split('|')), await Save($"{Old}\n{lines}\n"));
    }

    /// <summary>The same session from two files, of which one knows more columns.</summary>
    [Fact]
    public async Task What_is_in_two_logs_stands_there_once_with_what_either_keeps()
    {
        var plain = await Save(
            Old + "\n2026-12-07,1,1,,,,,6,3,knee,left,,fine,no\n2026-12-07,1,1,ankle-press-ramp,2,8,,,,,,,,\n2026-12-09,2,1\n"
        );
        var both = await Save(Future);
        Assert.Equal(both, await Join(plain, Future));
        Assert.Equal(both, await Join(Future, plain));
        Assert.Equal(both, await Join(Future, Future));
    }

    /// <summary>A copy that was saved before the morning after, and the log that knows of it: in either order it is one
    /// session.</summary>
    [Fact]
    public async Task A_session_is_known_again_by_when_it_began()
    {
        const string session = "date=2026-12-07 start=18:05 session=1 week=1 edition=0a1b2c3d effort=4";
        var (early, late) = (Lines(session), Lines(session + " worse-next-morning=yes"));
        Assert.Equal(late, await Join(late, early));
        Assert.Equal(late, await Join(early, late));
        Assert.Equal(
            2 + 1,
            (await Join(early, Lines(session.Replace("18:05", "20:30", StringComparison.Ordinal)))).Split("\r\n").Length - 1
        );
    }

    [Fact]
    public async Task The_page_opens_it_says_what_it_could_not_read_and_saves_it_again()
    {
        await using var context = await content.ContextAsync(new() { Offline = true });
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + content.PagesOf("rufus").First(p => Path.GetFileName(p) == "weeks.html"));
        var said = page.Locator("[data-log-said]");
        await Open("name,amount\na,1\n");
        await Assertions.Expect(said).ToHaveTextAsync("This is no log of these pages. Nothing was changed.");
        await Open(Future + "no day,1,1\r\n");
        await Assertions.Expect(said).ToHaveTextAsync("Some of it could not be read and does not count; the rest is open.");
        await Assertions.Expect(page.Locator("[data-log-count]")).ToHaveTextAsync("2");
        await Open(Future);
        await Assertions.Expect(said).ToHaveTextAsync("The log is open.");
        await Assertions.Expect(page.Locator("[data-log-count]")).ToHaveTextAsync("2");
        var download = await page.RunAndWaitForDownloadAsync(() =>
            page.Locator("[data-log-page] [data-log='save']").ClickAsync()
        );
        Assert.Equal(
            await Save(Future),
            await File.ReadAllTextAsync(await download.PathAsync(), TestContext.Current.CancellationToken)
        );

        Task Open(string text) =>
            page.SetInputFilesAsync(
                "[data-log='open']",
                new FilePayload
                {
                    Name = "log.csv",
                    MimeType = "text/csv",
                    Buffer = System.Text.Encoding.UTF8.GetBytes(text),
                }
            );
    }

    /// <summary>Each slip in the script is seen in a log with unknown columns, in another order, or damaged.</summary>
    [Theory]
    [InlineData("line[head.indexOf(name)] || ''", "line[columns.indexOf(name)] || ''")]
    [InlineData("!Object.hasOwn(of, pair[0]) && pair[1] !== ''", "false")]
    [InlineData("for (const name of strange) more.push([name, of[name]]);", "")]
    [InlineData("isWhole: strange.length === 0 && !named.isLost", "isWhole: !named.isLost")]
    [InlineData("isWhole: strange.length === 0 && !named.isLost", "isWhole: strange.length === 0")]
    [InlineData("else joined[at] = bothOf(joined[at], row);", "")]
    public async Task A_slip_is_seen(string written, string slip)
    {
        const string damaged = Old + "\n2026-12-07,1,1,,,,,hard,2,,,,,,,lost\n";
        const string strange = Old + "\n2026-12-07,1,1,,,,,hard,2,,,,,\n";
        const string lost = Old + "\n2026-12-07,1,1,,,,,6,2,,,,,,,lost\n";
        object[] cases =
        [
            Asked("read", damaged),
            Asked("read", strange),
            Asked("read", lost),
            Asked("save", Future),
            Asked("save", damaged),
            Asked("save", "note,week,session,date\nfine,2,1,2026-12-14\n"),
            Joined(Old + "\n2026-12-07,1,1,,,,,6,3,knee,left,,fine,no\n2026-12-07,1,1,ankle-press-ramp,2,8\n", Future),
        ];
        Assert.NotEqual(await Ask<string>(cases), await Ask<string>(cases, Slip(written, slip)));
    }

    /// <summary>A log of today: each line says what stands under which name, with _ for a blank.</summary>
    private static string Lines(params string[] lines) => LinesOf(Known, lines);

    private static string LinesOf(string head, params string[] lines) =>
        string.Concat(lines.Select(line => Cells(head, line)).Prepend(head).Select(line => line + "\r\n"));

    private static string Cells(string head, string line)
    {
        var said = line.Split(' ').Select(part => part.Split('=', 2)).ToDictionary(p => p[0], p => p[1].Replace('_', ' '));
        Assert.All(said.Keys, name => Assert.Contains(name, head.Split(',')));
        return string.Join(',', head.Split(',').Select(name => said.GetValueOrDefault(name, "")));
    }

    private static Task<string> Read(string text) => Ask(Asked("read", text));

    private static Task<string> Save(string text, string change = "{}")
    {
        var asked = Asked("save", text);
        asked["more"] = JsonNode.Parse(change);
        return Ask(asked);
    }

    private static Task<string> Join(string text, string other) => Ask(Joined(text, other));

    private static JsonObject Joined(string text, string other)
    {
        var asked = Asked("join", text);
        asked["other"] = other;
        return asked;
    }

    private static JsonObject Asked(string kind, string text) => new() { ["kind"] = kind, ["text"] = text };
}
