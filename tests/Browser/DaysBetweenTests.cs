using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>A session of so many times a week, on a page with a log: only where the coach wrote a day between is the next day too
/// soon.</summary>
public sealed class DaysBetweenTests(PublishedContent content) : IDisposable
{
    private const string Client = "tamsin";

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-days-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>The same day is not the next one, and after three times the week has enough.</summary>
    [Theory]
    [InlineData("3 a week", "1x3x0", true)]
    [InlineData("3 a week, a day between", "1x3", false)]
    public async Task A_session_may_be_done_on_the_next_day_where_no_day_is_between(string days, string need, bool next)
    {
        var home = Publish(days);
        Assert.Contains(
            $"data-needs=\"{need} ",
            await File.ReadAllTextAsync(home, TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );
        await using var context = await content.ContextAsync(new() { Offline = true });
        foreach (
            var (now, open) in new[]
            {
                ("2026-12-14T10:00:00", true),
                ("2026-12-14T18:00:00", false),
                ("2026-12-15T10:00:00", next),
                ("2026-12-16T10:00:00", true),
                ("2026-12-17T10:00:00", false),
            }
        )
        {
            await context.Clock.SetFixedTimeAsync(now);
            var page = await context.NewPageAsync();
            await page.GotoAsync("file://" + home);
            var card = page.Locator(".cards > li", new() { HasText = "Legs and middle" }).First;
            Assert.Equal((now, open), (now, await card.GetByText("Any day, also today").IsVisibleAsync()));
            if (open)
                await page.EvaluateAsync(
                    "session => gradus.log.add({ day: gradus.today(), week: gradus.weekNow().week, session })",
                    int.Parse(await card.GetAttributeAsync("data-due") ?? "", CultureInfo.InvariantCulture)
                );
        }
    }

    /// <summary>The path of the first page.</summary>
    private string Publish(string days)
    {
        var sources = SourceFolder.Open(Repository.Path("content"));
        var files = sources.Paths.ToDictionary(path => path, path => sources.Read(path), StringComparer.Ordinal);
        var programme = $"clients/{Client}/programme.md";
        const string written = "days: 2 a week, a day between";
        var text = Encoding.UTF8.GetString(files[programme]);
        Assert.Contains(written, text, StringComparison.Ordinal);
        files[programme] = Encoding.UTF8.GetBytes(text.Replace(written, $"days: {days}", StringComparison.Ordinal));
        var findings = new Findings();
        var practice = PracticeReader.Read(SourceFolder.Of(files), findings).Practice;
        Assert.NotNull(practice);
        var found = practice.Find(new ClientId(Client));
        Assert.NotNull(found);
        var site = SiteRenderer.Render(Planned.For(practice, found), ThemeFolder.Plain(), findings);
        Assert.NotNull(site);
        Assert.Empty(findings);
        Publication.Write(site, folder);
        return Path.Combine(folder, Client, "index.html");
    }
}
