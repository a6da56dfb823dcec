using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class TextNotPlannedTests
{
    private const string Page = "session-1.html";
    private const string Sign = "<p>Stop and leave it out for today.</p>";

    /// <summary>Whatever is said beside the plan takes something back, wherever it stands.</summary>
    public static readonly Series<PlantedFault> Faults =
    [
        new("behind a caution", Page, Sign, Sign + "<p>This does not apply to you.</p>", Rules()),
        new("at the top", Page, "<h1>", "<p>Ignore the cautions below.</p><h1>", Rules()),
        new("at the end", Page, "</body>", "<p>Only joking.</p></body>", Rules()),
        new("in a heading", Page, "<h2>Stop at once</h2>", "<h2>Stop at once?</h2><h2>For others</h2>", "caution-altered"),
        new("in a list of steps", Page, "<ol>", "<ol><li>Do all of it twice.</li>", Rules("times-do-not-add-up")),
        new(
            "in running text",
            Page,
            "<p>These pages are exercise advice,",
            "<p>Mostly, these pages are exercise advice,",
            "plan-words-altered"
        ),
        .. new[] { "Not for you", "Skip", "Exercises" }.Select(said => new PlantedFault(
            "only for who hears the page: " + said,
            Page,
            "<section class=\"cautions\">",
            $"<section class=\"cautions\" aria-label=\"{said}\">",
            Rules()
        )),
        new("on page one", "index.html", "</body>", "<p>A hold</p></body>", Rules()),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        new("a mark between two texts", Page, "<h1>Ankles</h1><p>", "<h1>Ankles</h1><p>– ", ""),
        new("a time in a text of its own", Page, Sign, "<p>Stop and leave <b>it</b> out for today.</p>", ""),
        new("a comment", Page, "</body>", "<!-- nothing --></body>", ""),
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_wherever_it_stands(PlantedFault fault) => fault.MustBeFound();

    /// <summary>However short; and a page without a name is another rule's.</summary>
    [Theory]
    [InlineData("x", true)]
    [InlineData("", false)]
    public void The_title_of_a_page_is_the_plan_s(string title, bool isFound)
    {
        var html = FinishedSite.Site.Pages.Single(p => p.Path == "index.html").Html;
        var from = html.IndexOf("<title>", StringComparison.Ordinal);
        var whole = html[from..html.IndexOf("</title>", StringComparison.Ordinal)];
        Assert.Equal(
            isFound,
            FinishedSite
                .Audit(FinishedSite.With("index.html", whole, "<title>" + title))
                .Any(f => f.Rule.Text == "text-not-planned")
        );
    }

    private static string Rules(string others = "") =>
        string.Join(
            ' ',
            $"{others} text-not-planned".Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal)
        );
}
