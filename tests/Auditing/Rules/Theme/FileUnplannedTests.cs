namespace Gradus.Tests.Auditing;

/// <summary>What lies in a client's folder is opened some day: only what some page asks for, and is no program, may be there
/// (FileUnplanned.md).</summary>
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
            FinishedSite
                .Audit(FinishedSite.With("index.html", "</body>", $"<img src=\"{asked}\" alt=\"A wall\"></body>").And(file, "x"))
                .Count(f => f.Rule.Text == "file-unplanned" && f.At.File == file)
        );
}
