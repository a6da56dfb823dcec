using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class PageWithoutCautionsTests
{
    private const string Press = "<li>B press, left leg</li>";

    private const string Note = "<h3>Ask a doctor first with:</h3>";

    public static readonly Series<PlantedFault> Faults =
    [
        Missing("before-you-start.html", "Applies to: Wall calf stretch, Calf press"),
        Missing("session-1.html", "A, B"),
        Missing("exercise-calf-press.html", ""),
        Missing("exercise-wall-calf-stretch.html", ""),
        new("a note missing on before-you-start", "before-you-start.html", Note, "", "page-without-cautions"),
        new("a note missing on a session's page", "session-1.html", Note, "", "page-without-cautions"),
        new("a note missing on an exercise's page", "exercise-calf-press.html", Note, "", "page-without-cautions"),
        new("a clearance missing", "session-1.html", "<h3>Raised blood pressure</h3>", "", "page-without-cautions"),
        new("the pain rule missing", "session-1.html", "<h2>Pain from 0 to 10</h2>", "", "page-without-cautions"),
        new("the day of the answers missing", "session-1.html", "<p>Asked on 20 November 2026.", "<p>", "page-without-cautions"),
        new("an instruction on the first page", "index.html", "<h1>", "<p>Let go slowly.</p><h1>", "text-not-planned"),
        new("a step on the first page", "index.html", "<h1>", Press + "<h1>", "text-not-planned"),
        new(
            "an instruction hidden on the first page",
            "index.html",
            "<h1>",
            "<p hidden>Let go slowly.</p><h1>",
            "markup-not-known text-not-planned"
        ),
        new(
            "an instruction of another exercise on an exercise's page",
            "exercise-calf-press.html",
            "<h1>",
            "<p>Sink forward until the calf is tight.</p><h1>",
            "text-not-planned"
        ),
        new(
            "a page emptied",
            "exercise-calf-press.html",
            "<body>",
            "<body><template>",
            "good-until-missing heading-skipped page-without-cautions plan-words-altered times-do-not-add-up week-missing"
        ),
    ];

    public static TheoryData<PlantedFault> All =>
        new(Faults.Append(new("an exercise named on the first page", "index.html", "<h1>", "<p>Calf press</p><h1>", "")));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_on_every_kind_of_page(PlantedFault fault) => fault.MustBeFound();

    [Theory]
    [InlineData("before-you-start.html")]
    [InlineData("session-1.html")]
    [InlineData("exercise-calf-press.html")]
    public void A_page_that_is_not_there_is_missed(string path)
    {
        var site = new Site(
            FinishedSite.Site.Client,
            FinishedSite.Site.Pages.Where(p => p.Path != path),
            FinishedSite.Site.Assets
        );
        Assert.Contains(FinishedSite.Audit(site), f => f.Rule.Text == "page-without-cautions" && f.At.File == path);
    }

    [Fact]
    public void A_page_that_a_theme_brings_along_is_not_planned()
    {
        var bytes = System.Text.Encoding.UTF8.GetBytes($"<html lang=\"en\"><title>x</title><h1>x</h1><ul>{Press}</ul>");
        var site = new Site(
            FinishedSite.Site.Client,
            FinishedSite.Site.Pages,
            FinishedSite.Site.Assets.Append(new("more/quick.htm", bytes))
        );
        Assert.Equal(
            new[] { "good-until-missing", "markup-not-known", "page-unplanned", "policy-weak" }.Select(rule =>
                (rule, "more/quick.htm")
            ),
            FinishedSite.Audit(site).Select(f => (f.Rule.Text, f.At.File)).Order()
        );
    }

    /// <summary>Whatever is not there is told by its own rule, and by no accident of another.</summary>
    [Theory]
    [InlineData("session-1.html")]
    [InlineData("index.html")]
    [InlineData("before-you-start.html")]
    [InlineData("weeks.html")]
    [InlineData("exercise-calf-press.html")]
    public void A_page_that_is_missing_is_told_as_missing(string path)
    {
        var site = FinishedSite.Site;
        var found = FinishedSite.Audit(new(site.Client, site.Pages.Where(p => p.Path != path), site.Assets));
        Assert.Contains(found, f =>
            f.Level == Level.Error && (f.At.File == path || f.Sentence.Contains(path, StringComparison.Ordinal))
        );
    }

    private static PlantedFault Missing(string path, string exercises)
    {
        var caution = $"<h3>Sharp pain</h3>\n<p>{exercises}</p>\n<p>Stop and leave it out for today.</p>\n";
        return new($"a stop sign missing on {path}", path, caution, "", "page-without-cautions");
    }
}
