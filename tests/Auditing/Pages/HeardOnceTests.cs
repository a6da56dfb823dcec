using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;

namespace Gradus.Tests.Auditing.Pages;

/// <summary>A page of the one file that says what the page of the folder says is not held against the plan again; what is wrong
/// in one of the two alone is found there all the same.</summary>
public sealed class HeardOnceTests
{
    private static readonly (Plan Plan, Site Site) Made = Make();

    [Fact]
    public void What_is_said_in_both_is_what_each_says_by_itself()
    {
        var both = SiteSeen.Of(Made.Plan, Made.Site, new([])).ToArray();
        Assert.Equal(2, both.Length);
        var alone = SiteSeen.Of(Made.Plan, OneFile(Made.Site), new([])).Single();
        Assert.Equal(alone.Pages.Select(p => p.Path), both[1].Pages.Select(p => p.Path));
        foreach (var (one, other) in alone.Pages.Zip(both[1].Pages))
            Assert.Equal(one.Spoken, other.Spoken);
        // The sessions are the same in both, and are heard once: otherwise there is nothing to prove here.
        Assert.Contains(both[1].Pages, p => ReferenceEquals(p.Spoken, both[0].Page(p.Path)?.Spoken));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_text_that_is_other_in_one_of_them_is_found_in_that_one(bool inOne)
    {
        var step = Made.Plan.Sessions[0].Weeks[0].Steps[0].Words;
        var file = inOne ? PagePath.AllPages : Made.Plan.Sessions[0].Path;
        var broken = new Site(
            Made.Site.Client,
            Made.Site.Pages.Select(p => p.Path == file ? p with { Html = Swapped(p.Html, step) } : p),
            Made.Site.Assets
        );
        var found = RuleBook.Audit(Made.Plan, broken, new AuditRun([])).Where(f => f.Rule.Text == "step-altered").ToArray();
        Assert.NotEmpty(found);
        Assert.All(found, f => Assert.Equal(file, f.At.File));
        Assert.DoesNotContain(RuleBook.Audit(Made.Plan, Made.Site, new AuditRun([])), f => f.Rule.Text == "step-altered");
    }

    private static string Swapped(string html, string step)
    {
        var at = html.IndexOf($"{step}", html.IndexOf("data-step=", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.True(at >= 0, step);
        return html.Remove(at, step.Length).Insert(at, "Hop on the spot");
    }

    private static Site OneFile(Site site) => new(site.Client, site.Pages.Where(p => p.Path == PagePath.AllPages), []);

    private static (Plan, Site) Make()
    {
        var files = LittlePractice.Files.Select(f => KeyValuePair.Create(f.Key, System.Text.Encoding.UTF8.GetBytes(f.Value)));
        var practice = PracticeReader.Read(SourceFolder.Of(files), []).Practice!;
        var plan = Planned.For(practice, practice.Find(new ClientId("tess"))!);
        return (plan, SiteRenderer.Render(plan, ThemeFolder.Plain(), [])!);
    }
}
