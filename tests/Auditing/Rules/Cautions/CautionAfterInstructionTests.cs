using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class CautionAfterInstructionTests
{
    private const string Page = "session-1.html";
    private const string Sign =
        "<h2>Stop at once</h2>\n<h3>Sharp pain</h3>\n<p>A, B</p>\n<p>Stop and leave it out for today.</p>\n";
    private const string Before = "<section class=\"cautions\">\n" + Sign;

    public static readonly Series<PlantedFault> Faults =
    [
        Moved("behind the set-up of an exercise", "<p>Lean on a wall with one foot behind you.</p>"),
        Moved(
            "behind an instruction in prose",
            "<ol>\n<li>Sink forward until the calf is tight.</li>\n<li>Stay there for 30 to 45 seconds.</li>\n</ol>"
        ),
        Moved("behind a step", "<ol><li>A get ready, left leg</li></ol>"),
        Moved(
            "behind a dose",
            "<table><tr><th>Weeks</th><th>1</th><th>2</th></tr><tr><th>A Wall calf stretch</th></tr><tr><th>Sets</th>"
                + "<td colspan=\"2\">2</td></tr></table>"
        ),
        Moved("behind an instruction that is only printed", "<p class=\"on-paper\">Sink forward until the calf is tight.</p>"),
        Moved("behind an instruction for where no scripts run", "<noscript>Let go slowly.</noscript>"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Moved("behind the titles of the exercises", "<ul><li>Wall calf stretch</li><li>Calf press</li></ul>") with
        {
            Rules = "",
        },
        Moved("behind words that only begin like an instruction", "<p>Let go slowly.x</p>") with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_behind_anything_that_tells_somebody_to_move(PlantedFault fault) => fault.MustBeFound();

    [Fact]
    public void A_caution_at_the_end_of_the_page_comes_too_late()
    {
        var site = FinishedSite.With(Page, Sign, "");
        var moved = new Site(
            site.Client,
            site.Pages.Select(p =>
                p.Path == Page ? p with { Html = p.Html.Replace("</body>", Sign + "</body>", StringComparison.Ordinal) } : p
            ),
            site.Assets
        );
        var finding = Assert.Single(FinishedSite.Audit(moved), f => !PlantedFault.ClosedLists.Contains(f.Rule.Text));
        Assert.Equal("caution-after-instruction", finding.Rule.Text);
        Assert.StartsWith("Here the caution 'Sharp pain' comes too late: ", finding.Message, StringComparison.Ordinal);
    }

    private static PlantedFault Moved(string kind, string instruction) =>
        new(kind, Page, Before, instruction + Before, "caution-after-instruction");
}
