using Gradus.Planning;
using Gradus.Tests.House;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>The folder on a static host: after the first visit everything opens with the host stopped, and while it runs nothing
/// old is shown.</summary>
public sealed class HostedTests(PublishedContent content)
{
    [Fact]
    public async Task After_the_first_visit_every_page_opens_with_the_host_stopped()
    {
        var folder = Path.GetDirectoryName(content.PagesOf("rufus").First()) ?? "";
        await using var browser = await content.LaunchWithWorkersAsync();
        await using var context = await browser.NewContextAsync();
        await context.Clock.SetFixedTimeAsync("2026-12-14T10:00:00");
        var page = await context.NewPageAsync();
        using (var host = StaticHost.Of(folder))
        {
            await page.GotoAsync(host.Address);
            await IsKept(page);
            Assert.Contains(
                "\"name\":\"Rufus Elphick",
                await page.EvaluateAsync<string>("fetch(document.querySelector('link[rel=manifest]').href).then(r => r.text())"),
                StringComparison.Ordinal
            );

            // A browser writes down a moment later that it has the worker.
            await page.WaitForTimeoutAsync(3000);
            await Gone(page, host);
            var troubles = new List<string>();
            page.PageError += (_, error) => troubles.Add(error);
            var pages = content.PagesOf("rufus").ToArray();
            foreach (var path in LongProof.Whole ? pages : PublishedContent.OfEveryKind(pages))
            {
                await page.GotoAsync(host.Address + Path.GetFileName(path));
                Assert.NotEqual("", await page.Locator("h1").First.InnerTextAsync());
                Assert.Equal(
                    "700",
                    await page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.good-until')).fontWeight")
                );
            }

            await page.GotoAsync(host.Address);
            Assert.Equal("A longer, steadier lunge", await page.Locator("h1").First.InnerTextAsync());
            Assert.Empty(troubles);
            await Assert.ThrowsAsync<PlaywrightException>(() => page.GotoAsync(host.Address + "no-such-page.html"));
        }
    }

    /// <summary>A caution that is new on the host is on the page at once; and when the host is gone after that, it is still the
    /// new one.</summary>
    [Fact]
    public Task A_new_edition_is_seen_at_once_and_kept_whole() =>
        Hosted(
            async (page, host, folder) =>
            {
                await page.GotoAsync(host.Address);
                await IsKept(page);
                await Renew(folder);
                await page.GotoAsync(host.Address + "session-1.html");
                Assert.Contains("A new caution", await page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
                await page.WaitForFunctionAsync(
                    "async () => (await caches.keys()).some(k => k.includes('0123456789abcdef whole'))"
                );
                await page.WaitForFunctionAsync("async () => (await caches.keys()).length === 2");
                await Gone(page, host);
                await page.GotoAsync(host.Address + "session-2.html");
                Assert.Contains("A new caution", await page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
            }
        );

    /// <summary>The network is slow, and while the old edition comes, a new one is there: the new one is kept.</summary>
    [Fact]
    public Task An_old_edition_that_comes_late_is_not_kept() =>
        Hosted(
            async (page, host, folder) =>
            {
                var (begun, goes) = (new TaskCompletionSource(), new TaskCompletionSource());
                host.Before = name =>
                {
                    if (name != PagePath.Weeks)
                        return Task.CompletedTask;
                    begun.TrySetResult();
                    return goes.Task;
                };
                await page.GotoAsync(host.Address);
                await begun.Task.WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken);
                await Renew(folder);
                goes.SetResult();
                await IsKept(page);
                await Gone(page, host);
                await page.GotoAsync(host.Address + "session-2.html");
                Assert.Contains("A new caution", await page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
            }
        );

    private async Task Hosted(Func<IPage, StaticHost, string, Task> tried)
    {
        var folder = Directory.CreateTempSubdirectory("gradus-hosted-").FullName;
        try
        {
            foreach (var file in Directory.EnumerateFiles(Path.GetDirectoryName(content.PagesOf("rufus").First()) ?? ""))
                File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
            await using var browser = await content.LaunchWithWorkersAsync();
            await using var context = await browser.NewContextAsync();
            await context.Clock.SetFixedTimeAsync("2026-12-14T10:00:00");
            using var host = StaticHost.Of(folder);
            await tried(await context.NewPageAsync(), host, folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Without the pause Chromium does not ask the worker, and says that the host refuses (seen, no source).</summary>
    private static async Task Gone(IPage page, StaticHost host)
    {
        await page.WaitForTimeoutAsync(3000);
        await host.StopAsync();
    }

    private static async Task Renew(string folder)
    {
        await Change(folder, "session-1.html", "Sharp or sudden pain", "A new caution");
        await Change(folder, "session-2.html", "Sharp or sudden pain", "A new caution");
        await Change(folder, PagePath.FileList, "", "0123456789abcdef");
    }

    private static Task IsKept(IPage page) =>
        page.WaitForFunctionAsync(
            "async () => navigator.serviceWorker.controller?.state === 'activated' && (await caches.keys()).some(k => "
                + "k.endsWith(' whole'))"
        );

    private static async Task Change(string folder, string file, string said, string instead)
    {
        var path = Path.Combine(folder, file);
        var text = await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(
            path,
            said.Length > 0 ? text.Replace(said, instead, StringComparison.Ordinal) : instead + text[16..],
            TestContext.Current.CancellationToken
        );
    }
}
