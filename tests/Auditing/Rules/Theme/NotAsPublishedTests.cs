using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Auditing;

public sealed class NotAsPublishedTests
{
    private static readonly Site Made = Listed(FinishedSite.Site);

    [Fact]
    public void The_site_as_it_was_made_is_as_it_was_published() => Assert.Equal("", Told(Made));

    [Theory]
    [InlineData("session-1.html", "Stop at once", "Stop at once ", "session-1.html: This file is not as it was published.")]
    [InlineData("look.css", "body {", "body  {", "look.css: This file is not as it was published.")]
    public void One_letter_is_enough(string path, string said, string instead, string told) =>
        Assert.Equal(told, Told(Edited(path, said, instead)));

    [Fact]
    public void The_first_line_that_is_other_is_named()
    {
        var found = RuleBook.Compare(FinishedSite.Plan, Edited("session-1.html", "</body>", "<p>x</p></body>"), Made).Single();
        var lines = Made.Pages.Single(p => p.Path == "session-1.html").Html.Split('\n');
        Assert.Equal(Array.FindIndex(lines, l => l.Contains("</body>", StringComparison.Ordinal)) + 1, found.At.Line);
    }

    [Fact]
    public void A_file_that_is_missing_or_added_is_named()
    {
        var without = new Site(Made.Client, Made.Pages.Where(p => p.Path != "weeks.html"), Made.Assets);
        Assert.Equal("weeks.html: This file of the site is missing.", Told(without));
        var more = new Site(Made.Client, Made.Pages, Made.Assets.Append(new("extra.js", Encoding.UTF8.GetBytes("1"))));
        Assert.Equal("extra.js: This file is no part of the site.", Told(more));
    }

    [Fact]
    public void The_list_of_files_may_not_be_missing()
    {
        var without = new Site(Made.Client, Made.Pages, Made.Assets.Where(a => a.Path != PagePath.FileList));
        Assert.Equal("files.txt: This file of the site is missing.", Told(without));
    }

    [Fact]
    public void A_whole_site_of_before_is_said_once()
    {
        var before = Listed(FinishedSite.With("session-1.html", "Stop at once", "Stop now"));
        Assert.StartsWith("files.txt: These pages are of another edition", Told(before), StringComparison.Ordinal);
    }

    private static Site Edited(string path, string said, string instead)
    {
        var edited = FinishedSite.With(path, said, instead);
        return new(edited.Client, edited.Pages, edited.Assets.Append(Made.Assets.Single(a => a.Path == PagePath.FileList)));
    }

    /// <summary>With the list of its own files.</summary>
    private static Site Listed(Site site) =>
        new(
            site.Client,
            site.Pages,
            site.Assets.Append(new(PagePath.FileList, Encoding.UTF8.GetBytes(FileList.Of(site.Pages, site.Assets))))
        );

    private static string Told(Site found) =>
        string.Join('\n', RuleBook.Compare(FinishedSite.Plan, found, Made).Select(f => $"{f.At.File}: {f.Message}"));
}
