using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>Each session printed on A4 by Chromium, and the PDF read back by poppler.</summary>
public sealed class PrintTests(PublishedContent content, ITestOutputHelper output)
{
    private static readonly Practice Practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice
        ?? throw new InvalidOperationException();

    [Fact]
    public async Task A_sheet_has_doses_signs_and_a_grid_and_parts_no_exercise_from_its_signs()
    {
        var sheets = 0;
        foreach (var client in content.Clients)
        {
            var plan = Planned.For(Practice, Practice.Find(new ClientId(client)) ?? throw new InvalidOperationException());
            foreach (var session in LongProof.First(1, plan.Sessions.Where(s => s.Uses.Count > 0)))
            {
                var pages = await Printed(content.PagesOf(client).First(p => Path.GetFileName(p) == session.Path));
                var whole = string.Join(' ', pages);
                Assert.All(session.Uses, use => Assert.Equal("", PartedAt(plan, session, use, pages)));
                Assert.All(session.Uses, use => Assert.True(HasItsDoses(session, use, whole), use.Title));

                // In full before the first instruction.
                var before = whole[..whole.IndexOf(Instructions(session.Uses[0])[0], StringComparison.Ordinal)];
                var signs = plan.SignsOn(session.Path, session.Exercises);
                Assert.All(signs.Kinds.SelectMany(k => k.Signs).SelectMany(s => s.Lines()), line =>
                    Assert.Contains(Bare(line), before, StringComparison.Ordinal)
                );
                Assert.All(signs.Notes.SelectMany(n => n.Lines()), line =>
                    Assert.Contains(Bare(line), before.Replace("/", "", StringComparison.Ordinal), StringComparison.Ordinal)
                );
                Assert.All(
                    new[]
                    {
                        "What you have done",
                        "Date",
                        "How hard it was, 0 to 10",
                        "Pain, 0 to 10, and where",
                        "Worse next morning?",
                    },
                    line => Assert.Contains(Bare(line), whole, StringComparison.Ordinal)
                );
                Assert.DoesNotContain(Bare("Get ready:"), whole, StringComparison.Ordinal);
                Assert.Contains(Bare(Prose.PlainOf(plan.Emergency.Sentence)), whole, StringComparison.Ordinal);
                output.WriteLine($"{client} {session.Path}: {pages.Length} pages, {session.Uses.Count} exercises");
                sheets++;
            }
        }

        Assert.True(sheets >= (LongProof.Whole ? 10 : 5), $"{sheets} sheets");
    }

    /// <summary>The check above sees it when a sheet parts them.</summary>
    [Fact]
    public async Task A_sheet_that_parts_them_is_seen()
    {
        var plan = Planned.For(Practice, Practice.Find(new ClientId("rufus")) ?? throw new InvalidOperationException());
        var pages = await Printed(
            content.PagesOf("rufus").First(p => p.EndsWith("session-1.html", StringComparison.Ordinal)),
            ".sheet { columns: auto; } .exercise { break-inside: auto !important; } "
                + ".signs { break-before: page; break-after: page; }"
        );
        Assert.All(plan.Sessions[0].Uses, use => Assert.False(IsTogether(plan, plan.Sessions[0], use, pages), use.Title));
    }

    /// <summary>Nor does it go unseen when the doses of a week are not printed, or a caution.</summary>
    [Fact]
    public async Task A_sheet_without_a_dose_is_seen()
    {
        var plan = Planned.For(Practice, Practice.Find(new ClientId("rufus")) ?? throw new InvalidOperationException());
        var pages = await Printed(
            content.PagesOf("rufus").First(p => p.EndsWith("session-1.html", StringComparison.Ordinal)),
            ".every-week td:nth-child(3) { display: none; }"
        );
        var session = plan.Sessions[0];
        Assert.Contains(session.Uses, use => !HasItsDoses(session, use, string.Join(' ', pages)));
    }

    /// <summary>Whether its title, the names of all its signs and how it is done stand on one page, in this order.</summary>
    private static bool IsTogether(Plan plan, PlannedSession session, PlannedUse use, string[] pages) =>
        PartedAt(plan, session, use, pages).Length == 0;

    /// <summary>What is missing on the page that has most of it; empty where nothing is.</summary>
    private static string PartedAt(Plan plan, PlannedSession session, PlannedUse use, string[] pages)
    {
        var signs = plan.SignsOn(session.Path, [use.Exercise]).Kinds.Select(k => Bare($"{k.Heading}: {k.Names(plan.Words)}"));
        string[] parts = [Bare($"{use.Letter} {use.Title}"), .. signs, .. Instructions(use)];
        return parts.ElementAtOrDefault(pages.Max(Found)) ?? "";

        int Found(string page)
        {
            var at = 0;
            return parts
                .TakeWhile(part =>
                {
                    var found = page.IndexOf(part, at, StringComparison.Ordinal);
                    at = found + part.Length;
                    return found >= 0;
                })
                .Count();
        }
    }

    /// <summary>Whether each row of its part of the table has what is done in every week, in the order of the weeks.</summary>
    private static bool HasItsDoses(PlannedSession session, PlannedUse use, string whole) =>
        use.Rows.Count > 0
        && use.Rows.All(row =>
            whole.Contains(Bare(row.What + string.Concat(session.Cells(row).Select(c => c.Said))), StringComparison.Ordinal)
        );

    /// <summary>The lines of how it is done that hold no number of a week.</summary>
    private static string[] Instructions(PlannedUse use) =>
        [
            .. use
                .Text.Instructions.SelectMany(i => i.Lines())
                .Select(Bare)
                .Where(line => line.Length > 20 && !line.Any(char.IsDigit)),
        ];

    [Fact]
    public async Task Every_week_is_printed_also_those_that_the_screen_puts_away()
    {
        await using var context = await content.ContextAsync(new() { Offline = true });
        var page = await context.NewPageAsync();
        await page.GotoAsync(
            "file://" + content.PagesOf("rufus").First(p => p.EndsWith("session-1.html", StringComparison.Ordinal))
        );
        var lengths = page.Locator(".lengths li");
        Assert.True(await lengths.CountAsync() > 3);
        Assert.Equal(1, await page.Locator(".lengths li:visible").CountAsync());
        await page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        Assert.Equal(await lengths.CountAsync(), await page.Locator(".lengths li:visible").CountAsync());
        Assert.False(await page.Locator("nav").First.IsVisibleAsync());
        Assert.Equal(0, await page.Locator("button:visible").CountAsync());
    }

    private async Task<string[]> Printed(string path, string style = "") => (await PrintedSheet.Of(content, path, style)).Pages;

    private static string Bare(string text) => PrintedSheet.Bare(text);
}
