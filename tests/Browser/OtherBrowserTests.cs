using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>The pages in Firefox over file://, and Lighthouse's opinion of them on a host.</summary>
public sealed class OtherBrowserTests(PublishedContent content, ITestOutputHelper output)
{
    private sealed record FirefoxAsked(string Firefox, string[] Pages);

    private sealed record FirefoxSeen(string Path, string[] Asked, string[] Said, string Heading, int Width, int Weeks);

    private sealed record LightAsked(string Chromium, string[] Addresses);

    private sealed record LightSaid(string Address, int Accessibility, int BestPractices, string[] Short);

    [Fact]
    public async Task In_Firefox_pages_of_every_kind_ask_for_nothing_and_say_nothing()
    {
        var seen = await Node.Ask<FirefoxAsked, FirefoxSeen[]>(
            "open-in-firefox.mjs",
            new("/usr/bin/firefox-esr", [.. content.PagesOfEveryKind()])
        );
        Assert.Equal(7, seen.Length);
        foreach (var page in seen)
        {
            var folder = "file://" + Path.GetDirectoryName(page.Path) + "/";
            Assert.DoesNotContain(page.Asked, url =>
                !url.StartsWith(folder, StringComparison.Ordinal) && !url.StartsWith("data:", StringComparison.Ordinal)
            );
            Assert.Empty(page.Said);
            Assert.NotEqual("", page.Heading);
            Assert.Equal(0, page.Width);
        }

        // Its scripts ran: page one knows its week.
        Assert.Equal(1, seen.Single(p => p.Path.EndsWith("index.html", StringComparison.Ordinal)).Weeks);
    }

    [Fact]
    public async Task Lighthouse_gives_a_hundred_for_accessibility_and_best_practice()
    {
        var rufus = content.PagesOf("rufus").First();
        using var host = StaticHost.Of(Path.GetDirectoryName(rufus) ?? "");
        string[] kinds = LongProof.Whole ? [.. content.PagesOf("rufus").Select(p => Path.GetFileName(p))] : ["session-1.html"];
        var said = await Node.Ask<LightAsked, LightSaid[]>(
            "light.mjs",
            new(PublishedContent.Chromium(), [.. kinds.Select(k => host.Address + k)])
        );
        foreach (var page in said)
            output.WriteLine(
                $"{page.Address}: accessibility {page.Accessibility}, best practice {page.BestPractices} "
                    + $"{string.Join("; ", page.Short)}"
            );
        Assert.Equal(kinds.Length, said.Length);
        Assert.All(said, page => Assert.Equal((100, 100), (page.Accessibility, page.BestPractices)));
    }
}
