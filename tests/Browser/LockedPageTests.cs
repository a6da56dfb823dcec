using System.Diagnostics;
using System.Globalization;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>Locked pages over file://, in Chromium at the size of a phone with touch and no network, and in Firefox. No telephone
/// itself was tried.</summary>
public sealed class LockedPageTests : IDisposable
{
    private const string Words = "parade riposte at the old weir";

    private const string Damaged = "The file was damaged on its way. Ask your coach to send it again.",
        Cut = "The file did not arrive whole. Ask your coach to send it again.",
        Wrong = "These words do not open it. Check each one; if they are right, ask your coach for the file again.",
        Empty = "Type the words first.";

    private readonly PublishedContent content;
    private readonly ITestOutputHelper output;
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-locked-").FullName;
    private readonly Site site;

    public LockedPageTests(PublishedContent content, ITestOutputHelper output)
    {
        (this.content, this.output) = (content, output);
        var practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice;
        var rufus = practice?.Find(new ClientId("rufus"));
        Assert.NotNull(practice);
        Assert.NotNull(rufus);
        var made = SiteRenderer.Render(Planned.For(practice, rufus), ThemeFolder.Plain(), [], Rendition.Locked);
        Assert.NotNull(made);
        site = made;
        Publication.Write(site, folder, new LockedForm(_ => Words));
    }

    private string Locked => Path.Combine(folder, "rufus.locked.html");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task On_a_phone_without_network_it_opens_by_its_words_and_keeps_nothing()
    {
        await using var context = await Phone();
        var page = await context.NewPageAsync();
        var (asked, troubles) = Watched(page);
        await page.GotoAsync("file://" + Locked);
        Assert.Equal("", await Said(page));
        await page.TapAsync("#do");
        Assert.Equal(Empty, await Said(page));
        await page.FillAsync("#words", "parade riposte at the new weir");
        await page.TapAsync("#do");
        await page.WaitForFunctionAsync("() => !document.getElementById('do').disabled");
        Assert.Equal(Wrong, await Said(page));

        await page.FillAsync("#words", " Parade\u00A0Riposte  at the OLD weir ");
        await page.TapAsync("#do");
        await page.WaitForSelectorAsync("#index");
        Assert.StartsWith("Rufus Elphick's exercises", await page.TitleAsync(), StringComparison.Ordinal);
        // Its scripts run under both policies: page one knows its week, and a session can be led through.
        await page.WaitForSelectorAsync("[data-week-now]:not([hidden])");
        Assert.Equal(0, await page.EvaluateAsync<int>("() => localStorage.length + sessionStorage.length"));
        Assert.Equal("", await page.EvaluateAsync<string>("() => document.cookie"));
        Assert.Equal("[]", await page.EvaluateAsync<string>("async () => JSON.stringify(await indexedDB.databases())"));
        Assert.Empty(troubles);
        Assert.All(asked, url =>
            Assert.True(
                url.StartsWith("file://" + Locked, StringComparison.Ordinal) || url.StartsWith("data:", StringComparison.Ordinal),
                url
            )
        );
    }

    [Fact]
    public async Task What_it_shows_is_the_page_that_was_locked()
    {
        var alone = Path.Combine(folder, PagePath.AllPages);
        await File.WriteAllTextAsync(
            alone,
            site.Pages.Single(p => p.Path == PagePath.AllPages).Html,
            TestContext.Current.CancellationToken
        );
        await using var context = await Phone();
        var (first, second) = (await context.NewPageAsync(), await context.NewPageAsync());
        await first.GotoAsync("file://" + alone);
        await Open(second);
        foreach (var page in (IPage[])[first, second])
            await page.WaitForSelectorAsync("[data-week-now]:not([hidden])");
        const string seen =
            "() => document.body.innerText + document.querySelectorAll('*').length + getComputedStyle(document.body).font";
        Assert.Equal(await first.EvaluateAsync<string>(seen), await second.EvaluateAsync<string>(seen));
    }

    [Theory]
    [InlineData("cut", Cut)]
    [InlineData("cut in its head", Cut)]
    [InlineData("one bit", Damaged)]
    [InlineData("salt", Damaged)]
    [InlineData("version", "This file was made in a way that it cannot open itself. Ask your coach to publish it again.")]
    public async Task What_is_wrong_with_it_is_said_before_or_when_the_words_are_typed(string how, string sentence)
    {
        await using var context = await Phone();
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + Broken(how));
        if (await page.IsVisibleAsync("#do"))
        {
            await page.FillAsync("#words", Words);
            await page.TapAsync("#do");
            await page.WaitForFunctionAsync("() => !document.getElementById('do').disabled");
        }

        Assert.Equal(sentence, await Said(page));
        Assert.Equal(0, await page.Locator("#index").CountAsync());
    }

    [Theory]
    [InlineData("Object.defineProperty(window, 'crypto', { value: undefined });")]
    [InlineData("Object.defineProperty(Crypto.prototype, 'subtle', { value: undefined });")]
    [InlineData("delete window.TextDecoder;")]
    public async Task A_browser_that_cannot_open_it_says_so(string lacks)
    {
        await using var context = await Phone();
        await context.AddInitScriptAsync(lacks);
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + Locked);
        Assert.StartsWith("If nothing else shows here, this browser is too old", await Said(page), StringComparison.Ordinal);
        Assert.False(await page.IsVisibleAsync("#do"));
    }

    /// <summary>Without scripts, and where one ends in the middle, the sentence that the page was sent with is all there
    /// is.</summary>
    [Fact]
    public async Task Without_scripts_it_says_the_same()
    {
        await using var context = await content.Browser.NewContextAsync(new() { JavaScriptEnabled = false });
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + Locked);
        Assert.True(await page.GetByText("this browser is too old").IsVisibleAsync());
    }

    [Fact]
    [Trait("Alone", "yes")]
    public async Task A_phone_six_times_as_slow_opens_it_in_four_seconds()
    {
        var fastest = TimeSpan.MaxValue;
        // Whatever else the machine does only makes it slower.
        for (var tries = 0; tries < 3 && fastest >= TimeSpan.FromSeconds(4); tries++)
        {
            await using var context = await Phone();
            var page = await context.NewPageAsync();
            await page.GotoAsync("file://" + Locked);
            var session = await context.NewCDPSessionAsync(page);
            await session.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = 6 });
            await page.FillAsync("#words", Words);
            var watch = Stopwatch.StartNew();
            await page.TapAsync("#do");
            await page.WaitForSelectorAsync("#index");
            output.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"six times slower: {watch.Elapsed.TotalSeconds:0.0} s")
            );
            fastest = watch.Elapsed < fastest ? watch.Elapsed : fastest;
        }

        Assert.True(fastest < TimeSpan.FromSeconds(4), $"{fastest}");
    }

    private sealed record Asked(string Firefox, string Path, string Words, Try[] Tries);

    private sealed record Try(string Path, string? Words);

    private sealed record Seen(string Inside, string[] Sentences, string[] Said, string Title, int Week, int Kept);

    [Fact]
    public async Task Firefox_opens_it_and_so_does_Nodes_own_crypto()
    {
        var seen = await Node.Ask<Asked, Seen>(
            "open-locked.mjs",
            new(
                "/usr/bin/firefox-esr",
                Locked,
                Words,
                [new(Locked, "parade riposte at the new weir"), new(Broken("one bit"), Words), new(Broken("cut"), null)]
            )
        );
        Assert.Equal(site.Pages.Single(p => p.Path == PagePath.AllPages).Html, seen.Inside);
        Assert.Equal([Wrong, Damaged, Cut], seen.Sentences);
        Assert.Empty(seen.Said);
        Assert.StartsWith("Rufus Elphick's exercises", seen.Title, StringComparison.Ordinal);
        Assert.Equal((1, 0), (seen.Week, seen.Kept));
    }

    private Task<IBrowserContext> Phone() =>
        content.ContextAsync(
            new()
            {
                ViewportSize = new() { Width = 390, Height = 844 },
                HasTouch = true,
                IsMobile = true,
                Offline = true,
            }
        );

    private async Task Open(IPage page)
    {
        await page.GotoAsync("file://" + Locked);
        await page.FillAsync("#words", Words);
        await page.TapAsync("#do");
        await page.WaitForSelectorAsync("#index");
    }

    private static (List<string> Asked, List<string> Troubles) Watched(IPage page)
    {
        var (asked, troubles) = (new List<string>(), new List<string>());
        page.Request += (_, request) => asked.Add(request.Url);
        page.Console += (_, message) => troubles.Add(message.Text);
        page.PageError += (_, error) => troubles.Add(error);
        return (asked, troubles);
    }

    private static Task<string> Said(IPage page) => page.InnerTextAsync("#said");

    private string Broken(string how)
    {
        var text = File.ReadAllText(Locked);
        var data = text.LastIndexOf("AES-256-GCM", StringComparison.Ordinal) + 1_000;
        var broken = how switch
        {
            "cut" => text[..(text.Length / 2)],
            "cut in its head" => text[..(text.LastIndexOf("gradus-locked", StringComparison.Ordinal) + 9)],
            "one bit" => text[..data] + (char)(text[data] ^ 1) + text[(data + 1)..],
            "salt" => text.Replace("\nPBKDF2-SHA-256 600000 ", "\nPBKDF2-SHA-256 600000 A", StringComparison.Ordinal),
            _ => text.Replace("gradus-locked 1\n", "gradus-locked 2\n", StringComparison.Ordinal),
        };
        Assert.NotEqual(text, broken);
        var path = Path.Combine(folder, how.Replace(' ', '-') + ".html");
        File.WriteAllText(path, broken);
        return path;
    }
}
