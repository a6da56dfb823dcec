using System.Collections.Concurrent;
using System.Text;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;
using Gradus.ThemeCheck;

namespace Gradus.Tests.Browser;

/// <summary>What a script counts, in languages with more than two forms, on a page in a real browser.</summary>
public sealed class ScriptPluralsTests(PublishedContent content, ITestOutputHelper output) : IDisposable
{
    private const string Client = "rufus";

    private const string Polish = """
        seconds: { one: "{n} sekunda", few: "{n} sekundy", many: "{n} sekund", other: "{n} sekundy" }
        minutes: { one: "{n} minuta", few: "{n} minuty", many: "{n} minut", other: "{n} minuty" }
        minutes-and-seconds: "{minutes} i {seconds}"
        """;

    private const string Arabic = """
        seconds: { zero: "{n} ثانية", one: "ثانية واحدة", two: "ثانيتان", few: "{n} ثوانٍ", many: "{n} ثانيةً", other: "{n} ثانية" }
        minutes: { zero: "{n} دقيقة", one: "دقيقة واحدة", two: "دقيقتان", few: "{n} دقائق", many: "{n} دقيقةً", other: "{n} دقيقة" }
        minutes-and-seconds: "{minutes} و{seconds}"
        """;

    private static readonly ConcurrentDictionary<string, Lazy<(Plan Plan, Site Site)>> Made = new(StringComparer.Ordinal);

    private readonly string folder = Directory.CreateTempSubdirectory("gradus-plurals-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("en", "", 1, "1 second")]
    [InlineData("en", "", 90, "1 minute 30 seconds")]
    [InlineData("en", "", 150, "2 minutes 30 seconds")]
    [InlineData("pl", Polish, 1, "1 sekunda")]
    [InlineData("pl", Polish, 2, "2 sekundy")]
    [InlineData("pl", Polish, 5, "5 sekund")]
    [InlineData("pl", Polish, 22, "22 sekundy")]
    [InlineData("pl", Polish, 60, "1 minuta")]
    [InlineData("pl", Polish, 125, "2 minuty i 5 sekund")]
    [InlineData("pl", Polish, 301, "5 minut i 1 sekunda")]
    [InlineData("pl", Polish, 1320, "22 minuty")]
    [InlineData("ar", Arabic, 0, "0 ثانية")]
    [InlineData("ar", Arabic, 1, "ثانية واحدة")]
    [InlineData("ar", Arabic, 2, "ثانيتان")]
    [InlineData("ar", Arabic, 3, "3 ثوانٍ")]
    [InlineData("ar", Arabic, 11, "11 ثانيةً")]
    [InlineData("ar", Arabic, 100, "دقيقة واحدة و40 ثانيةً")]
    [InlineData("ar", Arabic, 60, "دقيقة واحدة")]
    [InlineData("ar", Arabic, 123, "دقيقتان و3 ثوانٍ")]
    [InlineData("ar", Arabic, 6000, "100 دقيقة")]
    public async Task It_is_said_as_the_language_has_it(string language, string catalogue, int seconds, string expected)
    {
        var (plan, site) = In(language, catalogue);
        Assert.Equal(expected, Said(plan.Words, seconds));
        Assert.Equal(expected, (await SpansOf(site, [seconds]))[0]);
    }

    /// <summary>The catalogue's own words are the judge, which tests/Browser/LanguagesTests.cs holds against the CLDR.</summary>
    [Theory]
    [InlineData("pl", Polish)]
    [InlineData("ar", Arabic)]
    public async Task Every_span_of_a_quarter_of_an_hour_is_said_as_the_catalogue_counts(string language, string catalogue)
    {
        var (plan, site) = In(language, catalogue);
        int[] spans = [.. Enumerable.Range(0, 900), 1320, 6000, 6060, 60_000];
        var said = await SpansOf(site, spans);
        Assert.Equal(spans.Select(s => Said(plan.Words, s)), said);

        // What the pages write out in their texts, the guided session says in the same words.
        Assert.Equal(
            spans.Where(s => s < 60 || s % 60 == 0).Select(s => plan.Words.Span(new(s))),
            spans.Zip(said).Where(s => s.First < 60 || s.First % 60 == 0).Select(s => s.Second)
        );
        output.WriteLine(
            $"{language}: {spans.Length} spans, {said.Select(s => Regex.Replace(s, "[0-9]+", "n")).Distinct().Count()} "
                + "different forms"
        );
    }

    /// <summary>Without the forms of the catalogue the script has only what holds for every number.</summary>
    [Fact]
    public async Task A_page_without_a_form_is_seen()
    {
        var said = await SpansOf(In("pl", Polish).Site, [5], html =>
            html.Replace("data-seconds-many", "data-x", StringComparison.Ordinal)
        );
        Assert.Equal("5 sekundy", said[0]);
    }

    private static string Said(Words words, int seconds)
    {
        var (minutes, rest) = Math.DivRem(seconds, 60);
        if (minutes == 0)
            return words.Say("seconds", ("n", seconds));
        var whole = words.Say("minutes", ("n", minutes));
        return rest == 0
            ? whole
            : words.Say("minutes-and-seconds", ("minutes", whole), ("seconds", words.Say("seconds", ("n", rest))));
    }

    private async Task<string[]> SpansOf(Site site, int[] spans, Func<string, string>? change = null)
    {
        foreach (var asset in site.Assets.Where(a => a.Path.EndsWith(".js", StringComparison.Ordinal)))
            await File.WriteAllTextAsync(Path.Combine(folder, asset.Path), Changed(Encoding.UTF8.GetString(asset.Bytes.Span)));
        var html = site.Pages.First(p => p.Path == "session-1.html").Html;
        var path = Path.Combine(folder, "session-1.html");
        await File.WriteAllTextAsync(path, Changed(html));
        await using var context = await content.ContextAsync(new() { Offline = true });
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + path);
        return await page.EvaluateAsync<string[]>(
            "spans => spans.map(s => window.gradus.spanOf(s, document.querySelector('[data-guide]').dataset))",
            spans
        );

        // The phrases stand in the script that holds the dialog of all pages.
        string Changed(string text) => change is null ? text : change(text);
    }

    /// <summary>The plan in a language and its site, made once for all that is asked of them.</summary>
    private static (Plan Plan, Site Site) In(string language, string catalogue) =>
        Made.GetOrAdd(language, _ => new(() => Rendered(PlanIn(language, catalogue)))).Value;

    private static (Plan Plan, Site Site) Rendered(Plan plan)
    {
        var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), []);
        Assert.NotNull(site);
        return (plan, site);
    }

    private static Plan PlanIn(string language, string catalogue)
    {
        var sources = SourceFolder.Open(Repository.Path("content"));
        var client = $"clients/{Client}/client.yaml";
        var files = sources.Paths.ToDictionary(path => path, path => sources.Read(path), StringComparer.Ordinal);
        if (catalogue.Length > 0)
        {
            files[client] = Encoding.UTF8.GetBytes(
                Encoding
                    .UTF8.GetString(files[client])
                    .Replace("language: en\n", $"language: {language}\n", StringComparison.Ordinal)
            );
            files[$"words/{language}.yaml"] = Encoding.UTF8.GetBytes(
                catalogue.Split('\n').Aggregate(MadeUpWords.In(language), WithLine)
            );
        }

        var findings = new Findings();
        var practice = PracticeReader.Read(SourceFolder.Of(files), findings).Practice;
        Assert.Empty(findings);
        Assert.NotNull(practice);
        var found = practice.Find(new ClientId(Client));
        Assert.NotNull(found);
        return Planned.For(practice, found);
    }

    private static string WithLine(string catalogue, string line)
    {
        var key = line[..(line.IndexOf(':', StringComparison.Ordinal) + 1)];
        var found = Regex.Match(catalogue, $"^{key} .*$", RegexOptions.Multiline | RegexOptions.CultureInvariant);
        Assert.True(found.Success, key);
        return catalogue.Replace(found.Value, line, StringComparison.Ordinal);
    }
}
