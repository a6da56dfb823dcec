using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

[Trait("Slow", "yes")]
public sealed class HostileTextTests
{
    private static readonly string[] Hostile =
    [
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "'; drop table clients; --",
        "{{ 7 * 7 }}",
        "{hold}",
        "${HOME}",
        "%s%n",
        "../../etc/passwd",
        "javascript:alert(1)",
        "\u202Etxt.exe",
        "e\u0301",
        "\U0001F93A",
        "\u00A0",
        "٣٣",
        "0",
        "-1",
        "1e400",
        "NaN",
        "null",
        "true",
        "~",
        "=1+1",
        "@me",
        "`x`",
        "*",
        "&",
        "!",
        "|",
        ">",
        "%",
        "[",
        "]",
        "{",
        "}",
        "- a",
        "a: b",
        "# a",
        " #a",
        "\\",
        "\\0",
        "\t",
        new('9', 400),
        new('[', 400),
        new('>', 400),
        new('a', 5000),
        string.Concat(Enumerable.Repeat("*a ", 400)),
        string.Concat(Enumerable.Repeat("![a](", 3000)),
        string.Concat(Enumerable.Repeat("- ", 400)),
    ];

    /// <summary>Every key of every kind of file, by turns bare and in quotation marks.</summary>
    [Fact]
    public void Whatever_stands_in_a_value_is_read_or_said()
    {
        var all = Lines()
            .SelectMany((line, i) => Hostile.Select((text, k) => (line.Path, line.Line, Text: text, Bare: (i + k) % 2 == 0)));
        foreach (var (path, line, text, bare) in LongProof.Cases(all))
        {
            var quoted =
                "\""
                + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)
                + "\"";
            Survives(path, line, line[..(line.IndexOf(": ", StringComparison.Ordinal) + 2)] + (bare ? text : quoted));
        }
    }

    [Fact]
    public void Whatever_stands_in_a_text_is_read_or_said()
    {
        (string Path, string Passage)[] places =
        [
            ("exercises/calf-brace.md", "Push for {press}."),
            ("cautions/sharp-stab.md", "End the exercise."),
            ("practice.md", "They do not"),
            ("clients/ansel/programme.md", "Ansel, keep"),
        ];

        // In tests/run every text stands in one of the places, and every place has each kind of text.
        foreach (var (text, n) in Hostile.Select((text, n) => (text, n)))
        foreach (var (path, passage) in LongProof.Whole ? places : [places[n % places.Length]])
            Survives(path, passage, text);
    }

    [Theory]
    [InlineData("lists", "- ")]
    [InlineData("quotes", "> ")]
    [InlineData("emphasis", "*a ")]
    public void Text_that_is_nested_without_end_is_refused(string _, string piece)
    {
        var findings = LittlePractice
            .Golden.Edit("exercises/calf-brace.md", "Push for {press}.", string.Concat(Enumerable.Repeat(piece, 20_000)))
            .Findings();
        Assert.All(findings, f =>
            Assert.Equal(
                ("exercises/calf-brace.md:10:1", "Lists, quotes or emphasis are nested too deep in this text."),
                (f.At.ToString(), f.Message)
            )
        );
    }

    [Fact]
    public void Text_with_thousands_of_brackets_is_refused_before_it_takes_minutes()
    {
        var finding = Assert.Single(
            LittlePractice
                .Golden.Edit("exercises/calf-brace.md", "Push for {press}.", string.Concat(Enumerable.Repeat("![a](", 40_000)))
                .Findings()
        );
        Assert.Equal(
            ("exercises/calf-brace.md:10:1", "This text has more than 2,000 square brackets."),
            (finding.At.ToString(), finding.Message)
        );
    }

    [Fact]
    public void A_character_that_nobody_can_see_does_not_come_through_as_an_entity()
    {
        var practice = LittlePractice
            .Golden.Edit("exercises/calf-brace.md", "Push for {press}.", "Push&#1; for&#0;ever &amp; a day.")
            .Read();
        Assert.Equal(["Push\uFFFD for\uFFFDever & a day."], practice.Find(new ExerciseId("calf-brace"))?.Text.Do.Lines());
    }

    /// <summary>One line for each key; the exercises and cautions are alike, so one of each stands for all.</summary>
    private static IEnumerable<(string Path, string Line)> Lines() =>
        from path in new[]
        {
            "practice.md",
            "conditions.yaml",
            "sports/epee.yaml",
            "cautions/dull-ache.md",
            "exercises/calf-sway.md",
            "clients/ansel/client.yaml",
            "clients/ansel/programme.md",
        }
        from line in LittlePractice
            .Golden[path]
            .Split('\n')
            .Where(l => l.Contains(": ", StringComparison.Ordinal))
            .DistinctBy(l => l.TrimStart(' ', '-').Split(':')[0])
        select (path, line);

    private static void Survives(string path, string passage, string replacement)
    {
        var text = LittlePractice.Golden[path];
        var at = text.IndexOf(passage, StringComparison.Ordinal);
        var findings = new Findings();
        var practice = PracticeReader
            .Read(LittlePractice.Golden.With(path, text[..at] + replacement + text[(at + passage.Length)..]).Folder, findings)
            .Practice;
        Assert.All(findings, f => Assert.InRange(f.Message.Length, 1, 300));
        if (practice is null)
            return;
        findings.AddRange(RuleBook.Check(practice, Planned.Trainings(practice), new(2027, 1, 4)));
        foreach (var client in practice.Clients.Where(c => !findings.Block(c.Id, Reach.Of(practice))))
            Assert.NotEmpty(Planned.For(practice, client).Sessions);
    }
}
