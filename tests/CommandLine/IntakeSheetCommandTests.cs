using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class IntakeSheetCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-sheet-").FullName;

    private string To => Path.Combine(folder, "questions.html");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void One_page_is_written_and_nothing_beside_it()
    {
        var answer = Gradus.Run("intake-sheet", Repository.Path("content"), "--to", To);
        Assert.Equal((0, $"{To}: 33 questions\n", ""), (answer.Status, answer.Output, answer.Error));
        Assert.Equal([To], Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void It_takes_the_place_of_the_one_before()
    {
        File.WriteAllText(To, "old");
        Assert.Equal(0, Gradus.Run("intake-sheet", Repository.Path("content"), "--to", To).Status);
        Assert.EndsWith("</html>\n", File.ReadAllText(To), StringComparison.Ordinal);
        Assert.Equal([To], Directory.GetFileSystemEntries(folder));
    }

    [Theory]
    [InlineData("questions.html", "'{0}/questions.html' is a folder where the page should be. Name a file with --to.")]
    [InlineData("questions", "'{0}/questions' is no name for a page. Name a file that ends in .html with --to.")]
    [InlineData(
        "no/questions.html",
        "There is no folder '{0}/no' to write 'questions.html' into. Make it first, or name another file with --to."
    )]
    public void A_place_that_is_no_file_is_refused_in_one_line(string place, string line)
    {
        Directory.CreateDirectory(To);
        var answer = Gradus.Run("intake-sheet", Repository.Path("content"), "--to", Path.Combine(folder, place));
        Assert.Equal((2, "", $"gradus: {string.Format(null, line, folder)}\n"), (answer.Status, answer.Output, answer.Error));
        Assert.Equal([To], Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_question_that_cannot_be_read_stands_in_the_way()
    {
        File.WriteAllText(To, "old");
        var practice = Begun("conditions.yaml", "  question:", "  qestion:");
        var answer = Gradus.Run("intake-sheet", practice, "--to", To);
        Assert.Equal(
            (1, $"gradus: an error stands in the way of the sheet; 'gradus audit {practice}' says more.\n"),
            (answer.Status, answer.Error)
        );
        Assert.All(answer.Output.TrimEnd('\n').Split('\n'), line =>
            Assert.Matches(@"\Aconditions\.yaml:\d+:\d+  error  key-", line)
        );
        Assert.Equal("old", File.ReadAllText(To));
    }

    [Fact]
    public void Without_the_name_of_the_coach_there_is_no_sheet()
    {
        var practice = Begun("practice.md", "coach:", "coahc:");
        var answer = Gradus.Run("intake-sheet", practice, "--to", To);
        Assert.Equal(1, answer.Status);
        Assert.StartsWith("practice.md:", answer.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(To));
    }

    [Fact]
    public void An_exercise_that_cannot_be_read_is_said_beside_the_sheet()
    {
        var practice = Begun("exercises/calf-lean.md", "not-with:", "not-wiht:");
        var answer = Gradus.Run("intake-sheet", practice, "--to", To);
        Assert.Equal(
            (
                1,
                $"gradus: a question may be missing, because an exercise could not be read; 'gradus audit {practice}' "
                    + "says more.\n"
            ),
            (answer.Status, answer.Error)
        );
        Assert.Contains("exercises/calf-lean.md:", answer.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(To));
    }

    [Fact]
    public void A_client_who_has_not_answered_yet_is_in_nobodys_way()
    {
        var practice = Begun("clients/perrin/client.yaml", "answers:", "#answers:");
        Assert.Equal(0, Gradus.Run("intake-sheet", practice, "--to", To).Status);
    }

    [Fact]
    public void A_theme_without_the_template_is_told_so()
    {
        var answer = Gradus.Run(
            "intake-sheet",
            Repository.Path("content"),
            "--to",
            To,
            "--theme",
            Repository.Path("tests", "Auditing", "little-theme")
        );
        Assert.Equal(
            (
                1,
                "intake-sheet.html  error  theme-broken  The theme 'little-theme' cannot be filled: There is no template "
                    + "'intake-sheet.html'.\n",
                "gradus: the theme stands in the way of the sheet.\n"
            ),
            (answer.Status, answer.Output, answer.Error)
        );
        Assert.False(File.Exists(To));
    }

    /// <summary>The little practice that Gradus begins with, with one passage of one file written anew wherever it
    /// stands.</summary>
    private string Begun(string path, string said, string instead)
    {
        var practice = Path.Combine(folder, "practice");
        Assert.Equal(0, Gradus.Run("begin", practice).Status);
        var file = Path.Combine(practice, path);
        Assert.Contains(said, File.ReadAllText(file), StringComparison.Ordinal);
        File.WriteAllText(file, File.ReadAllText(file).Replace(said, instead, StringComparison.Ordinal));
        return practice;
    }
}
