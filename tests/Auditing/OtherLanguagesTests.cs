using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;
using Gradus.ThemeCheck;

namespace Gradus.Tests.Auditing;

/// <summary>The demonstration practice read in German, and in a made-up language from right to left: nothing is found on any
/// page, and no word of the site is left in English.</summary>
[Trait("Slow", "yes")]
public sealed class OtherLanguagesTests
{
    [Theory]
    [InlineData("de")]
    [InlineData("he")]
    public void Nothing_is_found_on_a_page_and_nothing_is_left_in_english(string language)
    {
        var practice = ReadPractice(language);
        var english = practice.Words.In("en") ?? throw new InvalidOperationException("No English.");
        var other = practice.Words.In(language) ?? throw new InvalidOperationException("No words.");

        // Long enough not to stand in a coach's text by chance.
        var phrases = english
            .Keys.Where(k => !k.StartsWith("intake-", StringComparison.Ordinal))
            .Select(english.Plain)
            .OfType<string>()
            .Where(p => p.Length > 14 && p.Contains(' ', StringComparison.Ordinal))
            .ToArray();
        var seen = 0;
        foreach (var client in practice.Clients)
        {
            var plan = Planned.For(practice, client);
            var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), []) ?? throw new InvalidOperationException("No site.");
            Assert.Equal([], RuleBook.Audit(plan, site, []).Select(f => $"{f.At} {f.Rule.Text} {f.Message}"));
            foreach (var page in site.Pages)
            {
                var text = System.Net.WebUtility.HtmlDecode(page.Html);
                Assert.DoesNotContain(phrases, phrase => text.Contains($">{phrase}<", StringComparison.Ordinal));
                Assert.Contains(other.Say("not-medical"), text, StringComparison.Ordinal);
                seen++;
            }
        }

        Assert.True(seen > 50 && phrases.Length > 50, $"{seen} pages, {phrases.Length} phrases");
    }

    private static Practice ReadPractice(string language)
    {
        var sources = SourceFolder.Open(Repository.Path("content"));
        var files = sources.Paths.Select(path =>
            KeyValuePair.Create(
                path,
                path.EndsWith("client.yaml", StringComparison.Ordinal)
                    ? Encoding.UTF8.GetBytes(
                        Encoding
                            .UTF8.GetString(sources.Read(path))
                            .Replace("language: en\n", $"language: {language}\n", StringComparison.Ordinal)
                    )
                    : sources.Read(path)
            )
        );
        if (language == "he")
            files = files.Append(KeyValuePair.Create("words/he.yaml", Encoding.UTF8.GetBytes(MadeUpWords.In("he"))));
        return PracticeReader.Read(SourceFolder.Of(files), []).Practice
            ?? throw new InvalidOperationException("The practice cannot be read.");
    }
}
