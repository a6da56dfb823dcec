using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What lies in a client's folder is opened some day: only what some page asks for, and is no program, may be there
/// (file-unplanned.md).</summary>
public sealed class FileUnplannedTests
{
    [Theory]
    [InlineData("wall.png", "wall.png", 0)]
    [InlineData("WALL.JPG", "WALL.JPG", 0)]
    [InlineData("wall.png", "other.png", 1)]
    [InlineData("wall.exe", "wall.exe", 1)]
    [InlineData("wall.png.exe", "wall.png.exe", 1)]
    [InlineData("notes.docx", "notes.docx", 1)]
    public void A_file_is_there_because_a_page_asks_for_it(string file, string asked, int found) =>
        Assert.Equal(
            found,
            Found(FinishedSite.With("index.html", "</body>", $"<img src=\"{asked}\" alt=\"A wall\"></body>").And(file, "x"))
                .Count(f => f.Rule.Text == "file-unplanned" && f.At.File == file)
        );

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
        var found = Found(new(site.Client, site.Pages.Where(p => p.Path != path), site.Assets));
        Assert.Contains(found, f =>
            f.Level == Level.Error && (f.At.File == path || f.Sentence.Contains(path, StringComparison.Ordinal))
        );
    }

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
            Found(FinishedSite.With("index.html", whole, "<title>" + title)).Any(f => f.Rule.Text == "text-not-planned")
        );
    }

    private static Series<Finding> Found(Site site) => FinishedSite.Audit(site);
}
