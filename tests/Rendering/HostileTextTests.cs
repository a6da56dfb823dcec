using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Rendering;

namespace Gradus.Tests.Rendering;

/// <summary>Hostile text in every place that a coach writes in, through every template of the plain theme.</summary>
[Trait("Slow", "yes")]
public sealed class HostileTextTests(ITestOutputHelper output)
{
    private static readonly DateOnly Today = new(2027, 1, 4);

    /// <summary>Places that stand on no page today; the others must be found again.</summary>
    private static readonly string[] OnNoPage = ["demand position", "demand reason", "motion how", "notes", "sport"];

    private static readonly (Plan Plan, Site Site, Findings Findings) Harmless = Made(HostilePractice.Harmless);
    private static readonly (Plan Plan, Site Site, Findings Findings) Hostile = Made(HostilePractice.Hostile);

    [Fact]
    public void Nothing_is_found_but_that_html_in_texts_is_shown_as_text_and_hard_to_read()
    {
        Assert.Empty(Harmless.Findings.Where(f => !IsOfTheProgramme(f)).Select(f => $"{f.At} {f.Rule} {f.Message}"));
        Assert.Equal(
            "",
            string.Join(
                "\n",
                Hostile
                    .Findings.Where(f => f.Rule.Text is not ("html-in-text" or "reading-too-hard") && !IsOfTheProgramme(f))
                    .Select(f => $"{f.At} {f.Rule} {f.Message[..Math.Min(300, f.Message.Length)]}")
            )
        );
        Assert.All(Hostile.Findings, f => Assert.Equal(f.Rule.Text == "html-in-text" ? Level.Warning : Level.Note, f.Level));
        Assert.NotEmpty(Hostile.Findings);
    }

    /// <summary>Two notes about its two weeks and its sport, which no text changes.</summary>
    private static bool IsOfTheProgramme(Finding found) => found.Rule.Text is "growth-unfinished" or "work-without-demand";

    [Fact]
    public void It_adds_no_element_and_no_attribute_to_any_page()
    {
        Assert.Equal(Harmless.Site.Pages.Select(p => p.Path), Hostile.Site.Pages.Select(p => p.Path));
        foreach (var (harmless, hostile) in Harmless.Site.Pages.Zip(Hostile.Site.Pages))
            Assert.Equal(Skeleton.Of(harmless.Html), Skeleton.Of(hostile.Html));
        Assert.Equal(
            [
                "all-pages.html",
                "before-you-start.html",
                "exercise-press.html",
                "exercise-sway.html",
                "index.html",
                "session-1.html",
                "session-2.html",
                "session-3.html",
                "weeks.html",
            ],
            Hostile.Site.Pages.Select(p => p.Path)
        );
    }

    [Fact]
    public void A_page_that_let_it_through_would_be_noticed()
    {
        var page = Hostile.Site.Pages.First(p => p.Path == "index.html").Html;
        Assert.NotEqual(Skeleton.Of(page), Skeleton.Of(page.Replace("&lt;svg", "<svg", StringComparison.Ordinal)));
        Assert.NotEqual(Skeleton.Of(page), Skeleton.Of(page.Replace("mailto:", "", StringComparison.Ordinal)));
        Assert.NotEqual(
            Skeleton.Of(page),
            Skeleton.Of(page.Replace("aria-labelledby=\"", "aria-labelledby=\"\" x=\"", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void It_stands_as_text_wherever_a_harmless_text_would()
    {
        var (harmless, hostile) = (TextsOf(Harmless.Site), TextsOf(Hostile.Site));
        var found = new List<string>();
        foreach (var place in HostilePractice.Places)
        {
            var pages = harmless.Where(t => Holds(t.Value, HostilePractice.Named(place))).Select(t => t.Key).ToArray();
            var (inHeader, inText) = HostilePractice.Shown(place);
            Assert.All(pages, page =>
                Assert.True(
                    Holds(hostile[page], inHeader) || Holds(hostile[page], inText),
                    $"{page} does not hold '{place}' as it was written."
                )
            );
            if (pages.Length > 0)
                found.Add(place);
        }

        Assert.Equal(OnNoPage, HostilePractice.Places.Where(p => !p.EndsWith(" phrase", StringComparison.Ordinal)).Except(found));
        output.WriteLine($"{found.Count} places with hostile text, each found again as text");
        Assert.True(found.Count > 100, "Too few to prove anything.");
    }

    private static bool Holds(string page, string text) =>
        page.Contains(Spacing.Collapse(text), StringComparison.OrdinalIgnoreCase);

    private static Dictionary<string, string> TextsOf(Site site) =>
        site.Pages.ToDictionary(p => p.Path, p => Skeleton.TextOf(p.Html));

    private static (Plan Plan, Site Site, Findings Findings) Made(HostilePractice written)
    {
        var (practice, plan, findings) = written.Read();
        findings.AddRange(RuleBook.Check(practice, Planned.Trainings(practice), Today));
        var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), findings);
        Assert.NotNull(site);
        findings.AddRange(RuleBook.Audit(plan, site, []));
        return (plan, site, findings);
    }
}
