using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Gradus.Tests.Browser.PublishedContent))]

namespace Gradus.Tests.Browser;

/// <summary>The demonstration practice, each client published once to a folder when somebody first asks for it, and open to a
/// real browser, for all tests of this project. Tests run side by side, so nobody writes into the folder.</summary>
public sealed class PublishedContent : IAsyncLifetime
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-browser-").FullName;

    private IPlaywright? playwright;
    private Dictionary<string, Lazy<string>> sites = [];

    public IBrowser Browser { get; private set; } = null!;

    public IReadOnlyList<string> Clients { get; private set; } = [];

    public async ValueTask InitializeAsync()
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), findings).Practice;
        Assert.NotNull(practice);
        Assert.Empty(findings);
        sites = practice.Clients.ToDictionary(
            c => c.Id.Text,
            c => new Lazy<string>(() => Published(practice, c)),
            StringComparer.Ordinal
        );
        Clients = [.. practice.Clients.Select(c => c.Id.Text)];
        playwright = await Playwright.CreateAsync();
        Browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = Chromium(), Args = ["--no-sandbox", "--disable-gpu"] }
        );
    }

    /// <summary>The browser with a window: one that cannot show any is twice as fast, and now and then forgets a service
    /// worker.</summary>
    public async Task<IBrowser> LaunchWithWorkersAsync() =>
        await (playwright ?? throw new InvalidOperationException("Not begun.")).Chromium.LaunchAsync(
            new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox", "--disable-gpu"] }
        );

    /// <summary>A browser in which it is a day of the programmes, whatever day it is here.</summary>
    public async Task<IBrowserContext> ContextAsync(BrowserNewContextOptions options, string now = "2026-12-14T10:00:00")
    {
        var context = await Browser.NewContextAsync(options);
        await context.Clock.SetFixedTimeAsync(now);
        return context;
    }

    public IEnumerable<string> PagesOf(string client) =>
        Directory.EnumerateFiles(sites[client].Value, "*.html").Order(StringComparer.Ordinal);

    /// <summary>The largest page of each kind, of whichever client.</summary>
    public IEnumerable<string> PagesOfEveryKind() => OfEveryKind(Clients.SelectMany(PagesOf));

    /// <summary>The largest of the pages of each kind.</summary>
    public static IEnumerable<string> OfEveryKind(IEnumerable<string> pages) =>
        pages
            .GroupBy(p => Path.GetFileName(p).Split('-', '.')[0])
            .Select(kind => kind.MaxBy(p => new FileInfo(p).Length) ?? kind.First());

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        playwright?.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    private string Published(Practice practice, Client client)
    {
        var findings = new Findings();
        var site = SiteRenderer.Render(Planned.For(practice, client), ThemeFolder.Plain(), findings);
        Assert.NotNull(site);
        Assert.Empty(findings);
        return Publication.Write(site, folder).Place;
    }

    public static string Chromium() => ThemeCheck.Chromium.Find();
}
