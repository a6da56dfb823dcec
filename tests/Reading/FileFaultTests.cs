using System.Text;
using Gradus.Domain;

namespace Gradus.Tests.Reading;

public sealed class FileFaultTests
{
    private const string Path = "cautions/sharp-stab.md";

    private static readonly LittlePractice Golden = LittlePractice.Golden;

    [Fact]
    public void A_byte_order_mark_is_no_mistake() => Assert.Empty(Golden.With(Path, "\uFEFF" + Golden[Path]).Findings());

    [Fact]
    public void Every_end_of_line_reads_the_same()
    {
        var windows = Golden.Files.Aggregate(Golden, (p, f) =>
            p.With(f.Key, Golden[f.Key].Replace("\n", "\r\n", StringComparison.Ordinal))
        );
        var old = Golden.Files.Aggregate(Golden, (p, f) => p.With(f.Key, Golden[f.Key].Replace('\n', '\r')));
        Assert.Equal(Golden.Read().Clients, windows.Read().Clients);
        Assert.Equal(Golden.Read().Exercises, windows.Read().Exercises);
        Assert.Equal(Golden.Read().Exercises, old.Read().Exercises);
    }

    [Fact]
    public void A_file_that_is_no_text_is_said_as_a_whole()
    {
        Says(
            Golden.With(Path, "---\ntitle: A\0B\n---\n"),
            "This file is no text: it holds control characters.",
            "Save it again as plain text."
        );
        Says(
            Golden.With(Path, "---\ntitle: A\u001bB\n---\n"),
            "This file is no text: it holds control characters.",
            "Save it again as plain text."
        );
        Says(
            Golden.With(Path, Encoding.Latin1.GetBytes("---\ntitle: Épée\n---\n")),
            "This file is not in UTF-8.",
            "Save it again with the encoding UTF-8."
        );
        Says(
            Golden.With(Path, Encoding.Unicode.GetBytes(Golden[Path])),
            "This file is no text: it holds control characters.",
            "Save it again as plain text."
        );
    }

    [Fact]
    public void A_file_may_have_256_KiB_and_no_more()
    {
        const int Limit = 256 * 1024;
        var full = Golden[Path] + new string('x', Limit - Encoding.UTF8.GetByteCount(Golden[Path]));
        Assert.Empty(Golden.With(Path, full).Findings());
        Says(
            Golden.With(Path, full + "x"),
            "This file has 257 KiB; the most that is read is 256 KiB.",
            "Shorten it, or take out what was pasted in by mistake."
        );
    }

    [Fact]
    public void A_line_separator_that_no_editor_counts_does_not_shift_the_lines()
    {
        var wrong = Golden.With(Path, "---\ntitle: A\u2028sharp\u2029stab\nkind: halt\n---\nEnd it.\n");
        Assert.Equal(Path + ":3:7", Assert.Single(wrong.Findings()).At.ToString());
    }

    [Theory]
    [InlineData("practice.md")]
    [InlineData("conditions.yaml")]
    [InlineData("clients/ansel/client.yaml")]
    public void A_file_that_must_be_there_is_named(string path)
    {
        var finding = Assert.Single(Golden.Without(path).Findings());
        Assert.Equal((path, "file-missing", $"There is no {path}."), (finding.At.ToString(), finding.Rule.Text, finding.Message));
    }

    [Theory]
    [InlineData("exercises/Calf.md", "exercises/Calf.md", "'Calf'")]
    [InlineData("exercises/calf sway.md", "exercises/calf sway.md", "'calf sway'")]
    [InlineData("exercises/1st.md", "exercises/1st.md", "'1st'")]
    [InlineData("exercises/con.md", "exercises/con.md", "'con'")]
    [InlineData("cautions/lpt9.md", "cautions/lpt9.md", "'lpt9'")]
    [InlineData("sports/épée.yaml", "sports/épée.yaml", "'épée'")]
    [InlineData("clients/Ansel/client.yaml", "clients/Ansel", "'Ansel'")]
    [InlineData("clients/nul/client.yaml", "clients/nul", "'nul'")]
    [InlineData("exercises/a\nb.md", "exercises/a\nb.md", "'a b'")]
    public void A_name_that_cannot_be_an_id_is_said_and_not_read(string path, string place, string quoted)
    {
        var finding = Assert.Single(Golden.With(path, "").Findings());
        Assert.Equal(
            (place, "file-name-wrong", quoted + " cannot be a name here, so this was not read."),
            (finding.At.ToString(), finding.Rule.Text, finding.Message)
        );
        Assert.Equal(
            "Rename it: small letters, digits and hyphens, a letter first, at most 64 characters; no device name, as con or nul.",
            finding.Help
        );
    }

    [Fact]
    public void An_id_has_at_most_64_characters()
    {
        Assert.DoesNotContain(Golden.With($"exercises/{new string('a', 64)}.md", "").Findings(), f =>
            f.Rule.Text == "file-name-wrong"
        );
        Assert.Contains(Golden.With($"exercises/{new string('a', 65)}.md", "").Findings(), f => f.Rule.Text == "file-name-wrong");
    }

    [Fact]
    public void A_hundred_thousand_brackets_are_refused_at_once()
    {
        var finding = Assert.Single(Golden.With("clients/ansel/client.yaml", new string('[', 100_000)).Findings());
        Assert.Equal(
            ("This is nested more than 64 deep.", "clients/ansel/client.yaml:1:66"),
            (finding.Message, finding.At.ToString())
        );
    }

    private static void Says(LittlePractice practice, string message, string help)
    {
        var finding = practice.Findings()[0];
        Assert.Equal(
            (Path, "file-unreadable", Level.Error, message, help),
            (finding.At.ToString(), finding.Rule.Text, finding.Level, finding.Message, finding.Help)
        );
    }
}
