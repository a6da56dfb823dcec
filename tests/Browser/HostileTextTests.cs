using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Rendering;
using Gradus.Tests.House;
using Gradus.Tests.Rendering;

namespace Gradus.Tests.Browser;

/// <summary>Pages in which every text that a coach writes is hostile, or far too long, in Chromium over file:// and
/// offline.</summary>
public sealed partial class HostileTextTests : IDisposable
{
    /// <summary>Everything that is or can be shown: also what a script shows later, and what it says out of attributes.</summary>
    private const string Seen = """
        document.querySelectorAll('script, style').forEach(e => e.remove()),
        document.title + '\n' + document.body.textContent + '\n' + [...document.querySelectorAll('*')].flatMap(e => [...e.attributes].map(a => a.value)).join('\n')
        """;

    /// <summary>What a script takes away before anybody reads it.</summary>
    private const string ReadWithoutScripts = "no-script phrase";

    private static readonly string[] FilesOfTheme = [.. ThemeFolder.Plain().Assets.Select(a => a.Path), GuideFile.Path];

    private static readonly ConcurrentDictionary<HostilePractice, Lazy<Site>> Sites = new();

    private readonly PublishedContent content;
    private readonly ITestOutputHelper output;
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-hostile-").FullName;

    public HostileTextTests(PublishedContent content, ITestOutputHelper output) =>
        (this.content, this.output) = (content, output);

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", RegexOptions.CultureInvariant)]
    private static partial Regex Policy();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>With the page's own policy, and without it: nothing is left for the policy to stop.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Hostile_texts_are_read_and_do_nothing(bool policy)
    {
        var (harmless, hostile) = (Made(HostilePractice.Harmless), Made(HostilePractice.Hostile));
        Publication.Write(hostile, folder);
        var places = 0;
        var judged = PublishedContent
            .OfEveryKind(hostile.Pages.Where(p => p.Path != PagePath.AllPages).Select(PathOf))
            .OrderBy(p => new FileInfo(p).Length)
            .SkipLast(LongProof.Whole ? 0 : 1)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var (page, html) in hostile.Pages.Zip(harmless.Pages, (one, other) => (one, other.Html)))
        {
            if (!policy)
                await File.WriteAllTextAsync(
                    PathOf(page),
                    Policy().Replace(page.Html, ""),
                    TestContext.Current.CancellationToken
                );
            var (troubles, text) = await Open(PathOf(page), axe: policy && (LongProof.Whole || judged.Contains(PathOf(page))));
            Assert.True(troubles.Count == 0, $"{page.Path}:\n{string.Join("\n", troubles)}");
            foreach (
                var place in HostilePractice.Places.Where(p =>
                    p != ReadWithoutScripts && html.Contains(HostilePractice.Named(p), StringComparison.OrdinalIgnoreCase)
                )
            )
            {
                var (inHeader, inText) = HostilePractice.Shown(place);
                Assert.True(
                    Holds(text, inHeader) || Holds(text, inText),
                    $"{page.Path} does not show '{place}' as it was written."
                );
                places++;
            }
        }

        output.WriteLine($"{hostile.Pages.Count} pages, {places} hostile texts read on them; nothing ran, nothing was asked for");
        Assert.True(places > 200);
    }

    [Fact]
    public async Task A_page_that_let_it_through_would_be_noticed()
    {
        var hostile = Made(HostilePractice.Hostile);
        Publication.Write(hostile, folder);
        var page = hostile.Pages.First(p => p.Path == "index.html");
        await File.WriteAllTextAsync(
            PathOf(page),
            page.Html.Replace("&lt;script&gt;touched=1&lt;/script&gt;", "<script>touched=1</script>", StringComparison.Ordinal),
            TestContext.Current.CancellationToken
        );
        Assert.Contains((await Open(PathOf(page), axe: false)).Troubles, t =>
            t.StartsWith("console error", StringComparison.Ordinal)
        );
        await File.WriteAllTextAsync(
            PathOf(page),
            Policy()
                .Replace(page.Html, "")
                .Replace("&lt;svg/onload=touched=6&gt;", "<svg/onload=touched=6>", StringComparison.Ordinal),
            TestContext.Current.CancellationToken
        );
        Assert.Contains((await Open(PathOf(page), axe: false)).Troubles, t => t.StartsWith("it ran", StringComparison.Ordinal));
        await File.WriteAllTextAsync(
            PathOf(page),
            Policy()
                .Replace(page.Html, "")
                .Replace("&lt;img src=x onerror=touched=2&gt;", "<img src=x onerror=touched=2>", StringComparison.Ordinal),
            TestContext.Current.CancellationToken
        );
        Assert.Contains((await Open(PathOf(page), axe: false)).Troubles, t => t.StartsWith("request", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("hostile")]
    [InlineData("endless")]
    public async Task Long_names_and_texts_do_not_make_a_page_wider_than_a_phone(string written)
    {
        var site = Made(written == "hostile" ? HostilePractice.Hostile : HostilePractice.Endless);
        Publication.Write(site, folder);
        await using var context = await content.ContextAsync(
            new()
            {
                Offline = true,
                ViewportSize = new() { Width = 320, Height = 800 },
            }
        );
        var opened = await context.NewPageAsync();
        foreach (var page in site.Pages)
        {
            await opened.GotoAsync("file://" + PathOf(page));
            var wide = await opened.EvaluateAsync<string>(
                """
                document.documentElement.scrollWidth <= document.documentElement.clientWidth ? '' : [...document.querySelectorAll('body *')]
                    .filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1).map(e => e.outerHTML.slice(0, 100)).join('\n')
                """
            );
            Assert.True(wide.Length == 0, $"{page.Path} is wider than 320 px:\n{wide}");
        }
    }

    private static bool Holds(string page, string text) =>
        Spacing.Collapse(page).Contains(Spacing.Collapse(text), StringComparison.OrdinalIgnoreCase);

    private string PathOf(Page page) => Path.Combine(folder, "ansel", page.Path);

    private static Site Made(HostilePractice written) => Sites.GetOrAdd(written, one => new(() => Rendered(one))).Value;

    private static Site Rendered(HostilePractice written)
    {
        var site = SiteRenderer.Render(written.Read().Plan, ThemeFolder.Plain(), []);
        Assert.NotNull(site);
        return site;
    }

    /// <summary>What happened that must not happen when a page is opened, and everything that can be read on it.</summary>
    private async Task<(List<string> Troubles, string Text)> Open(string path, bool axe)
    {
        await using var context = await content.ContextAsync(
            new()
            {
                Offline = true,
                ViewportSize = new() { Width = 360, Height = 800 },
            }
        );
        var page = await context.NewPageAsync();
        var troubles = new List<string>();
        page.Request += (_, request) => Note(request.Url);
        page.Console += (_, message) => troubles.Add($"console {message.Type}: {message.Text}");
        page.PageError += (_, error) => troubles.Add($"error: {error}");
        page.Dialog += (_, dialog) => troubles.Add($"dialog: {dialog.Message}");
        await page.GotoAsync("file://" + path);
        await page.EvaluateAsync(
            "document.querySelectorAll('*').forEach(e => ['mouseover', 'focus', 'error', 'load'].forEach(name => "
                + "e.dispatchEvent(new Event(name))))"
        );
        await page.WaitForTimeoutAsync(100);
        var touched = await page.EvaluateAsync<string>("String(window.touched)");
        if (touched != "undefined")
            troubles.Add($"it ran: {touched}");
        var text = await page.EvaluateAsync<string>(Seen);
        List<string> seen = [.. troubles];
        if (!axe)
            return (seen, text);

        // axe itself asks for the stylesheet once more, which the page's policy refuses: what comes from here on is not the
        // page's doing.
        seen.AddRange(await Barriers.In(page));
        return (seen, text);

        void Note(string url)
        {
            var own = new Uri(path).AbsoluteUri;
            if (
                url != own
                && !FilesOfTheme.Any(name => url == new Uri(new Uri(own), name).AbsoluteUri)
                && !url.StartsWith(new Uri(new Uri(own), "pictures/").AbsoluteUri, StringComparison.Ordinal)
            )
                troubles.Add($"request: {url}");
        }
    }
}
