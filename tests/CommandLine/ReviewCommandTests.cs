using System.Text.Json;
using System.Text.RegularExpressions;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>The demonstration's own clients, and what came back from two of them in a copy of it.</summary>
[Trait("Slow", "yes")]
public sealed partial class ReviewCommandTests : IDisposable
{
    private const string Head =
        "date,start,session,week,kind,edition,exercise,side,sets,steps-done,steps-planned,minutes,effort,pain-before,"
        + "pain-during,pain-morning,alarm,note\n";

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-review-").FullName;

    [GeneratedRegex("non-compliant|streak|score|rank", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex NeverSaid();

    public ReviewCommandTests()
    {
        foreach (var file in Directory.EnumerateFiles(Repository.Path("content"), "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(folder, Path.GetRelativePath(Repository.Path("content"), file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy) ?? folder);
            File.Copy(file, copy);
        }

        Write(
            "rufus",
            "2026-12-07,18:30,1,1,full,3f0c,,,,20,20,25,4,0,1 left knee,0,,felt <b>good</b>\n"
                + "2026-12-07,18:30,1,1,full,3f0c,half-kneeling-ankle-rock,right,4,,,,,,,,,\n"
                + "2026-12-10,18:30,1,1,short,3f0c,,,,12,20,10,4,0,1 left knee,3 left knee,,\n"
                + "2026-12-12,18:30,2,1,full,3f0c,,,,20,20,20,3,0,0,0,,\n"
                + "2026-12-14,18:30,1,2,full,3f0c,,,,20,20,25,4,0,0,0,,\n"
        );
        Write("maud", "2026-12-14,18:30,1,2,full,3f0c,,,,0,20,,,,,,faint,\n");
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>A clot in the calf has a thousand words: whatever was written is read first, for two weeks.</summary>
    [Fact]
    public void What_somebody_wrote_stands_among_what_is_read_first()
    {
        var text = Review("text");
        var (wrote, below) = (
            text.IndexOf("\nIn their own words\n", StringComparison.Ordinal),
            text.IndexOf("\nMore than written\n", StringComparison.Ordinal)
        );
        Assert.InRange(wrote, 0, below);
        Assert.Contains("(rufus): 2026-12-07: \"felt <b>good</b>\"\n    Read it", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_cannot_wait_stands_first()
    {
        var text = Review("text");
        Assert.StartsWith(
            "Who needs you first, and why\n\nAt once\n  Maud Tregarth (maud): fainting on 2026-12-14\n    Do not plan on. "
                + "Signs or "
                + "symptoms is now a yes: nothing until a clinician's leave that is dated after this day, and asked again.\n",
            text,
            StringComparison.Ordinal
        );
        Assert.True(
            text.IndexOf("\nPain\n", StringComparison.Ordinal) < text.IndexOf("\nMore than written\n", StringComparison.Ordinal)
        );
        Assert.Contains("4 of 2 sets: more than written", text, StringComparison.Ordinal);
        Assert.Contains(
            "worse on the morning after: pain of 3 out of 10 (left knee) on 2026-12-10",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_client_is_told_week_by_week_and_never_judged()
    {
        var text = Review("text");
        Assert.Contains("    week 1: 3 of 3: 2 full, 1 short\n", text, StringComparison.Ordinal);
        Assert.Contains("  Session load, home exercises only\n", text, StringComparison.Ordinal);
        Assert.Contains("fewer than 4 days, so monotony and strain would only count days", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(NeverSaid(), text);
    }

    [Fact]
    public void The_page_is_one_private_file_that_asks_for_nothing()
    {
        var html = Review("html");
        Assert.Contains("default-src 'none'", html, StringComparison.Ordinal);
        Assert.Contains("For the coach alone.", html, StringComparison.Ordinal);
        Assert.Contains("felt &lt;b&gt;good&lt;/b&gt;", html, StringComparison.Ordinal);
        Assert.Contains("aria-hidden=\"true\"", html, StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme: dark", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(new Regex("<script|src=|url\\(|http://|https://| style="), html);
        Assert.DoesNotMatch(NeverSaid(), html);
        Assert.All(new Regex("href=\"#([^\"]+)\"").Matches(html), link =>
            Assert.Contains($"id=\"{link.Groups[1].Value}\"", html, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Another_program_reads_the_same()
    {
        using var json = JsonDocument.Parse(Review("json"));
        var first = json.RootElement.GetProperty("needs")[0];
        Assert.Equal("now maud", $"{first.GetProperty("kind")} {first.GetProperty("client")}");
        Assert.Equal(6, json.RootElement.GetProperty("clients").GetArrayLength());
    }

    /// <summary>What came back stops the next publishing of who told of it, and of nobody else.</summary>
    [Fact]
    public void What_came_back_stops_the_next_publishing()
    {
        var (status, output, _) = Gradus.Run("audit", folder, "--today", "2026-12-15", "--format", "json");
        Assert.Equal(1, status);
        using var json = JsonDocument.Parse(output);
        var rules = json
            .RootElement.GetProperty("findings")
            .EnumerateArray()
            .Where(f => f.GetProperty("level").GetString() == "error")
            .Select(f => $"{f.GetProperty("rule")} {f.GetProperty("client")}")
            .Where(f => f.Contains("came-back", StringComparison.Ordinal) || !f.EndsWith("maud", StringComparison.Ordinal))
            .Distinct()
            .Order(StringComparer.Ordinal);
        Assert.Equal(["pain-came-back rufus", "sign-came-back maud"], rules);
    }

    private void Write(string client, string lines) =>
        File.WriteAllText(Path.Combine(folder, "clients", client, "log.csv"), Head + lines);

    private string Review(string format)
    {
        string[] words = ["review", folder, "--today", "2026-12-15", "--format", format];
        // A page is written as bytes, past the words that a test hears.
        var (status, output, error) = format == "html" ? Gradus.RunApart([], words) : Gradus.Run(words);
        Assert.Equal((0, ""), (status, error));
        return output;
    }
}
