using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>How many pages a session's sheet has, and that it is all there, for the sessions of the demonstration.</summary>
public sealed partial class PrintedPagesTests(PublishedContent content, ITestOutputHelper output)
{
    private const double SmallestLetters = 8.5;

    private static readonly Practice Practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice
        ?? throw new InvalidOperationException();

    /// <summary>The one that is longer than a sheet: 6 exercises, 22 signs, 8 weeks with loads, twice a week. It is about 110 mm
    /// of a column too long.</summary>
    private static readonly (string Client, string Path, int Most) TooLong = ("tamsin", "session-1.html", 3);

    [Fact]
    public async Task A_session_of_six_exercises_and_eight_weeks_is_one_sheet()
    {
        var sheets = 0;
        foreach (var client in content.Clients)
        {
            var plan = PlanOf(client);
            foreach (var session in Printed(plan))
            {
                var sheet = await PrintedSheet.Of(content, PathOf(client, session.Path));
                output.WriteLine($"{client} {session.Path}: {sheet.Pages.Length} pages, {session.Uses.Count} exercises");
                Assert.InRange(sheet.Pages.Length, 1, Most(client, session));
                Assert.InRange(sheet.Smallest, SmallestLetters - 0.01, double.MaxValue);
                Assert.Equal("", Missing(plan, session, sheet));
                Assert.Equal("", CutExercise(session, sheet));
                sheets++;
            }
        }

        Assert.Equal(LongProof.Whole ? 27 : content.Clients.Count, sheets);
    }

    /// <summary>The longest of a client's sessions; under <c>tests/run --long</c> all of them.</summary>
    private static IEnumerable<PlannedSession> Printed(Plan plan)
    {
        var done = plan.Sessions.Where(s => s.Uses.Count > 0);
        return LongProof.Whole ? done : [done.MaxBy(s => (s.Uses.Count, s.AllWeeks.Count())) ?? plan.Sessions[0]];
    }

    /// <summary>Two pages, and one more for every three exercises beyond the sixth or four weeks beyond the eighth.</summary>
    private static int Most(string client, PlannedSession session) =>
        (client, session.Path) == (TooLong.Client, TooLong.Path)
            ? TooLong.Most
            : 2 + ((Math.Max(0, session.Uses.Count - 6) + 2) / 3) + ((Math.Max(0, session.AllWeeks.Count() - 8) + 3) / 4);

    /// <summary>Twice the exercises, as a coach might write them: still none of them is cut.</summary>
    [Fact]
    public async Task A_longer_session_breaks_between_exercises()
    {
        var session = PlanOf("rufus").Sessions[1];
        var sheet = await PrintedSheet.Of(
            content,
            PathOf("rufus", session.Path),
            change: """
            () => {
                document.querySelector('.log').classList.add('wide');
                const all = Array.from(document.querySelectorAll('article.exercise'));
                for (const one of all) {
                    const again = one.cloneNode(true);
                    again.querySelector('h2 a').prepend('Again ');
                    all[all.length - 1].parentNode.insertBefore(again, document.querySelector('.every-week'));
                }
            }
            """
        );
        Assert.InRange(sheet.Pages.Length, 3, 4);
        Assert.Equal("", CutExercise(session, sheet));
        Assert.Equal("", CutExercise(session, sheet, "Again "));
    }

    /// <summary>What a theme may get wrong, seen by the same checks.</summary>
    [Theory]
    [InlineData("html { font-size: 11pt; }", "pages")]
    [InlineData("body { line-height: 2 !important; }", "pages")]
    [InlineData(".foot .small { font-size: 8pt !important; }", "letters")]
    [InlineData(".kind.stop .caution:last-child { display: none; }", "missing")]
    [InlineData(".not-with li:last-child { display: none !important; }", "missing")]
    [InlineData(".foot { display: none; }", "missing")]
    [InlineData(".log { display: none; }", "missing")]
    [InlineData(
        ".sheet { columns: auto; } .exercise ol { break-before: page; } .exercise { break-inside: auto !important; }",
        "cut"
    )]
    public async Task A_theme_that_spoils_the_sheet_is_seen(string style, string seen)
    {
        var plan = PlanOf("rufus");
        var session = plan.Sessions[1];
        var sheet = await PrintedSheet.Of(content, PathOf("rufus", session.Path), style);
        Assert.True(
            seen switch
            {
                "pages" => sheet.Pages.Length > 2,
                "letters" => sheet.Smallest < SmallestLetters - 0.01,
                "missing" => Missing(plan, session, sheet).Length > 0,
                _ => CutExercise(session, sheet).Length > 0,
            },
            $"{sheet.Pages.Length} pages, {sheet.Smallest} pt"
        );
    }

    [Fact]
    public async Task A_row_to_fill_in_is_high_enough_for_a_pen()
    {
        await using var context = await content.ContextAsync(new() { Offline = true });
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + PathOf("hedley", "session-1.html"));
        await page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        var lowest = await page.EvaluateAsync<double>(
            "() => Math.min(...Array.from(document.querySelectorAll('.log td'))"
                + ".map(cell => cell.getBoundingClientRect().height * 25.4 / 96))"
        );
        Assert.InRange(lowest, 6, 8);
    }

    /// <summary>One press, and the browser asks for the printer.</summary>
    [Fact]
    public async Task Page_one_leads_to_printing()
    {
        await using var context = await content.ContextAsync(new() { Offline = true });
        await context.AddInitScriptAsync("window.print = () => { document.title = 'printed'; };");
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + PathOf("rufus", PagePath.Home));
        await page.GetByRole(Microsoft.Playwright.AriaRole.Link, new() { Name = "Print this sheet" }).First.ClickAsync();
        await Microsoft.Playwright.Assertions.Expect(page).ToHaveTitleAsync("printed", new() { Timeout = 30000 });
        Assert.EndsWith("/session-1.html#print", page.Url, StringComparison.Ordinal);

        // Whoever comes by another way is not asked.
        await page.GotoAsync("file://" + PathOf("rufus", "session-2.html"));
        Assert.NotEqual("printed", await page.TitleAsync());
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Print this sheet" }).ClickAsync();
        Assert.Equal("printed", await page.TitleAsync());
    }

    /// <summary>The first line that should be on the sheet and is not.</summary>
    private static string Missing(Plan plan, PlannedSession session, PrintedSheet sheet)
    {
        var whole = string.Concat(sheet.Pages).Replace("/", "", StringComparison.Ordinal);
        var signs = plan.SignsOn(session.Path, session.Exercises);
        string[] lines =
        [
            session.Name,
            plan.ClientName,
            .. signs.Kinds.SelectMany(k => k.Signs).SelectMany(s => s.Lines()),
            .. signs.Notes.SelectMany(n => n.Lines()),
            .. session.Uses.SelectMany(u => u.Rows.Select(r => r.What + string.Concat(session.Cells(r).Select(c => c.Said)))),
            .. session.Uses.SelectMany(u => u.MoveOn.Concat(u.Notes)),
            Prose.PlainOf(plan.Emergency.Sentence),
            plan.GoodUntil.Sentence,
            plan.Words.Say("log-pain"),
            .. plan.TermsOn(session.Path).Select(t => t.Explanation),
        ];
        return lines.FirstOrDefault(line =>
            !whole.Contains(PrintedSheet.Bare(line).Replace("/", "", StringComparison.Ordinal), StringComparison.Ordinal)
        ) ?? "";
    }

    /// <summary>The first exercise whose heading, side and steps do not stand on one page, one after another.</summary>
    private static string CutExercise(PlannedSession session, PrintedSheet sheet, string before = "") =>
        session
            .Uses.FirstOrDefault(use =>
                !sheet.Pages.Any(page =>
                {
                    var at = page.IndexOf(
                        PrintedSheet.Bare($"{use.Letter} {before}{use.Title}{use.Sides}"),
                        StringComparison.Ordinal
                    );
                    return at >= 0 && page.IndexOf(LastStep(use), at, StringComparison.Ordinal) > at;
                })
            )
            ?.Title
        ?? "";

    /// <summary>The longest piece of the last line of how it is done that holds no number of a week.</summary>
    private static string LastStep(PlannedUse use) =>
        Number().Split(PrintedSheet.Bare(use.Text.Do.Lines().Last())).MaxBy(piece => piece.Length) ?? "";

    [GeneratedRegex(@"\d+", RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    private static Plan PlanOf(string client) =>
        Planned.For(Practice, Practice.Find(new ClientId(client)) ?? throw new InvalidOperationException());

    private string PathOf(string client, string page) => content.PagesOf(client).First(p => Path.GetFileName(p) == page);
}
