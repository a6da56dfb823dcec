using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>One run serves many sites, and none of them sees another's faults.</summary>
public sealed class AuditRunTests
{
    [Fact]
    public void Every_client_may_be_on_the_shelf_the_site_s_own_too() =>
        Assert.Empty(Audit(new(["Tess Harrowby", "Bram Ullyett"]), FinishedSite.Site));

    [Fact]
    public void Names_that_begin_alike_or_overlap_are_each_found()
    {
        var site = FinishedSite.With("index.html", "</body>", "<p>Thanks to ann marie leeson</p></body>");
        Assert.Equal(
            ["Ann Marie", "Ann Marie Leeson", "Marie Leeson"],
            Named(new(["Ann Marie", "Ann Marie Leeson", "Marie Leeson", "Ann Marie Lee", "Ann Leeson", "Tess Harrowby"]), site)
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Two_clients_whose_names_differ_in_case_alone_are_both_named()
    {
        var site = FinishedSite.With("index.html", "</body>", "<p>Bram Ullyett</p></body>");
        Assert.Equal(
            ["BRAM ULLYETT", "Bram Ullyett"],
            Named(new(["Bram Ullyett", "BRAM ULLYETT"]), site).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_style_file_that_one_site_has_otherwise_is_judged_as_that_site_has_it()
    {
        var run = new AuditRun([]);
        var hiding = FinishedSite.With("look.css", "body {", ".cautions { display: none } body {");
        Assert.Empty(Audit(run, FinishedSite.Site));
        Assert.Equal(FinishedSite.Audit(hiding), Audit(run, hiding));
        Assert.Contains(Audit(run, hiding), f => f.Rule.Text == "style-not-known");
        Assert.Empty(Audit(run, FinishedSite.Site));
    }

    private static Series<Finding> Audit(AuditRun run, Site site) => RuleBook.Audit(FinishedSite.Plan, site, run).ToSeries();

    private static IEnumerable<string> Named(AuditRun run, Site site) =>
        Audit(run, site).Where(f => f.Rule.Text == "other-client-named").Select(f => f.Message.Split(", ")[1]);
}
