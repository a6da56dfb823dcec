using System.Text;
using Gradus.Domain;

namespace Gradus.Tests.Reading;

/// <summary>Markdown, placeholders and headings as coaches type them: shown properly, or found at their line with what to write
/// instead. A row is what is written (<c>⏎</c> ends a line), then each finding as line, rule, marked text and remedy; <c>fine</c>
/// where nothing is found.</summary>
public sealed class CoachMarkdownTests
{
    private const string Exercise = "exercises/calf-brace.md";
    private const string Passage = "Push for {press}.";

    private const string Part = "## Do\nPush for {press}.";

    public static TheoryData<string, string> Rows =>
        new(Table("coach-markdown").Select(r => (Passage, r)).Concat(Table("coach-headings").Select(r => (Part, r))));

    private static string[] Table(string name) =>
        File.ReadAllText(House.Repository.Path("tests", "Reading", name + ".txt")).TrimEnd('\n').Split("\n\n");

    [Theory, MemberData(nameof(Rows))]
    public void It_is_shown_or_found_with_what_to_write_instead(string passage, string row)
    {
        var written = row.Split('\n')[0];
        Assert.Equal(row, written + "\n" + Said(Exercise, passage, written.Replace('⏎', '\n')));
    }

    /// <summary>A caution, a letter and what practice.md says have no dose, so only the number to call is filled in.</summary>
    [Theory]
    [InlineData("cautions/sharp-stab.md", "End the exercise.", "Call {emergency}.", "fine")]
    [InlineData(
        "cautions/sharp-stab.md",
        "End the exercise.",
        "Stay for {hold}.",
        "5 brace-in-text «{hold}» Say it without braces: only an exercise's own text is filled in from the dose."
    )]
    [InlineData("cautions/sharp-stab.md", "End the exercise.", "## Setup⏎End it.", "fine")]
    [InlineData("clients/ansel/programme.md", "Ansel, keep", "Dear {name}, keep", "fine")]
    [InlineData(
        "clients/ansel/programme.md",
        "Ansel, keep",
        "For {hold} keep",
        "33 brace-in-text «{hold}» Say it without braces: only an exercise's own text is filled in from the dose."
    )]
    [InlineData(
        "practice.md",
        "These programmes are exercise advice.",
        "They are ~~no~~ advice.",
        "20 markdown-not-known «~~no~~» Take out what no longer counts."
    )]
    public void A_text_without_a_dose_is_held_to_the_same(string file, string passage, string written, string said) =>
        Assert.Equal(said, Said(file, passage, written.Replace('⏎', '\n')));

    /// <summary>A title, a question or a piece of equipment is shown as it is written.</summary>
    [Theory]
    [InlineData(Exercise, "title: ", "title: \"{side} ")]
    public void A_key_that_is_shown_holds_no_brace(string file, string passage, string begin)
    {
        var line = LittlePractice.Golden[file].Split('\n').Single(l => l.StartsWith(passage, StringComparison.Ordinal));
        var finding = Assert.Single(LittlePractice.Golden.Edit(file, line, begin + line[passage.Length..] + "\"").Findings());
        Assert.Equal("brace-in-text", finding.Rule.Text);
        Assert.Equal(2, finding.At.Line);
    }

    /// <summary>What is done with a load stands on the page as the coach wrote it.</summary>
    [Fact]
    public void A_load_holds_no_brace_and_a_role_is_not_named_with_one()
    {
        var load = LittlePractice.Golden.Edit(Exercise, "rest 20 s, each side", "rest 20 s, each side, load a {heavy} bag");
        Assert.Equal(["brace-in-text"], load.Findings().Select(f => f.Rule.Text));
        var role = LittlePractice.Golden.Edit("sports/epee.yaml", "  free arm: left", "  \"free {arm}\": left");
        Assert.Contains(role.Findings(), f => f.Message == "'free {arm}' cannot be the name of a role.");
    }

    private static string Said(string file, string passage, string written)
    {
        var practice = LittlePractice.Golden.Edit(file, passage, written);
        var said = new StringBuilder();
        foreach (var finding in practice.Findings())
        {
            Assert.Equal(file, finding.At.File);
            Assert.Equal(Level.Error, finding.Level);
            var line = practice[file].Split('\n')[finding.At.Line - 1];
            said.Append(said.Length > 0 ? "\n" : "")
                .Append(finding.At.Line)
                .Append(' ')
                .Append(finding.Rule)
                .Append(" «")
                .Append(line.AsSpan(finding.At.Column - 1, finding.Length))
                .Append("» ")
                .Append(finding.Help);
        }

        return said.Length == 0 ? "fine" : said.ToString();
    }
}
