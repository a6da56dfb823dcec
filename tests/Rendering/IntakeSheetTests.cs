using System.Security.Cryptography;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Gradus.Domain;
using Gradus.Rendering;
using Gradus.Tests.House;
using Gradus.Trainings;

namespace Gradus.Tests.Rendering;

public sealed class IntakeSheetTests
{
    /// <summary>In Sluice Lane's conditions.yaml after the floor: a calf strain and a sore wrist, each with sides, and between
    /// them faint spells.</summary>
    [Theory]
    [InlineData("", "ankle dorsiflexion", "calf-strain")]
    [InlineData("loads: [wrist]", "ankle dorsiflexion", "calf-strain sore-wrist")]
    [InlineData("loads: [other wrist]", "ankle dorsiflexion", "calf-strain sore-wrist")]
    [InlineData("clear-first: [faint-spells]", "ankle dorsiflexion", "calf-strain faint-spells")]
    [InlineData("not-with: [faint-spells]", "hip internal rotation", "faint-spells")]
    public void It_asks_what_the_library_and_the_floor_need_and_nothing_else(string more, string trains, string asked)
    {
        var practice = Club.Empty.Exercise("sway", "2 x hold 30 s, each side", more, position: "supine", trains: trains).Read();
        var page = Parsed(Rendered(practice));
        Assert.Equal(
            FloorAnswers.Ids.Concat(asked.Split(' ')),
            page.QuerySelectorAll("[data-asked]").Select(q => q.GetAttribute("data-asked") ?? "")
        );
        Assert.Equal(
            Screening.Asked(practice).Select((c, i) => $"{i + 1}. {c.Question}"),
            page.QuerySelectorAll("[data-asked] > legend").Select(l => l.TextContent)
        );
    }

    [Fact]
    public void A_library_without_exercises_has_the_floor_alone() =>
        Assert.Equal(
            FloorAnswers.Ids,
            Parsed(Rendered(Club.Empty.Read())).QuerySelectorAll("[data-asked]").Select(q => q.GetAttribute("data-asked") ?? "")
        );

    [Fact]
    public void Each_question_has_the_answers_that_the_practice_reads_and_none_is_chosen()
    {
        var page = Parsed(Rendered(LittlePractice.Golden.Read()));
        foreach (var question in page.QuerySelectorAll("[data-asked]"))
        {
            var id = question.GetAttribute("data-asked");
            var replies = question.QuerySelectorAll("input[type=radio]");
            Assert.Equal(
                id switch
                {
                    "pain-now" => "0||not asked",
                    "calf-strain" or "sore-wrist" => "no|yes, left|yes, right|yes|not asked",
                    _ => "no|yes|not asked",
                },
                string.Join('|', replies.Select(r => r.GetAttribute("value")))
            );
            Assert.Equal([$"to-{id}"], replies.Select(r => r.GetAttribute("name")).Distinct());
        }

        Assert.Empty(page.QuerySelectorAll("[checked], [selected]"));
        var places = page.QuerySelectorAll("[data-place]");
        Assert.Equal(3, places.Length);
        Assert.All(places, place =>
            Assert.Equal(
                Region.All.Select(r => (r.Name, r.IsSided)),
                place
                    .QuerySelectorAll("[data-where] option")
                    .Skip(1)
                    .Select(o => (o.GetAttribute("value") ?? "", o.HasAttribute("data-sided")))
            )
        );
    }

    [Fact]
    public void It_needs_no_other_file_and_runs_nothing_but_its_own()
    {
        var page = Parsed(Rendered(LittlePractice.Golden.Read()));
        var (style, script) = (Assert.Single(page.QuerySelectorAll("style")), Assert.Single(page.QuerySelectorAll("script")));
        Assert.Equal(
            $"default-src 'none'; script-src '{HashOf(script)}'; style-src '{HashOf(style)}'; base-uri 'none'; "
                + "form-action 'none'",
            page.QuerySelector("meta[http-equiv=Content-Security-Policy]")?.GetAttribute("content")
        );
        Assert.Empty(page.QuerySelectorAll("[src], [style], link, img, iframe, object, [action], [formaction]"));
        Assert.DoesNotContain(page.All.SelectMany(e => e.Attributes), a => a.Name.StartsWith("on", StringComparison.Ordinal));
        Assert.All(page.QuerySelectorAll("[href]"), a => Assert.Matches("^(mailto|tel):", a.GetAttribute("href")));
        Assert.DoesNotMatch("(?i)storage|cookie|indexeddb|fetch|XMLHttpRequest|sendBeacon|https?:", script.TextContent);
        Assert.DoesNotMatch(@"url\(|@import", style.TextContent);
        Assert.Equal("off", page.QuerySelector("form")?.GetAttribute("autocomplete"));
    }

    [Fact]
    public void It_is_the_same_bytes_twice() =>
        Assert.Equal(Rendered(LittlePractice.Golden.Read()), Rendered(LittlePractice.Golden.Read()));

    [Fact]
    public void Hostile_texts_add_no_element_and_no_attribute_and_stand_there_as_text()
    {
        var (harmless, hostile) = (
            Rendered(HostilePractice.Harmless.Read().Practice),
            Rendered(HostilePractice.Hostile.Read().Practice)
        );
        Assert.Equal(Skeleton.Of(harmless), Skeleton.Of(hostile));
        Assert.NotEqual(Skeleton.Of(hostile), Skeleton.Of(hostile.Replace("&lt;svg", "<svg", StringComparison.Ordinal)));
        var (before, after) = (Skeleton.TextOf(harmless), Skeleton.TextOf(hostile));
        var found = HostilePractice
            .Places.Where(p => before.Contains(HostilePractice.Named(p), StringComparison.Ordinal))
            .ToArray();
        Assert.All(found, place =>
            Assert.Contains(Spacing.Collapse(HostilePractice.Shown(place).InHeader), after, StringComparison.Ordinal)
        );
        Assert.Equal(
            ["coach", "email", "other question", "practice name", "question"],
            found.Where(p => !p.EndsWith(" phrase", StringComparison.Ordinal))
        );
        Assert.True(found.Length > 40, "Too few to prove anything.");
    }

    [Fact]
    public void A_theme_without_the_template_is_told_so()
    {
        var findings = new Findings();
        Assert.Null(IntakeSheetRenderer.Render(AskedSheet.Of(Club.Empty.Read()), new("mine", []), findings));
        var finding = Assert.Single(findings);
        Assert.Equal(
            ("intake-sheet.html", "The theme 'mine' cannot be filled: There is no template 'intake-sheet.html'."),
            (finding.At.ToString(), finding.Message)
        );
    }

    [Theory]
    [InlineData("intake-sheet.js", "'</SCRIPT>'", "'</script' cannot stand in the script of a page.")]
    [InlineData("intake-sheet.js", "x = '<!--'", "'<!--' cannot stand in the script of a page.")]
    [InlineData("intake-sheet.css", "p { content: '</style>' }", "'</style' cannot stand in the style of a page.")]
    public void What_would_end_the_style_or_the_script_too_early_is_refused(string path, string text, string said)
    {
        var findings = new Findings();
        Assert.Null(
            IntakeSheetRenderer.Render(
                AskedSheet.Of(Club.Empty.Read()),
                new("mine", [KeyValuePair.Create(path, Encoding.UTF8.GetBytes(text))]),
                findings
            )
        );
        var finding = Assert.Single(findings);
        Assert.Equal((path, $"The theme 'mine' cannot be filled: {said}"), (finding.At.ToString(), finding.Message));
    }

    [Fact]
    public void Its_style_and_script_go_into_no_site()
    {
        Assert.True(File.Exists(Repository.Path("themes", "plain", "intake-sheet.js")));
        Assert.DoesNotContain(ThemeFolder.Plain().Assets, a => a.Path.StartsWith("intake", StringComparison.Ordinal));
        Assert.Contains(ThemeFolder.Plain().Assets, a => a.Path == "page.js");
    }

    private static string Rendered(Practice practice)
    {
        var findings = new Findings();
        var page = IntakeSheetRenderer.Render(AskedSheet.Of(practice), ThemeFolder.Plain(), findings);
        Assert.Empty(findings);
        return page ?? "";
    }

    private static IDocument Parsed(string page) => new HtmlParser().ParseDocument(page);

    private static string HashOf(IElement element) =>
        "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(element.TextContent)));
}
