using System.Globalization;
using Gradus.Tests.Benchmarks;
using Gradus.Tests.CommandLine;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>How long it takes from saving a file of a practice of a hundred clients until the change is seen. Measured alone:
/// what else the machine does would be measured with it.</summary>
[Trait("Alone", "yes")]
public sealed class WatchTimeTests(PublishedContent content, ITestOutputHelper output)
{
    private const int Clients = 100;

    /// <summary>In milliseconds, on a machine that does nothing else.</summary>
    private const double Longest = 200;

    private const int Saves = 50;

    [Fact]
    public async Task What_is_saved_is_seen_soon()
    {
        Assert.SkipUnless(LongProof.Whole, "It takes a minute, and a machine that does nothing else; tests/run --long has it.");
        var root = Directory.CreateTempSubdirectory("gradus-watch-").FullName;
        try
        {
            foreach (var (path, text) in MadePractice.Of(Clients).Files)
            {
                var file = Path.Combine(root, path);
                Directory.CreateDirectory(Path.GetDirectoryName(file) ?? root);
                File.WriteAllText(file, text);
            }

            await Measure(root);
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private async Task Measure(string root)
    {
        var client = MadeClient.IdOf(0);
        await using var watched = await WatchedInBrowser.Of(content.Browser, root, client);
        var programme = Path.Combine(root, "clients", client, "programme.md");
        var letter = File.ReadAllText(programme);
        // What comes behind the pages of all clients is waited for once, as by somebody who has begun to write.
        WatchProcess.Wait(
            () => watched.Watch.Get("found").Text.Contains("Everything was audited", StringComparison.Ordinal),
            () => watched.Watch.Output + watched.Watch.Error
        );
        // What is run for the first time is compiled first: the first save pays for that.
        var first = await watched.Save(programme, Marked(letter, "at first"), "at first");
        for (var times = 0; times < 10; times++)
            await watched.Save(programme, Marked(letter, $"warmed {times}"), $"warmed {times}");
        var letters = await Saved(n => watched.Save(programme, Marked(letter, $"letter {n}"), $"letter {n}"));
        File.WriteAllText(programme, letter);

        var link = await watched.InSite<string>("site.document.querySelector('a[href^=session-]').getAttribute('href')");
        await watched.Site.Locator($"a[href='{link}']").First.ClickAsync();
        await watched.Page.WaitForURLAsync($"**#{link}");
        var exercise = letter.Split("- use: ")[1].Split('\n')[0];
        var sheet = Path.Combine(root, "exercises", exercise + ".md");
        var words = File.ReadAllText(sheet);
        var title = words.Split("\ntitle: ")[1].Split('\n')[0];
        var exercises = await Saved(n =>
            watched.Save(
                sheet,
                words.Replace($"title: {title}\n", $"title: {title} {n}\n", StringComparison.Ordinal),
                $"{title} {n}"
            )
        );

        Say("the client's letter, seen on the home page", letters);
        Say("an exercise that others share, seen on a session's page", exercises);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"The first save of all: {first:0} ms."));
        Assert.All(letters.Concat(exercises), took => Assert.InRange(took, 0, Longest));
    }

    private static async Task<double[]> Saved(Func<int, Task<double>> save)
    {
        var took = new List<double>();
        for (var number = 1; number <= Saves; number++)
        {
            took.Add(await save(number));
            // As somebody who goes on writing: what comes behind the page may still be at work.
            await Task.Delay(300 + (number * 97 % 700), TestContext.Current.CancellationToken);
        }

        return [.. took];
    }

    private static string Marked(string letter, string mark) =>
        letter.Replace("We meet again", $"This is {mark}. We meet again", StringComparison.Ordinal);

    private void Say(string what, double[] took)
    {
        var sorted = took.Order().ToArray();
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{Clients} clients, {took.Length} saves of {what}: median {sorted[sorted.Length / 2]:0} ms, "
                    + $"worst {sorted[^1]:0} ms"
            )
        );
    }
}
