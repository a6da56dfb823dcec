using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>The one page that holds all others of Rufus's site: the same rules find in it what they find on a page of its own,
/// and say where it stands.</summary>
[Trait("Slow", "yes")]
public sealed class AllPagesTests(ITestOutputHelper output)
{
    private static readonly Practice Practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice!;

    private static readonly Plan Plan = Planned.For(Practice, Practice.Find(new ClientId("rufus"))!);

    private static readonly Page Whole = SiteRenderer.Render(Plan, ThemeFolder.Plain(), [], Rendition.OneFile)!.Pages.Single();

    /// <summary>What stands there, what stands instead, and the rule that finds it.</summary>
    public static TheoryData<string, string, string> Faults() =>
        new()
        {
            { "front leg LEFT", "front leg RIGHT", "stance-missing" },
            { "datetime=PT45S>45 s", "datetime=PT45S>46 s", "time-against-text" },
            { "data-about=half-kneeling-hip-lean", "data-about=\"x\"", "caution-not-in-session" },
            { "data-loads=\"groin:work", "data-loads=\"neck", "guide-told-wrong" },
            { "data-step=\"hold B r", "data-step=\"hold B l", "step-altered" },
            { "data-step=\"press E l p50", "data-step=\"press E l p90", "step-altered" },
            { "data-weeks=\"1 2\"", "data-weeks=\"1 3\"", "week-told-wrong" },
            { "data-weekdays=\"1 4\"", "data-weekdays=\"1 5\"", "week-told-wrong" },
            { "data-start=\"2026-12-07\"", "data-start=\"2026-12-14\"", "week-told-wrong" },
            { "data-back=\"7 14\"", "data-back=\"70 140\"", "week-told-wrong" },
            { "href=#weeks", "href=#weekz", "link-broken-on-page" },
            { "href=#weeks", "href=weeks.html", "link-broken-on-page" },
            { "<h4>Chest pain, fainting or no breath</h4>", "", "caution-altered" },
            { "<h4>Leave out with:</h4>", "", "page-without-cautions" },
            { "A hernia (C, D, E)", "A hernia (D, E)", "caution-altered" },
            { "Asked on 20 November 2026.", "Asked on 20 November 2025.", "caution-altered" },
            { ">Pain from 0 to 10</h3>", ">Pain</h3>", "caution-not-in-session" },
            { "A hernia (C", "A hernia, once (C", "caution-not-in-session" },
            { "data-page=\"session-2.html\"", "data-page=\"session-9.html\"", "page-unplanned" },
            { "data-page=\"session-2.html\"", "data-was=\"session-2.html\"", "page-without-cautions" },
            { "</main>", "<img src=\"https://example.org/x.png\" alt=\"x\"></main>", "address-to-network" },
            { "</main>", "<img src=\"x.png\" alt=\"x\"></main>", "address-to-network" },
            { "</main>", "<iframe src=\"data:image/svg+xml,x\"></iframe></main>", "address-to-network" },
            { "<html ", "<html manifest=\"data:image/png;base64,AAAA\" ", "address-to-network" },
            { "</main>", "<script>document.title = 'y'</script></main>", "policy-weak" },
            { "style-src &#39;", "style-src &#39;self&#39; &#39;", "policy-weak" },
            { ".caution{", "/* */ .caution{", "policy-weak" },
            { ".caution{", ".caution{color:#999}.caution{", "style-not-known" },
            {
                ".caution{",
                "a { font-size: 10px; line-height: 1; padding: 0 !important; min-block-size: 0 !important; } .caution {",
                "style-not-known"
            },
            { "</main>", "<script>document.title = 'x'</script></main>", "script-or-style-from-author" },
            { ".caution{", ".caution{display:none}.caution{", "style-not-known" },
            { "--ink:#1b2430", "--ink:#9b9490", "contrast-too-low" },
            { "Use these pages until", "Use these pages after", "good-until-missing" },
            { "data-good-until=\"2027-01-17\"", "data-good-until=\"2028-01-17\"", "good-until-missing" },
            { "Monday and Thursday", "Monday and Maud Tregarth", "other-client-named" },
            { "BEGIN:VEVENT", "BEGIN:VTODO", "calendar-against-plan" },
        };

    [Fact]
    public void Nothing_is_found_in_it_as_it_is() => Assert.Empty(Found(Whole).Select(f => $"{f.At} {f.Rule} {f.Message}"));

    /// <summary>An exercise leaves its instructions to the sessions; where it shows one, its cautions stand before it.</summary>
    [Fact]
    public void An_exercise_that_tells_somebody_to_move_must_have_its_cautions()
    {
        var exercise = Plan.Exercises[0];
        var (place, line) = ($"data-page=\"{exercise.Path}\" aria-label=\"{exercise.Title}\">", exercise.Text.Do.Lines().First());
        Assert.DoesNotContain(line, Whole.Html.Split(place)[1].Split("data-page=")[0], StringComparison.Ordinal);
        var altered = Whole.Html.Replace(place, $"{place}<p>{line}</p>", StringComparison.Ordinal);
        Assert.NotEqual(Whole.Html, altered);
        Assert.Contains("page-without-cautions", Found(Whole with { Html = altered }).Select(f => f.Rule.Text));
    }

    [Theory, MemberData(nameof(Faults))]
    public void A_fault_is_found_where_it_stands(string said, string instead, string rule)
    {
        var altered = said.StartsWith("BEGIN", StringComparison.Ordinal)
            ? Calendar(said, instead)
            : Whole.Html.Replace(said, instead, StringComparison.Ordinal);
        Assert.NotEqual(Whole.Html, altered);
        var found = Found(Whole with { Html = altered });
        output.WriteLine(string.Join('\n', found.Select(f => $"{f.At} {f.Rule}").Distinct().Take(5)));
        Assert.Contains(rule, found.Select(f => f.Rule.Text));
        Assert.All(found.Where(f => f.Rule.Text is not ("page-without-cautions" or "calendar-against-plan")), f =>
            Assert.Equal("all-pages.html", f.At.File)
        );
    }

    /// <summary>Lines and columns are those of the file, not of the part.</summary>
    [Fact]
    public void A_place_is_that_in_the_file()
    {
        var altered = Whole.Html.Replace("datetime=PT45S>45 s", "datetime=PT45S>46 s", StringComparison.Ordinal);
        var lines = altered.Split('\n');
        var places = Found(Whole with { Html = altered })
            .Where(f => f.Rule.Text == "time-against-text")
            .Select(f => f.At)
            .ToArray();
        Assert.True(places.Length > 3, $"{places.Length} places");
        Assert.All(places, at =>
            Assert.StartsWith("<time datetime=PT45S>46 s", lines[at.Line - 1][(at.Column - 1)..], StringComparison.Ordinal)
        );
    }

    /// <summary>Without photographs. Each page of it has its own signs in full.</summary>
    [Fact]
    public void It_is_smaller_than_500_kilobytes_for_each_client() =>
        Assert.All(Practice.Clients, c =>
            Assert.InRange(
                System.Text.Encoding.UTF8.GetByteCount(
                    SiteRenderer.Render(Planned.For(Practice, c), ThemeFolder.Plain(), [], Rendition.OneFile)!.Pages.Single().Html
                ),
                50_000,
                500_000
            )
        );

    private static string Calendar(string said, string instead)
    {
        const string begins = "data:text/calendar;charset=utf-8;base64,";
        var from = Whole.Html.IndexOf(begins, StringComparison.Ordinal) + begins.Length;
        var until = Whole.Html.IndexOf('"', from);
        var text = System
            .Text.Encoding.UTF8.GetString(Convert.FromBase64String(Whole.Html[from..until]))
            .Replace(said, instead, StringComparison.Ordinal);
        return Whole.Html[..from] + Convert.ToBase64String(System.Text.Encoding.UTF8.GetBytes(text)) + Whole.Html[until..];
    }

    private static Series<Finding> Found(Page page) =>
        RuleBook
            .Audit(Plan, new Site(Plan.Client, [page], []), Practice.Clients.Where(c => c.Id != Plan.Client).Select(c => c.Name))
            .ToSeries();
}
