using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gradus.Tests.Browser.GuideScripts;

namespace Gradus.Tests.Browser;

/// <summary>A saved log stays a log: its columns are found by their names, what is not known is kept, and what cannot be read is
/// said.</summary>
public sealed class LogColumnsTests(PublishedContent content)
{
    /// <summary>As these pages saved it in December 2026: no log of a client may become unreadable.</summary>
    private const string Today =
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

    private const string Known =
        "date,session,week,exercise,sets,repetitions,load,effort,pain,where,side,stopped,note,worse-next-morning";

    [Fact]
    public async Task A_log_of_today_is_read_whole_and_saved_again_to_the_letter()
    {
        Assert.Equal("3 0", await Read(Today));
        Assert.Equal(Today, await Save(Today));
    }

    [Fact]
    public async Task A_column_of_the_future_is_kept_when_the_log_is_opened_changed_and_saved()
    {
        const string expected =
            Known
            + ",heart-rate,__proto__\r\n"
            + "2026-12-07,1,1,,,,,6,3,knee,left,,fine,no,131,a\r\n"
            + "2026-12-07,1,1,ankle-press-ramp,2,8,,,,,,,,,142,\"'=b\"\r\n"
            + "2026-12-09,2,1,,,,,,,,,,NOTE,,,\r\n";
        Assert.Equal("2 0", await Read(Future));
        Assert.Equal(expected.Replace("NOTE", "", StringComparison.Ordinal), await Save(Future));
        var changed = await Save(Future, """{"note":"changed"}""");
        Assert.Equal(expected.Replace("NOTE", "changed", StringComparison.Ordinal), changed);
        Assert.Equal(changed, await Save(changed));
    }

    [Theory]
    [InlineData("date,session,week\n2026-12-07,1,1\n", "1 0", "2026-12-07,1,1,,,,,,,,,,,")]
    [InlineData("note,week,session,date\nfine,2,1,2026-12-14\n", "1 0", "2026-12-14,1,2,,,,,,,,,,fine,")]
    [InlineData(" Date ,SESSION,Week,effort\n2026-12-07,1,1,6\n", "1 0", "2026-12-07,1,1,,,,,6,,,,,,")]
    [InlineData("date;session;week;note\n2026-12-07;1;1;a, b\n", "1 0", "2026-12-07,1,1,,,,,,,,,,\"a, b\",")]
    [InlineData("date\tsession\tweek\tpain\n2026-12-07\t1\t1\t4\n", "1 0", "2026-12-07,1,1,,,,,,4,,,,,")]
    [InlineData("\n\nMy log\ndate,session,week,pain\n2026-12-07,1,1,4\n", "1 0", "2026-12-07,1,1,,,,,,4,,,,,")]
    public async Task Columns_may_be_missing_or_stand_in_any_order(string text, string read, string line)
    {
        Assert.Equal(read, await Read(text));
        Assert.Equal($"{Known}\r\n{line}\r\n", await Save(text));
    }

    /// <summary>What stands in a cell and cannot be read is written again; a line that is no session's is not.</summary>
    [Theory]
    [InlineData("soon,1,1,,,,,,,,,,,\n2026-12-07,1,1,,,,,6,,,,,,", "1 1", "2026-12-07,1,1,,,,,6,,,,,,")]
    [InlineData("2026-12-07,1,1,,,,,hard,2,,,,,", "1 1", "2026-12-07,1,1,,,,,hard,2,,,,,")]
    [InlineData("2026-12-07,1,1,,,,,,11,,,perhaps,,", "1 1", "2026-12-07,1,1,,,,,,11,,,perhaps,,")]
    [InlineData("2026-12-07,1,1,,,,,6,2,,,,,,,lost", "1 1", "2026-12-07,1,1,,,,,6,2,,,,,")]
    [InlineData("2026-12-07,1,1,,,,,6", "1 0", "2026-12-07,1,1,,,,,6,,,,,,")]
    [InlineData("2026-12-07,1,1,,,,,6,,,,,,\n2026-12-08,1,1,wall-lean,2,,,,,,,,,", "1 1", "2026-12-07,1,1,,,,,6,,,,,,")]
    [InlineData(
        "2026-12-07,1,1,,,,,6,,,,,,\ndate,week,session\n2026-12-09,2,1",
        "2 0",
        "2026-12-07,1,1,,,,,6,,,,,,\r\n2026-12-09,1,2,,,,,,,,,,,"
    )]
    public async Task What_is_damaged_is_said_and_the_rest_is_kept(string lines, string read, string kept)
    {
        Assert.Equal(read, await Read($"{Known}\n{lines}\n"));
        Assert.Equal($"{Known}\r\n{kept}\r\n", await Save($"{Known}\n{lines}\n"));
    }

    /// <summary>The same session from two files, of which one knows more columns.</summary>
    [Fact]
    public async Task What_is_in_two_logs_stands_there_once_with_what_either_keeps()
    {
        var plain = await Save(
            Known + "\n2026-12-07,1,1,,,,,6,3,knee,left,,fine,no\n2026-12-07,1,1,ankle-press-ramp,2,8,,,,,,,,\n2026-12-09,2,1\n"
        );
        var both = await Save(Future);
        Assert.Equal(both, await Join(plain, Future));
        Assert.Equal(both, await Join(Future, plain));
        Assert.Equal(both, await Join(Future, Future));
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
    [InlineData("columns.indexOf(pair[0]) < 0 && pair[1] !== ''", "false")]
    [InlineData("for (const name of strange) more.push([name, of[name]]);", "")]
    [InlineData("isWhole: strange.length === 0 && !named.isLost", "isWhole: !named.isLost")]
    [InlineData("isWhole: strange.length === 0 && !named.isLost", "isWhole: strange.length === 0")]
    [InlineData("else joined[at] = bothOf(joined[at], row);", "")]
    public async Task A_slip_is_seen(string written, string slip)
    {
        const string damaged = Known + "\n2026-12-07,1,1,,,,,hard,2,,,,,,,lost\n";
        const string strange = Known + "\n2026-12-07,1,1,,,,,hard,2,,,,,\n";
        const string lost = Known + "\n2026-12-07,1,1,,,,,6,2,,,,,,,lost\n";
        object[] cases =
        [
            Asked("read", damaged),
            Asked("read", strange),
            Asked("read", lost),
            Asked("save", Future),
            Asked("save", damaged),
            Asked("save", "note,week,session,date\nfine,2,1,2026-12-14\n"),
            Joined(Known + "\n2026-12-07,1,1,,,,,6,3,knee,left,,fine,no\n2026-12-07,1,1,ankle-press-ramp,2,8\n", Future),
        ];
        Assert.NotEqual(await Ask<string>(cases), await Ask<string>(cases, Slip(written, slip)));
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
