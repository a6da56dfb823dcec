using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>What a coach may write at the end of any text: the sites are published, or the finding stands at the coach's line.
/// The page is never blamed for what the coach wrote.</summary>
[Trait("Slow", "yes")]
public sealed class MarkdownOnPagesTests
{
    private static readonly DateOnly Today = new(2026, 12, 7);

    private static readonly string[] Constructs =
    [
        "Rest.",
        "Stop.",
        "- Rest.",
        "- Shake it out.",
        "- mat",
        "* Rest.",
        "1. Rest.",
        "1) Rest.",
        "7. Rest.",
        "- one\n- two\n- one",
        "- one\n  - two\n    - three",
        "1. one\n   - two",
        "- one\n\n  more of it",
        "30",
        "3 x 30",
        "30 seconds",
        "10 minutes",
        "- 30 s",
        "**Rest.**",
        "*Rest.*",
        "__Rest.__ and _so on_",
        "***Rest.***",
        "Rest, **well *and* long**.",
        "A line\nand its next",
        "A line  \nand a break",
        "A line\\\nand a break",
        "Press \\* and \\_ and \\#.",
        "Fish &amp; chips, 5 &lt; 7",
        "5 < 7 & 7 > 5",
        "'Rest', \"rest\" and rest – rest … rest",
        "an\u00adkle rest",
        "[our pages](https://example.org/a?b=1&c=2)",
        "<https://example.org/>",
        "[write](mailto:coach@example.org)",
        "[ring](tel:+441632960001)",
        "[**bold**, and *more*](https://example.org/)",
        "[the club][1]\n\n[1]: https://example.org/",
        "https://example.org/ by itself",
        "`code` in a line",
        "    code in a block",
        "```\ncode\n```",
        "> Somebody said so.",
        "---",
        "# A heading",
        "## Set up",
        "### Do",
        "Heading\n=======",
        "| a | b |\n|---|---|\n| 1 | 2 |",
        "~~struck~~",
        "A note.[^1]\n\n[^1]: Here.",
        "- [ ] a box\n- [x] another",
        "<b>bold</b>",
        "<!-- a comment -->",
        "Ankle\u200b rest",
        "{hold}",
        "{nothing}",
        "Élan, naïve, œuvre, 力, سلام",
        "A smile 😀 and a family 👨‍👩‍👧",
        "Rest" + string.Concat(Enumerable.Repeat(" and rest", 60)) + ".",
    ];

    private static readonly (string Name, Series<KeyValuePair<string, byte[]>> Files)[] Practices =
    [
        ("little", LittlePractice.Files.Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(f.Value))).ToSeries()),
        ("demonstration", Repository.Files("content", "").Select(Bytes).ToSeries()),
    ];

    /// <summary>One of each kind of file that ends in a coach's text.</summary>
    private static readonly (string Practice, string[] Files)[] Ends =
    [
        ("little", ["exercises/calf-press.md", "cautions/pinch.md", "practice.md"]),
        ("little", ["clients/tess/programme.md"]),
        ("demonstration", ["exercises/wall-calf-lean.md", "cautions/cramp.md", "practice.md", "clients/hedley/programme.md"]),
    ];

    public static TheoryData<string, string> Files => new(Ends.SelectMany(e => e.Files.Select(f => (e.Practice, f))));

    [Theory]
    [MemberData(nameof(Files))]
    public void Whatever_is_written_is_published_or_found_where_it_stands(string practice, string file)
    {
        var files = Practices.Single(p => p.Name == practice).Files;
        var text = Encoding.UTF8.GetString(files.Single(f => f.Key == file).Value);
        var at = Files.ToList().FindIndex(f => f.Data == (practice, file));
        var said = Constructs.Where((_, i) => LongProof.Whole || i % (practice == "little" ? 4 : 10) == at % 4);
        Assert.Equal("", string.Join('\n', said.Select(s => Wrong(files, file, text, s)).Where(w => w.Length > 0)));
    }

    private static string Wrong(Series<KeyValuePair<string, byte[]>> files, string file, string text, string added)
    {
        var begin = text.TrimEnd('\n') + "\n\n";
        var changed = files.Select(f => f.Key == file ? new(f.Key, Encoding.UTF8.GetBytes(begin + added + "\n")) : f);
        var findings = new Findings();
        var reading = PracticeReader.Read(SourceFolder.Of(changed), findings);
        var practice = Assert.IsType<Practice>(reading.Practice);
        var trainings = Planned.Trainings(practice);
        var whole = findings.All(f => f.Level != Level.Error);
        findings.AddRange(RuleBook.Check(practice, trainings, Today, whole).ToSeries());
        var line = begin.Count(c => c == '\n') + 1;
        var errors = findings.Where(f => f.Level == Level.Error).ToArray();
        if (errors.Length > 0)
            return string.Join('\n', errors.Where(e => e.At.File != file || e.At.Line < line).Select(e => Said(added, e)));
        foreach (var client in practice.Clients.Take(practice.Clients.Count > 2 ? 1 : 2))
        {
            var plan = Planned.For(practice, client);
            var site = SiteRenderer.Render(plan, ThemeFolder.Plain(), findings);
            if (site is null)
                return $"{added}: not rendered";
            if (RuleBook.Audit(plan, site, []).FirstOrDefault(f => f.Level == Level.Error) is { } blamed)
                return Said(added, blamed);
        }

        return "";
    }

    private static string Said(string added, Finding finding) => $"'{added}': {finding.At} {finding.Rule} {finding.Message}";

    private static KeyValuePair<string, byte[]> Bytes(string file) =>
        KeyValuePair.Create(Path.GetRelativePath(Repository.Path("content"), file).Replace('\\', '/'), File.ReadAllBytes(file));
}
