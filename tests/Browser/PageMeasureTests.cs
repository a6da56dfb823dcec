using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Gradus.Planning;

namespace Gradus.Tests.Browser;

/// <summary>How long the pages of every client of the demonstration are on the first day of the programme, on four screens, and
/// how many bytes. A bound that is not kept yet stands in a list with what was measured, and may not be passed further.</summary>
public sealed partial class PageMeasureTests(PublishedContent content, ITestOutputHelper output)
{
    private const int Phone = 1,
        SmallPhone = 0;

    private const int BytesOfFile = 350_000,
        BytesOfSession = 30_000,
        BytesOfStep = 110;

    private static readonly (int Width, int Height)[] Screens = [(320, 640), (390, 844), (768, 1024), (1280, 800)];

    /// <summary>What passes a bound today: client, page, what is measured, and how much it is; in screens or bytes.</summary>
    private static readonly Dictionary<(string Client, string Page, string Measure), double> Known = new()
    {
        [("hedley", "session-1.html", "first exercise, small")] = 4.12,
        [("tamsin", "session-1.html", "first exercise")] = 3.03,
        [("tamsin", "session-1.html", "first exercise, small")] = 4.84,
        // 10.22 before each of its six exercises was drawn.
        [("tamsin", "session-1.html", "height")] = 11.06,
        [("tamsin", "session-2.html", "height")] = 10.17,
    };

    [GeneratedRegex(
        "data:(image|video|text/vtt)[^\"' )]*|<div class=\"?pair\"?>.*?</div>|<svg.*?</svg>",
        RegexOptions.Singleline
    )]
    private static partial Regex Picture();

    [GeneratedRegex("data-start=\"?([0-9-]{10})")]
    private static partial Regex Start();

    private sealed record Measured(double Height, double Exercise);

    /// <param name="Most">In screens or bytes.</param>
    private sealed record Bound(string Page, string Measure, double Found, double Most);

    [Theory]
    [InlineData("hedley")]
    [InlineData("maud")]
    [InlineData("nuala")]
    [InlineData("piers")]
    [InlineData("rufus")]
    [InlineData("tamsin")]
    public async Task Its_pages_are_as_short_as_they_are_meant_to_be(string client)
    {
        var (bounds, lines) = (new List<Bound>(), new List<string>());
        await using var context = await content.Browser.NewContextAsync(new() { Offline = true });
        var page = await context.NewPageAsync();
        foreach (var path in content.PagesOf(client))
        {
            var (name, html) = (Path.GetFileName(path), await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken));
            await context.Clock.SetFixedTimeAsync(Start().Match(html).Groups[1].Value + "T10:00:00");
            await page.GotoAsync("file://" + path);
            var seen = new List<Measured>();
            foreach (var (width, height) in Screens)
            {
                await page.SetViewportSizeAsync(width, height);
                seen.Add(
                    JsonSerializer.Deserialize<Measured>(
                        await page.EvaluateAsync<string>(
                            """
                            () => {
                              const first = document.querySelector('article.exercise:not([hidden])');
                              return JSON.stringify({
                                height: document.documentElement.scrollHeight / innerHeight,
                                exercise: first ? (first.getBoundingClientRect().top + scrollY) / innerHeight : 0
                              });
                            }
                            """
                        ),
                        JsonSerializerOptions.Web
                    )!
                );
            }

            var (bytes, steps) = (
                Encoding.UTF8.GetByteCount(Picture().Replace(html, "")),
                html.Split(PageData.Step + "=").Length - 1
            );
            bounds.AddRange(Bounds(name, seen, bytes, steps));
            lines.Add(Line(name, seen, bytes, Encoding.UTF8.GetByteCount(html), steps));
        }

        output.WriteLine(
            $"{client}: page | screens high at {string.Join(", ", Screens.Select(s => $"{s.Width}x{s.Height}"))} | "
        );
        output.WriteLine("screens to the first exercise | bytes without pictures, with them, steps");
        foreach (var line in lines)
            output.WriteLine(line);
        var passed = bounds.Where(b => b.Found > b.Most).ToDictionary(b => (client, b.Page, b.Measure), b => b.Found);
        foreach (var (key, found) in passed)
            output.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"past its bound: {key.Page} {key.Measure} {found:0.##}")
            );
        Assert.Contains(bounds, b => b.Measure == "first exercise");
        Assert.All(passed, p => Assert.InRange(p.Value, 0, Known.GetValueOrDefault(p.Key)));
        // A machine with narrower fonts has shorter pages: what is a twentieth below its bound is known still.
        var near = bounds.Where(b => b.Found > b.Most * 0.95).Select(b => (client, b.Page, b.Measure));
        Assert.Empty(Known.Keys.Where(k => k.Client == client).Except(near));
    }

    [Fact]
    public void Every_client_of_the_demonstration_is_measured() =>
        Assert.Equal(["hedley", "maud", "nuala", "piers", "rufus", "tamsin"], content.Clients.Order(StringComparer.Ordinal));

    private static IEnumerable<Bound> Bounds(string name, List<Measured> seen, int bytes, int steps)
    {
        if (name.StartsWith("session-", StringComparison.Ordinal))
        {
            yield return new(name, "height", seen[Phone].Height, 10);
            yield return new(name, "first exercise", seen[Phone].Exercise, 2.5);
            yield return new(name, "first exercise, small", seen[SmallPhone].Exercise, 4);
            yield return new(name, "bytes", bytes, BytesOfSession + (BytesOfStep * steps));
        }
        else if (name == PagePath.Home || name.StartsWith("exercise-", StringComparison.Ordinal))
            yield return new(name, "height", seen[Phone].Height, 5);
        else if (name == PagePath.AllPages)
            yield return new(name, "bytes", bytes, BytesOfFile);
    }

    private static string Line(string name, List<Measured> seen, int bytes, int whole, int steps) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{name} | {string.Join(", ", seen.Select(s => s.Height.ToString("0.0", CultureInfo.InvariantCulture)))} | "
                + $"{string.Join(", ", seen.Select(s => s.Exercise.ToString("0.0", CultureInfo.InvariantCulture)))} | "
                + $"{bytes}, {whole}, {steps}"
        );
}
