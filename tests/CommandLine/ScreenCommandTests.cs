using System.Text.Json;
using System.Text.RegularExpressions;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class ScreenCommandTests
{
    private const string Today = "2026-12-07";

    private static readonly string Content = Repository.Path("content");

    private static readonly JsonElement Json = JsonDocument
        .Parse(Gradus.Run("screen", Content, "--format", "json", "--today", Today).Output)
        .RootElement;

    [Fact]
    public void A_client_sees_what_is_allowed_forbidden_and_limited_and_each_line_points_to_the_answer_and_the_exercise()
    {
        var (status, output, error) = Gradus.Run("screen", Content, "--client", "nuala", "--today", Today);
        Assert.Equal((0, ""), (status, error));
        Assert.StartsWith(
            "Nuala Brannock: 19 allowed, 4 limited, 3 forbidden\n  answered 2026-11-19, valid until 2027-05-18\n",
            output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "  limited    Table wrist lean, on the left: not done with wrist pain when you grip or carry; answered yes, "
                + "left; clients/nuala/client.yaml:45:15, exercises/table-wrist-lean.md:10:12\n",
            output,
            StringComparison.Ordinal
        );
        Assert.Contains("  allowed    Wall calf lean; exercises/wall-calf-lean.md\n", output, StringComparison.Ordinal);
    }

    /// <summary>What stands at a place that is pointed to is the condition: as the key of an answer or a clearance, and as a name
    /// in the exercise.</summary>
    [Fact]
    public void Every_place_is_where_the_condition_stands()
    {
        var reasons = Json.GetProperty("clients")
            .EnumerateArray()
            .SelectMany(c => c.GetProperty("exercises").EnumerateArray())
            .SelectMany(e => e.GetProperty("reasons").EnumerateArray())
            .ToArray();
        Assert.Equal(
            ["beyond-limit", "cleared", "forbidden", "loaded", "not-cleared"],
            reasons.Select(r => r.GetProperty("kind").GetString()).Distinct().Order(StringComparer.Ordinal)
        );
        Assert.All(reasons.Where(r => r.GetProperty("condition").GetString() != "sixty-five-or-older"), r =>
            Assert.Contains(
                r.GetProperty("condition").GetString()!,
                Line(r.GetProperty("answer").GetString()!),
                StringComparison.Ordinal
            )
        );
        Assert.All(reasons.Where(r => r.GetProperty("at").GetString()!.Contains(':', StringComparison.Ordinal)), r =>
            Assert.StartsWith(
                r.GetProperty("condition").GetString()!,
                Behind(r.GetProperty("at").GetString()!),
                StringComparison.Ordinal
            )
        );
    }

    /// <summary>The table against the headers themselves, read here line by line.</summary>
    [Fact]
    public void The_table_is_what_the_headers_say()
    {
        var expected = new SortedSet<string>(StringComparer.Ordinal);
        var sided = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["ankle-injury"] = "ankle",
            ["shoulder-injury"] = "shoulder",
            ["wrist-pain"] = "wrist",
            ["sore-elbow"] = "elbow",
        };
        foreach (var file in Directory.GetFiles(Path.Combine(Content, "exercises")))
        {
            var (id, text) = (Path.GetFileNameWithoutExtension(file), File.ReadAllText(file));
            string[] notWith = List(text, "not-with"),
                clearFirst = List(text, "clear-first");
            foreach (var condition in notWith)
                expected.Add($"{id} {condition} not-with");
            foreach (var condition in clearFirst)
                expected.Add($"{id} {condition} clear-first");
            string[] loads =
            [
                .. List(text, "loads").Select(l => l.Replace("other ", "", StringComparison.Ordinal)),
                Regex.Match(text, @"(?m)^trains: (\w+)").Groups[1].Value,
                .. text.Contains("\nposition: hands-and-knees\n", StringComparison.Ordinal) ? Arm : [],
                .. List(text, "properties").Contains("weight-on-hands") ? Arm : [],
                .. Holds(text) ? Arm[1..] : [],
                .. text.Contains("\nposition: split-stance\n", StringComparison.Ordinal) ? ["ankle"] : Array.Empty<string>(),
                .. List(text, "properties").Contains("sits-on-heels") ? ["ankle"] : Array.Empty<string>(),
            ];
            foreach (
                var (condition, where) in sided.Where(s => loads.Contains(s.Value) && !notWith.Concat(clearFirst).Contains(s.Key))
            )
                expected.Add($"{id} {condition} loads");
        }

        string[] shown =
        [
            .. Json.GetProperty("matrix")
                .EnumerateArray()
                .Select(m => $"{m.GetProperty("exercise")} {m.GetProperty("condition")} {m.GetProperty("bearing")}")
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(expected, shown.Where(s => !FollowsFromWork(s) || expected.Contains(s)));

        // What no header says follows from the work: whoever has a fever waits, and a wrist that goes to its end matters.
        Assert.Contains("wrist-rock fever clear-first", shown);
        Assert.Contains("wrist-rock very-mobile-joints clear-first", shown);
        Assert.DoesNotContain("slow-breathing very-mobile-joints clear-first", shown);
        Assert.Contains(expected, e => e.EndsWith(" loads", StringComparison.Ordinal));
    }

    /// <summary>A blocked client is the one whom a coach wants to see; what cannot be read is said.</summary>
    [Fact]
    public void A_client_whom_an_error_blocks_is_shown_and_one_who_cannot_be_read_is_named()
    {
        using var folder = CopyWith(
            (file, text) =>
                text.Replace(
                    file.Contains("nuala", StringComparison.Ordinal) ? "  hernia: no\n" : "stance: left\n",
                    "",
                    StringComparison.Ordinal
                )
        );
        var (status, output, error) = Gradus.Run("screen", folder.Root, "--today", Today);
        Assert.Equal((1, $"gradus: piers, rufus cannot be read; 'gradus audit {folder.Root}' says why.\n"), (status, error));
        Assert.Contains("Nuala Brannock: 0 allowed, 0 limited, 26 forbidden\n", output, StringComparison.Ordinal);
        Assert.Contains(
            "  forbidden  Wall calf lean: not asked about a hernia; exercises/wall-calf-lean.md\n",
            output,
            StringComparison.Ordinal
        );
    }

    /// <summary>Answers are good for 180 days: these until 17 December, in the first week of the programme.</summary>
    [Theory]
    [InlineData("2026-12-07", "19 allowed, 4 limited, 3 forbidden", "")]
    [InlineData("2026-12-17", "19 allowed, 4 limited, 3 forbidden", "")]
    [InlineData(
        "2026-12-18",
        "0 allowed, 0 limited, 26 forbidden",
        "Nuala Brannock answered on 2026-06-20, and this practice takes answers to be good for 180 days: since 2026-12-18 the "
            + "programme, which goes on until "
    )]
    public void An_old_answer_stops_everything_from_the_day_after_its_last(string today, string counts, string stopped)
    {
        using var folder = CopyWith((_, text) => Changed(text, "answered: 2026-11-19", "answered: 2026-06-20"));
        Told(folder.Root, today, counts, stopped);
    }

    [Fact]
    public void An_answer_that_is_still_to_come_stops_everything() =>
        Told(
            Content,
            "2026-11-18",
            "0 allowed, 0 limited, 26 forbidden",
            "Nuala Brannock is said to have answered on 2026-11-19, which is still to come. "
        );

    [Theory]
    [InlineData(
        "born: 1998",
        "born: 2010",
        "Nuala Brannock is under 18 when the programme begins, and no parent or guardian has agreed to it. "
    )]
    [InlineData(
        "agreed: { training: 2026-11-19 }",
        "agreed: { training: 2026-12-10 }",
        "A day under 'agreed' is still to come. "
    )]
    [InlineData(
        "agreed: { training: 2026-11-19 }",
        "agreed: { training: 2026-12-15 }",
        "The programme begins on 2026-12-14, before Nuala Brannock agreed to it. "
    )]
    public void An_agreement_that_is_missing_or_too_late_stops_everything(string said, string instead, string stopped)
    {
        using var folder = CopyWith((_, text) => Changed(text, said, instead));
        Told(folder.Root, Today, "0 allowed, 0 limited, 26 forbidden", stopped);
    }

    private static void Told(string folder, string today, string counts, string stopped)
    {
        var (status, output, error) = Gradus.Run("screen", folder, "--client", "nuala", "--today", today);
        Assert.Equal((0, ""), (status, error));
        Assert.StartsWith($"Nuala Brannock: {counts}\n", output, StringComparison.Ordinal);
        if (stopped.Length == 0)
            Assert.DoesNotContain("  nothing    ", output, StringComparison.Ordinal);
        else
            Assert.Contains($"  nothing    {stopped}", output, StringComparison.Ordinal);
    }

    private static string Changed(string text, string said, string instead) =>
        text.StartsWith("name: Nuala Brannock\n", StringComparison.Ordinal)
            ? text.Replace(said, instead, StringComparison.Ordinal)
            : text;

    private static HandingOver.TemporaryFolder CopyWith(Func<string, string, string> edit)
    {
        var folder = new HandingOver.TemporaryFolder();
        foreach (var file in Directory.EnumerateFiles(Content, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(folder.Root, Path.GetRelativePath(Content, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.WriteAllText(copy, edit(file, File.ReadAllText(file)));
        }

        return folder;
    }

    private static readonly string[] Arm = ["shoulder", "elbow", "wrist", "hand"];

    private static readonly string[] Matters =
    [
        .. Regex
            .Matches(
                File.ReadAllText(Repository.Path("src", "Reading", "Conditions", "floor.yaml")),
                @"(?m)^- id: (\S+)\n(?:  (?!matters-for).*\n)*  matters-for:"
            )
            .Select(m => m.Groups[1].Value),
    ];

    private static bool FollowsFromWork(string row) => row.Split(' ') is [_, var id, "clear-first"] && Matters.Contains(id);

    /// <summary>Whether something is held in a hand, and the header does not say in which.</summary>
    private static bool Holds(string text) =>
        Regex.IsMatch(text, @"(?m)^dose: .*(, load | carry )") && !List(text, "properties").Contains("worn-load");

    private static string[] List(string text, string key) =>
        Regex.Match(text, $@"(?m)^{key}: \[(.*)\]") is { Success: true } list ? list.Groups[1].Value.Split(", ") : [];

    private static string Line(string place) =>
        string.Join(
            '\n',
            File.ReadAllLines(Path.Combine(Content, place.Split(':')[0]))
                .Skip(int.Parse(place.Split(':')[1], System.Globalization.CultureInfo.InvariantCulture) - 1)
                .Take(1)
        );

    private static string Behind(string place) =>
        Line(place)[(int.Parse(place.Split(':')[2], System.Globalization.CultureInfo.InvariantCulture) - 1)..];
}
