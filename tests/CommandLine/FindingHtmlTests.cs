using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

public sealed partial class FindingHtmlTests
{
    private static readonly SourceFolder Practice = SourceFolder.Of([
        new("practice.md", []),
        new("clients/tess/client.yaml", "born: 1990\nagreed: <never> & \"so\"\n"u8.ToArray()),
        new("clients/bram/programme.md", []),
    ]);

    private static readonly Finding OfTess = new(
        new("agreement-missing"),
        Level.Error,
        new("tess"),
        new("clients/tess/client.yaml", 2, 9),
        "Tess <Harrowby> has not agreed.",
        "Ask & write the day.",
        7
    );

    [GeneratedRegex("<style>(.*)</style>", RegexOptions.Singleline)]
    private static partial Regex Style();

    [GeneratedRegex(@"(--[a-z]+): (#[0-9a-f]{6});")]
    private static partial Regex Colour();

    [Fact]
    public void A_finding_shows_its_level_place_sentence_line_and_remedy() =>
        Assert.Contains(
            """
            <div class="finding error">
            <p><strong class="level">error</strong> <span class="place">clients/tess/client.yaml:2:9</span></p>
            <p>Tess &lt;Harrowby&gt; has not agreed.</p>
            <pre>agreed: <mark>&lt;never&gt;</mark> &amp; &quot;so&quot;</pre>
            <p>Ask &amp; write the day.</p>
            </div>
            """,
            Page(OfTess),
            StringComparison.Ordinal
        );

    [Fact]
    public void Findings_stand_by_client_then_by_rule_with_counts_and_the_page_of_the_rule()
    {
        var page = Page(
            OfTess,
            OfTess with
            {
                Message = "Another.",
                Level = Level.Note,
            },
            OfTess with
            {
                Client = new("bram"),
            },
            OfTess with
            {
                Rule = new("answers-stale"),
            },
            new(new("file-unreadable"), Level.Error, null, Location.Whole("practice.md"), "It is empty.", "Write it."),
            new(new("dose-unreadable"), Level.Error, null, Location.Whole("clients/bram/programme.md"), "Odd.", "Write it.")
        );
        Assert.Equal(
            [
                "What the audit found",
                "The whole practice",
                "file-unreadable: 1 error.",
                "bram",
                "agreement-missing: 1 error.",
                "dose-unreadable: 1 error.",
                "Tess Harrowby (tess)",
                "agreement-missing: 1 error, 1 note.",
                "answers-stale: 1 error.",
                "The rules",
            ],
            Regex
                .Matches(page.Split("<div class=\"page\"")[0], "<h[123]>(.*?)</h[123]>")
                .Select(m => Regex.Replace(m.Groups[1].Value, "<[^>]*>", ""))
        );
        foreach (Match link in Regex.Matches(page, "href=\"#([^\"]*)\""))
            Assert.Single(Regex.Matches(page, $" id=\"{link.Groups[1].Value}\""));
        Assert.Contains("<p class=\"counts\">5 errors, 1 note.</p>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void It_asks_for_nothing_and_runs_nothing()
    {
        var page = Page(OfTess);
        var style = Style().Match(page).Groups[1].Value;
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        Assert.Contains(
            "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                + $"style-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'\">",
            page,
            StringComparison.Ordinal
        );
        Assert.DoesNotMatch("<(script|link|img|iframe|form|object)|url\\(|@import| style=| on[a-z]+=", page);
    }

    [Fact]
    public void It_says_that_it_is_for_the_coach_alone() =>
        Assert.Contains("<strong>For the coach alone.</strong>", Page(), StringComparison.Ordinal);

    [Fact]
    public void Where_nothing_is_found_it_says_so() =>
        Assert.Contains("<p class=\"counts\">No problems found.</p>", Page(), StringComparison.Ordinal);

    [Fact]
    public void A_mark_at_the_end_of_a_line_cuts_nothing() =>
        Assert.Contains(
            "<pre>born: 1990<mark></mark></pre>",
            Page(OfTess with { At = new("clients/tess/client.yaml", 1, 11) }),
            StringComparison.Ordinal
        );

    [Fact]
    public void Its_colours_are_those_of_the_pages()
    {
        var look = File.ReadAllText(Repository.Path("themes", "plain", "look.css"));
        var ours = Style().Match(Page()).Groups[1].Value.Split("@media print")[0];
        var colours = Colour().Matches(ours).Select(m => m.Value).ToArray();
        Assert.True(colours.Length > 10);
        Assert.All(colours, colour => Assert.Contains(colour, look, StringComparison.Ordinal));
    }

    [Fact]
    [Trait("Slow", "yes")]
    public void The_command_says_as_much_as_it_does_in_json()
    {
        var folder = Repository.Path("content");
        var json = Gradus.Run("audit", folder, "--today", "2031-12-01", "--format", "json");
        var page = Gradus.RunApart([], "audit", folder, "--today", "2031-12-01", "--format", "html");
        Assert.Equal((json.Status, ""), (page.Status, page.Error));
        Assert.StartsWith("<!doctype html>\n", page.Output, StringComparison.Ordinal);
        Assert.EndsWith("</html>\n", page.Output, StringComparison.Ordinal);
        Assert.Equal(Regex.Count(json.Output, "\"rule\": "), Regex.Count(page.Output, "<div class=\"finding "));
    }

    private static string Page(params Finding[] findings) =>
        FindingHtml.Write(
            findings.ToSeries(),
            new(Practice, new PageLines(), null),
            Explanations.All(),
            id => id.Text == "tess" ? "Tess Harrowby" : null,
            []
        );
}
