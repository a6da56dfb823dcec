using System.Text.Json;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class NewCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-new-").FullName;

    public NewCommandTests() => Gradus.Run("begin", Practice, "--today", "2026-12-03");

    private string Practice => Path.Combine(folder, "practice");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_new_exercise_has_signs_and_a_condition_of_the_practice_and_can_be_published()
    {
        var answer = Gradus.Run("new", "exercise", "hip-rock", "--in", Practice);
        Assert.Equal(0, answer.Status);
        Assert.StartsWith($"{At("exercises", "hip-rock.md")} is there. ", answer.Output, StringComparison.Ordinal);
        var text = File.ReadAllText(At("exercises", "hip-rock.md"));
        Assert.Contains("\ntitle: Hip rock\n", text, StringComparison.Ordinal);
        Assert.Contains(
            "\nsigns: [warm-muscle, sharp-pain]\nnot-with: [ankle-injury]\n",
            Uncommented(text),
            StringComparison.Ordinal
        );
        Assert.Equal([("exercise-unused", "note")], Findings());

        var programme = At("clients", "perrin", "programme.md");
        File.WriteAllText(
            programme,
            File.ReadAllText(programme).Replace("use: one-leg-turn", "use: hip-rock", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(Findings(), f => f.Level != "note");
    }

    [Theory]
    [InlineData(
        "stop",
        "This practice has no caution whose kind is stop, and an exercise must name one. Write one first: gradus new caution ID."
    )]
    [InlineData(
        "expect",
        "This practice has no caution whose kind is expect, and an exercise must name one. Write one first: gradus new "
            + "caution ID."
    )]
    public void An_exercise_that_would_lack_its_signs_is_not_written(string lacking, string said)
    {
        foreach (var caution in Directory.GetFiles(At("cautions")))
            if (File.ReadAllText(caution).Contains($"\nkind: {lacking}\n", StringComparison.Ordinal))
                File.Delete(caution);
        Refused(said, "exercise", "hip-rock");
    }

    [Fact]
    public void A_new_caution_changes_nobodys_pages()
    {
        Assert.Equal(0, Gradus.Run("new", "caution", "heavy-head", "--in", Practice).Status);
        Assert.Equal([("caution-unused", "note")], Findings());
    }

    [Fact]
    public void The_words_of_a_language_are_a_file_to_fill_in_and_are_written_once()
    {
        var answer = Gradus.Run("new", "words", "fr", "--in", Practice);
        Assert.Equal(
            (
                0,
                $"{At("words", "fr.yaml")} is there. Write behind each key what stands above it, in 'fr'; 'gradus audit' "
                    + "says what is missing, and until then no site is made in it.\n"
            ),
            (answer.Status, answer.Output)
        );
        Assert.All(Findings(), f => Assert.Equal(("word-missing", "error"), f));
        Assert.Equal(2, Gradus.Run("new", "words", "fr", "--in", Practice).Status);
        Assert.Equal(2, Gradus.Run("new", "words", "french", "--in", Practice).Status);
        File.Delete(At("words", "fr.yaml"));

        Assert.Equal(
            $"{At("words", "de.yaml")} is there, with all words of a site in 'de' behind #. Take the # from those that "
                + "you want to say in your own way.\n",
            Gradus.Run("new", "words", "de", "--in", Practice).Output
        );
        Assert.Empty(Findings());
    }

    [Theory]
    [InlineData("de", "de")]
    [InlineData("fr", "en")]
    public void A_new_client_reads_the_coach_s_language_if_there_are_words_for_it(string written, string read)
    {
        File.WriteAllText(
            At("practice.md"),
            File.ReadAllText(At("practice.md")).Replace("\nlanguage: en\n", $"\nlanguage: {written}\n", StringComparison.Ordinal)
        );
        Gradus.Run("new", "client", "ada-wren", "--in", Practice, "--today", "2026-12-03");
        Assert.Contains(
            $"\nlanguage: {read}\n",
            File.ReadAllText(At("clients", "ada-wren", "client.yaml")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_new_client_is_not_guessed_but_asked()
    {
        var answer = Gradus.Run("new", "client", "ada-wren", "--in", Practice, "--today", "2026-12-03");
        Assert.Equal(0, answer.Status);
        Assert.Equal(
            ["client.yaml", "programme.md", "readings.csv"],
            Directory.GetFiles(At("clients", "ada-wren")).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)
        );
        Assert.Contains("Fill in born, stance, agreed, answered and the answers", answer.Output, StringComparison.Ordinal);
        var client = At("clients", "ada-wren", "client.yaml");
        Assert.Contains("\nname: Ada Wren\n", File.ReadAllText(client), StringComparison.Ordinal);
        Assert.Equal(["value-wrong", "value-wrong", "value-wrong", "value-wrong"], Findings().Select(f => f.Rule));

        File.WriteAllText(client, BegunPractice.Told(File.ReadAllText(client)));
        var errors = Findings().Where(f => f.Level == "error").ToArray();
        Assert.NotEmpty(errors);
        Assert.All(errors, e => Assert.Equal("condition-not-asked", e.Rule));

        var site = Path.Combine(folder, "site");
        Assert.Contains(
            "ada-wren: NOT published.\nperrin: 13 pages",
            Gradus.Run("publish", Practice, "--to", site, "--today", "2026-12-03").Output,
            StringComparison.Ordinal
        );
        File.WriteAllText(
            client,
            File.ReadAllText(client)
                .Replace(": not asked", ": no", StringComparison.Ordinal)
                .Replace("#equipment", "equipment", StringComparison.Ordinal)
        );
        BegunPractice.SayWho(Practice);
        Assert.StartsWith(
            "No problems found.\nada-wren: ",
            Gradus.Run("publish", Practice, "--to", site, "--today", "2026-12-03").Output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "start: 2026-12-07\n",
            File.ReadAllText(At("clients", "ada-wren", "programme.md")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_question_that_the_library_needs_is_put_beside_its_answer()
    {
        Gradus.Run("new", "client", "ada-wren", "--in", Practice);
        var lines = File.ReadAllLines(At("clients", "ada-wren", "client.yaml"));
        var asked = lines.Index().Where(l => l.Item.EndsWith(": not asked", StringComparison.Ordinal)).ToArray();
        Assert.Equal(
            Domain.FloorAnswers.Ids.Length
                + File.ReadAllLines(At("conditions.yaml")).Count(l => l.StartsWith("- id:", StringComparison.Ordinal)),
            asked.Length
        );
        Assert.All(asked, l => Assert.Matches(@"^  # .+\?$", lines[l.Index - 1]));
    }

    [Theory]
    [InlineData("sports", "This practice has no sport that can be read, and a client plays one. Write sports/ID.yaml first.")]
    [InlineData(
        "exercises",
        "This practice has no exercise that a programme could begin with. Write one first: gradus new exercise ID."
    )]
    public void A_client_needs_a_sport_and_an_exercise(string lacking, string said)
    {
        Directory.Delete(At(lacking), recursive: true);
        Refused(said, "client", "ada-wren");
    }

    [Theory]
    [InlineData("Hip Rock", "'Hip Rock' cannot be an id. Did you mean 'hip-rock'?")]
    [InlineData("../hip", "'../hip' cannot be an id. Did you mean 'hip'?")]
    [InlineData(
        "2-step",
        "'2-step' cannot be an id. Use small letters, digits and hyphens, a letter first, at most 64 characters."
    )]
    [InlineData("nul", "'nul' cannot be an id. Some systems keep that name for a device. Choose another.")]
    public void An_id_that_cannot_be_is_refused_with_one_that_can(string id, string said)
    {
        foreach (var kind in new[] { "exercise", "caution", "client" })
            Refused(said, kind, id);
    }

    [Fact]
    public void What_is_there_is_not_written_over()
    {
        Refused(
            $"{At("exercises", "calf-lean.md")} is there already, and nothing is written over. Choose another id.",
            "exercise",
            "calf-lean"
        );
        Refused(
            $"{At("cautions", "cramp.md")} is there already, and nothing is written over. Choose another id.",
            "caution",
            "cramp"
        );
        Refused(
            $"{At("clients", "perrin")} is there already, and nothing is written over. Choose another id.",
            "client",
            "perrin"
        );
    }

    [Fact]
    public void A_kind_or_a_practice_that_is_not_there_is_one_line()
    {
        Refused("'new' cannot add 'exercice'. Did you mean 'exercise'?", "exercice", "hip-rock");
        Assert.Equal(
            $"gradus: '{folder}' is no practice: there is no practice.md in it. Name one with --in, or begin one with "
                + "'gradus begin'.\n",
            Gradus.Run("new", "caution", "heavy-head", "--in", folder).Error
        );
        File.WriteAllText(At("practice.md"), "---\nname: nobody\n---\n");
        Refused(
            $"The practice.md in '{Practice}' has mistakes. 'gradus audit' says which; put them right first.",
            "caution",
            "heavy-head"
        );
    }

    private string At(params string[] parts) => Path.Combine([Practice, .. parts]);

    private void Refused(string said, string kind, string id)
    {
        var before = FolderBytes.Of(folder);
        var answer = Gradus.Run("new", kind, id, "--in", Practice);
        Assert.Equal(2, answer.Status);
        Assert.Equal("", answer.Output);
        Assert.Equal($"gradus: {said}\n", answer.Error);
        Assert.Equal(before, FolderBytes.Of(folder));
    }

    private (string Rule, string Level)[] Findings() =>
        [
            .. JsonDocument
                .Parse(Gradus.Run("audit", Practice, "--today", "2026-12-03", "--format", "json").Output)
                .RootElement.GetProperty("findings")
                .EnumerateArray()
                .Select(f => (f.GetProperty("rule").GetString() ?? "", f.GetProperty("level").GetString() ?? "")),
        ];

    private static string Uncommented(string text) => string.Join('\n', text.Split('\n').Where(line => !line.StartsWith('#')));
}
