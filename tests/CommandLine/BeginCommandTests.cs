namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class BeginCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-begun-").FullName;

    private string Practice => Path.Combine(folder, "practice");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("2026-12-07")]
    [InlineData("2028-02-29")]
    public void What_was_begun_is_published_at_once_and_nothing_is_found(string today)
    {
        Assert.Equal(0, Gradus.Run("begin", Practice, "--today", today).Status);
        var answer = Gradus.Run("publish", Practice, "--to", Path.Combine(folder, "site"), "--today", today);
        Assert.StartsWith("No problems found.\nperrin: 13 pages, ", answer.Output, StringComparison.Ordinal);
        Assert.Equal(0, answer.Status);
    }

    /// <summary>The practice can be tried with the invented client; nobody else is sent to a number that is nobody's.</summary>
    [Fact]
    public void With_a_client_of_ones_own_the_coach_s_name_and_number_are_asked_for()
    {
        Gradus.Run("begin", Practice, "--today", "2026-12-07");
        Directory.CreateDirectory(Path.Combine(Practice, "clients", "ada"));
        foreach (var file in Directory.GetFiles(Path.Combine(Practice, "clients", "perrin")))
            File.Copy(file, Path.Combine(Practice, "clients", "ada", Path.GetFileName(file)));
        Assert.Contains(
            "  'Your practice', 'Your name', 'you@example.org' and '+44 1632 960000' are what a new practice has",
            Gradus.Run("audit", Practice, "--today", "2026-12-07").Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void It_ends_with_what_to_do_next_and_the_command_it_names_works()
    {
        var answer = Gradus.Run("begin", Practice, "--today", "2026-12-07");
        Assert.Equal("", answer.Error);
        var lines = answer.Output.TrimEnd('\n').Split('\n');
        Assert.Equal(4, lines.Length);
        Assert.EndsWith($" {Path.Combine(Practice, "practice.md")}.", lines[1], StringComparison.Ordinal);
        var publish = lines[2].Split(":  gradus ")[1].Split(' ');
        Assert.Equal(0, Gradus.Run([.. publish, "--today", "2026-12-07"]).Status);
        Assert.True(File.Exists(lines[3].Split(". ")[0]["Open ".Length..]));
    }

    [Theory]
    [InlineData("2026-12-06", "2026-12-07")]
    [InlineData("2026-12-07", "2026-12-14")]
    [InlineData("2026-12-08", "2026-12-14")]
    public void The_invented_client_begins_on_the_Monday_after(string today, string start)
    {
        Gradus.Run("begin", Practice, "--today", today);
        Assert.Contains(
            $"\nstart: {start}\n",
            File.ReadAllText(Path.Combine(Practice, "clients", "perrin", "programme.md")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_day_that_no_programme_begins_on_is_one_line()
    {
        var answer = Gradus.Run("begin", Practice, "--today", "9999-12-31");
        Assert.Equal(2, answer.Status);
        Assert.Equal(
            "gradus: 9999-12-31 is too far away for a programme to begin. Name a day before the year 2200.\n",
            answer.Error
        );
        Assert.False(Directory.Exists(Practice));
    }

    [Fact]
    public void The_day_enters_nothing_but_the_clients_own_files()
    {
        var other = Path.Combine(folder, "other");
        Gradus.Run("begin", Practice, "--today", "2026-12-07");
        Gradus.Run("begin", other, "--today", "2031-01-02");
        var (one, two) = (FolderBytes.Of(Practice), FolderBytes.Of(other));
        Assert.Equal(one.Keys, two.Keys);
        Assert.Equal(
            ["clients/perrin/client.yaml", "clients/perrin/programme.md", "clients/perrin/readings.csv"],
            one.Keys.Where(file => one[file] != two[file])
        );
    }

    [Fact]
    public void An_empty_folder_is_filled_and_nothing_else_is_left_behind()
    {
        Directory.CreateDirectory(Practice);
        Assert.Equal(0, Gradus.Run("begin", Practice, "--today", "2026-12-07").Status);
        Assert.Equal([Practice], Directory.GetFileSystemEntries(folder));
        Assert.Equal(
            ["cautions", "clients", "conditions.yaml", "exercises", "motions.yaml", "practice.md", "schemas", "sports"],
            Directory.GetFileSystemEntries(Practice).Select(e => Path.GetFileName(e)).Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [InlineData(
        "practice/kept.txt",
        "practice",
        "is not empty, and nothing in it is written over. Name a folder that is not there yet, or is empty."
    )]
    [InlineData(
        "practice/.kept",
        "practice",
        "is not empty, and nothing in it is written over. Name a folder that is not there yet, or is empty."
    )]
    [InlineData("practice", "practice", "is a file. Name a folder that is not there yet, or is empty.")]
    [InlineData("practice", "practice/inside", "could not be written, and nothing was: ")]
    public void Nothing_that_is_there_is_written_over(string there, string asked, string said)
    {
        var (file, wanted) = (Path.Combine(folder, there), Path.Combine(folder, asked));
        Directory.CreateDirectory(Path.GetDirectoryName(file) ?? folder);
        File.WriteAllText(file, "kept");
        var answer = Gradus.Run("begin", wanted);
        Assert.Equal(2, answer.Status);
        Assert.Equal("", answer.Output);
        Assert.StartsWith($"gradus: '{wanted}' {said}", answer.Error, StringComparison.Ordinal);
        Assert.Equal(1, answer.Error.Count(c => c == '\n'));
        Assert.Equal([file], Directory.GetFiles(folder, "*", SearchOption.AllDirectories));
        Assert.Equal("kept", File.ReadAllText(file));
    }
}
