using System.Text;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

/// <summary><c>practice-format.md</c> held against the readers: its examples are read, and its tables have the keys that the
/// readers know, no more and no fewer.</summary>
public sealed partial class PracticeFormatPageTests
{
    /// <summary>No key of any file, and like none.</summary>
    private const string Stray = "zzzzzzzz";

    private static readonly string Page = File.ReadAllText(Repository.Path("src", "Reading", "Practices", "practice-format.md"));

    private static readonly SourceFolder Demonstration = SourceFolder.Open(Repository.Path("content"));

    /// <summary>Groups whose keys are the practice's own words, two that only the motions that come with Gradus have, and
    /// those of records that Gradus alone writes.</summary>
    private static readonly string[] WithoutKeysOfOurs =
    [
        "a catalogue",
        "a caution of an edition",
        "a glossary",
        "a part of an edition",
        "a phrase",
        "a pause of an edition",
        "a session of an edition",
        "an edition",
        "an error",
        "an exercise in an edition",
        "an exercise of an edition",
        "a reference value",
        "by-week",
        "days",
        "emergency",
        "languages",
        "needs",
        "plural",
        "roles",
        "sports",
        "what weeks ask",
    ];

    [GeneratedRegex(
        @"(?:Fields\.Of|OfHeader|Groups?)\((?:[^()""]|\([^()]*\)|""[a-z-]+"", )*""([a-z -]+)""",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex GroupName();

    [GeneratedRegex("^'zzzzzzzz' is no key of (.+)\\.$", RegexOptions.CultureInvariant)]
    private static partial Regex StrayFound();

    public static TheoryData<string> Paths => new(Examples.Select(e => PathOf(e)));

    private static IEnumerable<FencedBlock> Examples => FencedBlock.On(Page).Where(b => b.Name.Contains(' '));

    [Theory]
    [MemberData(nameof(Paths))]
    public void Nothing_is_found_in_an_example(string path) =>
        Assert.Empty(
            Findings(path, ExampleAt(path)).Where(f => f.Rule != Faults.WordMissing).Select(f => $"{f.At} {f.Message} {f.Help}")
        );

    [Fact]
    public void An_example_with_a_key_that_nobody_reads_would_be_found() =>
        Assert.Contains(Findings("sports/epee.yaml", ExampleAt("sports/epee.yaml") + "\nrole: x"), f =>
            f.Rule == Faults.KeyUnknown
        );

    [Fact]
    public void The_tables_have_every_key_that_the_readers_know_and_no_other()
    {
        var known = Paths
            .Select(row => row.Data)
            .Where(path => !path.EndsWith(".csv", StringComparison.Ordinal))
            .SelectMany(path => Findings(path, WithStrayKeys(ExampleAt(path))))
            .Select(f => (Match: StrayFound().Match(f.Message), f.Help))
            .Where(f => f.Match.Success)
            .SelectMany(f => KeysIn(f.Help).Select(key => $"{f.Match.Groups[1].Value}: {key}"));
        Assert.Equal(
            known.Distinct().Order(StringComparer.Ordinal),
            TableRows().Select(r => $"{r.Group}: {r.Key}").Order(StringComparer.Ordinal)
        );
    }

    /// <summary>Each group that a reader can name in a message.</summary>
    [Fact]
    public void Every_group_of_keys_has_its_table()
    {
        var named = Repository
            .Files("src/Reading/Practices", ".cs")
            .SelectMany(file => GroupName().Matches(File.ReadAllText(file)))
            .Select(m => m.Groups[1].Value)
            .Distinct()
            .Except(WithoutKeysOfOurs);
        Assert.Equal(
            named.Order(StringComparer.Ordinal),
            TableRows().Select(r => r.Group).Distinct().Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [InlineData("practice.md", "the practice")]
    [InlineData("sports/epee.yaml", "a sport")]
    [InlineData("cautions/pinch-at-the-front.md", "a caution")]
    [InlineData("exercises/half-kneeling-ankle-rock.md", "an exercise")]
    [InlineData("cautions/pinch-at-the-front.de.md", "a translation")]
    [InlineData("clients/rufus/client.yaml", "a client")]
    [InlineData("clients/rufus/programme.md", "a programme")]
    public void A_star_stands_at_each_key_that_must_be_there(string path, string group)
    {
        var header = path.EndsWith(".md", StringComparison.Ordinal) ? $"---\n{Stray}: 1\n---\nText." : $"{Stray}: 1";
        var missing = Findings(path, header).Where(f => f.Rule == Faults.KeyMissing).Select(f => f.Message.Split('\'')[1]);
        Assert.Equal(
            missing.Order(StringComparer.Ordinal),
            TableRows().Where(r => r.Group == group && r.IsNeeded).Select(r => r.Key).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void The_usual_settings_are_those_of_the_page()
    {
        var rows = TableRows().Where(r => r.Group == "settings").Select(r => $"{r.Key}: {r.Second}");
        var card = ExampleAt("practice.md");
        var changed = Regex.Replace(card, "settings: .*", $"settings: {{ {string.Join(", ", rows)} }}");
        var read = PracticeReader.Read(With("practice.md", changed), []).Practice;
        Assert.Equal(PracticeSettings.Default, Assert.IsType<Practice>(read).Card.Settings);
    }

    [Fact]
    public void What_everybody_is_asked_is_listed_in_its_order()
    {
        var read = Assert.IsType<Practice>(PracticeReader.Read(Demonstration, []).Practice);
        var ids = string.Join(", ", read.Conditions.Where(c => c.IsAlwaysAsked).Select(c => c.Id.Text));
        Assert.Contains($": {ids}.", Page.Replace('\n', ' '), StringComparison.Ordinal);
    }

    /// <summary>What the example of one that is followed follows.</summary>
    private static IEnumerable<KeyValuePair<string, byte[]>> Shared =>
        Examples
            .Where(e => PathOf(e).StartsWith("programmes/", StringComparison.Ordinal))
            .Select(e => KeyValuePair.Create(PathOf(e), Encoding.UTF8.GetBytes(e.Text)));

    private static string PathOf(FencedBlock block) => block.Name.Split(' ')[1];

    private static string ExampleAt(string path) =>
        Examples.FirstOrDefault(e => PathOf(e) == path)?.Text ?? Encoding.UTF8.GetString(Demonstration.Read(path));

    private static SourceFolder With(string path, string text) =>
        SourceFolder.Of(
            Demonstration
                .Paths.Where(p => p != path)
                .Select(p => KeyValuePair.Create(p, Demonstration.Read(p)))
                .Concat(Shared.Where(p => p.Key != path))
                .Append(KeyValuePair.Create("exercises/ankle-rock-start.jpg", PictureTests.Jpeg))
                .Append(KeyValuePair.Create("exercises/Ankle rock (end).jpg", PictureTests.Jpeg))
                .Append(KeyValuePair.Create(path, Encoding.UTF8.GetBytes(text)))
        );

    /// <summary>What reading says of one file, which stands in the demonstration practice instead of its own.</summary>
    private static IEnumerable<Finding> Findings(string path, string text)
    {
        var findings = new Findings();
        PracticeReader.Read(With(path, text), findings);
        return findings.InOrder().Where(f => f.At.File == path);
    }

    /// <summary>The file with one key more at the head of each group.</summary>
    private static string WithStrayKeys(string text)
    {
        var (lines, column, inHeader) = (new List<string>(), -1, true);
        foreach (var line in text.Split('\n'))
        {
            if (line == "---")
                inHeader = lines.Count == 0;
            var key = Regex.Match(line, "^((?: |- )*)([^ #{\"'-][^:]*):( |$)");
            if (line == "---" || !inHeader || !key.Success)
            {
                lines.Add(line);
                continue;
            }

            var (before, opens) = (key.Groups[1].Value, line.Replace("{ ", $"{{ {Stray}: 1, ", StringComparison.Ordinal));
            if (before.Length > column || before.Contains('-'))
            {
                lines.Add($"{before}{Stray}: 1");
                opens = new string(' ', before.Length) + opens[before.Length..];
            }

            column = before.Length;
            lines.Add(opens);
        }

        return string.Join('\n', lines);
    }

    private static string[] KeysIn(string help) =>
        help.Split("The keys here are: ") is [_, var keys] ? keys.TrimEnd('.').Split(", ") : [];

    /// <summary>The rows of the tables that follow a line that begins with "Keys of", or ends a paragraph with it.</summary>
    private static IEnumerable<Row> TableRows()
    {
        var group = "";
        foreach (var line in Page.Split('\n'))
        {
            if (Regex.Match(line, "Keys of ([a-z -]+)(,.*:)?$") is { Success: true } named)
                group = named.Groups[1].Value;
            else if (line.StartsWith('#') || line.StartsWith("```", StringComparison.Ordinal))
                group = "";
            if (group.Length > 0 && Regex.Match(line, "^\\| `([a-z-]+)`( \\*)? \\| ([^|]*) \\|") is { Success: true } row)
                yield return new(group, row.Groups[1].Value, row.Groups[2].Success, row.Groups[3].Value);
        }
    }

    private sealed record Row(string Group, string Key, bool IsNeeded, string Second);
}
