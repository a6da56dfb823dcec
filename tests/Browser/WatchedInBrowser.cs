using Gradus.Tests.CommandLine;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>A practice that is watched, its page of one client open in Chromium, and what is seen of it.</summary>
internal sealed class WatchedInBrowser : IAsyncDisposable
{
    /// <summary>The page of the client that is seen in watch's own.</summary>
    private const string Seen = "#frames iframe:not(.coming)";

    /// <summary>Looks in every picture that is drawn whether the words are there, and says when it first saw them, in
    /// milliseconds of the clock that the whole machine has.</summary>
    private const string WaitForWords = """
        words => new Promise(seen => {
          const look = () => {
            const frame = document.querySelector('#frames iframe:not(.coming)');
            const text = frame && frame.contentDocument && frame.contentDocument.body ? frame.contentDocument.body.textContent : '';
            if (text.includes(words))
              requestAnimationFrame(() => seen(performance.timeOrigin + performance.now()));
            else
              requestAnimationFrame(look);
          };
          look();
        })
        """;

    private readonly IBrowserContext context;

    private WatchedInBrowser(WatchProcess watch, IBrowserContext context, IPage page) =>
        (Watch, this.context, Page) = (watch, context, page);

    public WatchProcess Watch { get; }

    public IPage Page { get; }

    /// <summary>What the browser complains of.</summary>
    public List<string> Troubles { get; } = [];

    public IFrameLocator Site => Page.FrameLocator(Seen);

    public static async Task<WatchedInBrowser> Of(
        IBrowser browser,
        string practice,
        string client,
        int width = 1280,
        ColorScheme scheme = ColorScheme.Light
    )
    {
        // What is awaited comes at once, unless other tests have the processors.
        Assertions.SetDefaultExpectTimeout(60_000);
        var watch = WatchProcess.Of(practice, "--client", client, "--today", "2026-12-07");
        var context = await browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = 800 },
                ColorScheme = scheme,
            }
        );
        var page = await context.NewPageAsync();
        var watched = new WatchedInBrowser(watch, context, page);
        page.Console += (_, message) => watched.Troubles.Add($"{message.Type}: {message.Text}");
        page.PageError += (_, error) => watched.Troubles.Add(error);
        await page.GotoAsync(watch.Opened);
        await page.WaitForFunctionAsync($"document.querySelector('{Seen}').contentDocument.readyState === 'complete'");
        return watched;
    }

    /// <summary>Writes a file, and waits until the words are seen in the client's page.</summary>
    /// <returns>From before the file was written until then, in milliseconds.</returns>
    public async Task<double> Save(string file, string text, string words)
    {
        var seen = Page.EvaluateAsync<double>(WaitForWords, words);
        // The page looks already when the file is written.
        await Page.EvaluateAsync("() => 0");
        var began = TimeProvider.System.GetUtcNow();
        await File.WriteAllTextAsync(file, text);
        return await seen - (began - DateTimeOffset.UnixEpoch).TotalMilliseconds;
    }

    public Task<T> InSite<T>(string script) =>
        Page.EvaluateAsync<T>($"() => {{ const site = document.querySelector('{Seen}').contentWindow; return {script}; }}");

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        Watch.Dispose();
    }
}
