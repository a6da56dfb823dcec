using System.Xml.Linq;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class FigureCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-figure-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_pose_becomes_one_drawing_and_nothing_beside_it()
    {
        var answer = Gradus.Run("figure", "standing, hands on wall", "--end", "heels off floor, heels move", "--to", At("a.svg"));
        Assert.Equal((0, At("a.svg") + "\n", ""), (answer.Status, answer.Output, answer.Error));
        Assert.Equal([At("a.svg")], Directory.GetFileSystemEntries(folder));
        var svg = Assert.IsType<XElement>(XDocument.Load(At("a.svg")).Root);
        Assert.Equal(2, svg.Elements().Count(e => (string?)e.Attribute("class") == "figure"));
        Assert.Equal(["R", "R"], svg.Descendants().Where(e => e.Name.LocalName == "text").Select(t => t.Value));
    }

    [Fact]
    public void The_left_side_has_its_letter()
    {
        Assert.Equal(0, Gradus.Run("figure", "standing", "--side", "left", "--to", At("a.svg")).Status);
        Assert.Contains(">L</text>", File.ReadAllText(At("a.svg")), StringComparison.Ordinal);
    }

    [Fact]
    public void An_exercise_is_drawn_under_its_title()
    {
        var exercise = Repository.Path("content", "exercises", "knee-hover.md");
        Assert.Equal(0, Gradus.Run("figure", exercise, "--to", At("a.svg")).Status);
        Assert.Contains("<title>All-fours knee lift</title>", File.ReadAllText(At("a.svg")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("standing, hands on wal", 10, 12, "'wal' is nothing that a body may rest on here.", "Did you mean 'wall'?")]
    [InlineData("standin", 0, 7, "'standin' is no base of a pose.", "Did you mean 'standing'?")]
    public void What_is_wrong_is_shown_at_its_word_and_nothing_is_written(
        string pose,
        int column,
        int length,
        string message,
        string help
    )
    {
        var answer = Gradus.Run("figure", pose, "--to", At("a.svg"));
        var marks = new string(' ', column) + new string('^', length);
        Assert.Equal(
            (1, "", $"gradus: {message}\n  | {pose}\n  | {marks}\n    {help}\n"),
            (answer.Status, answer.Output, answer.Error)
        );
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void Nobody_could_stand_so_is_a_note()
    {
        const string Pose = "standing, trunk leaning ahead 60, hip flexion 60, knee flexion 0, ankle dorsiflexion 20";
        var answer = Gradus.Run("figure", Pose, "--to", At("a.svg"));
        Assert.Equal(0, answer.Status);
        Assert.EndsWith(
            "Nobody could stand so: the weight is not above what it rests on, and no hand holds it.\n",
            answer.Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_sheet_shows_all_figures_of_a_practice()
    {
        var answer = Gradus.Run("figure", Repository.Path("content"), "--sheet", At("a.html"));
        Assert.Equal(0, answer.Status);
        Assert.Matches(@"\A.*a\.html: \d+ figures\n\z", answer.Output);
        var page = File.ReadAllText(At("a.html"));
        Assert.Contains("<li>All-fours knee lift<svg", page, StringComparison.Ordinal);
        Assert.DoesNotContain("This page names clients", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_titles_nothing_tells_what_it_is_called()
    {
        Assert.Equal(0, Gradus.Run("figure", Repository.Path("content"), "--no-titles", "--sheet", At("a.html")).Status);
        var page = File.ReadAllText(At("a.html"));
        Assert.Contains("<li>1<svg", page, StringComparison.Ordinal);
        Assert.DoesNotContain("All-fours knee lift", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Say where to: --to FILE.svg for one figure, --sheet FILE.html for those of a practice.", "standing")]
    [InlineData("'--no-titles' belongs to --sheet.", "standing", "--no-titles", "--to", "/tmp/never.svg")]
    [InlineData("'' is no name for it. Name a file that ends in .svg with --to.", "standing", "--to", "")]
    [InlineData("'/tmp/x.png' is no name for it. Name a file that ends in .svg with --to.", "standing", "--to", "/tmp/x.png")]
    [InlineData("There is no folder '/no' to write 'x.svg' into.", "standing", "--to", "/no/x.svg")]
    [InlineData("There is no file 'none.md'.", "none.md", "--to", "/tmp/never.svg")]
    public void An_error_of_use_is_one_line(string line, params string[] words)
    {
        var answer = Gradus.Run(["figure", .. words]);
        Assert.Equal((2, "", $"gradus: {line}\n"), (answer.Status, answer.Output, answer.Error));
    }

    private string At(string name) => Path.Combine(folder, name);
}
