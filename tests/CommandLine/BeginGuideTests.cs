using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>The guide for coaches, held to what it says.</summary>
[Trait("Slow", "yes")]
public sealed partial class BeginGuideTests : IDisposable
{
    private static readonly string Guide = File.ReadAllText(Repository.Path("content", "README.md"));
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-guide-").FullName;

    [GeneratedRegex(@"^\| `([^`]+)` \|", RegexOptions.Multiline)]
    private static partial Regex FirstCell();

    [GeneratedRegex("(?<=```\n)gradus .+(?=\n```)|(?<=`)gradus (?:publish|audit|explain|dose) [^`]+(?=`)")]
    private static partial Regex CommandLine();

    [GeneratedRegex(@"""[^""]+""|\S+")]
    private static partial Regex Word();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_dose_in_it_can_be_read()
    {
        var doses = FirstCell().Matches(Part("## The dose line")).Select(m => m.Groups[1].Value).ToArray();
        Assert.True(doses.Length >= 10);
        Assert.All(doses, dose => Assert.IsType<DoseLineResult.Understood>(DoseLine.Read(dose, DoseSettings.Default)));
    }

    [Fact]
    public void Every_verb_is_in_its_table()
    {
        var table = Part("## The dose line");
        Assert.All(Enum.GetNames<Verb>(), verb => Assert.Matches($@"\n\| `[^`]*\b{Kebab.Of(verb)} ", table));
    }

    /// <summary>Done in order, as somebody new would: what the client says and the programme are filled in as the guide
    /// asks.</summary>
    [Fact]
    public void Its_commands_lead_from_an_empty_folder_to_a_site_in_their_order()
    {
        var done = new List<string>();
        foreach (var line in CommandLine().Matches(Guide).Select(m => m.Value))
        {
            string[] words =
            [
                .. Word()
                    .Matches(line)
                    .Skip(1)
                    .Select(m => m.Value.Trim('"'))
                    .Select(w => w is "my-practice" or "site" ? Path.Combine(folder, w) : w),
            ];
            var answer = Gradus.Run(words[0] is "dose" or "explain" ? words : [.. words, "--today", "2026-12-07"]);
            Assert.True(answer.Status == 0, $"{line}: {answer.Output}{answer.Error}");
            if (words[0] is "new")
                FillIn();
            if (words[0] is "audit")
                Assert.StartsWith("No problems found.\n", answer.Output, StringComparison.Ordinal);
            done.Add(words[0]);
        }

        Assert.Equal(["begin", "new", "audit", "explain", "publish", "publish", "dose"], done);
        Assert.True(File.Exists(Path.Combine(folder, "site", "rufus", "index.html")));
        Assert.True(File.Exists(Path.Combine(folder, "site", "rufus.zip")));
    }

    /// <summary>The wall is taken away, the warning is let stand as the guide shows it, and is let stand no more when it says
    /// something else.</summary>
    [Fact]
    public void What_it_lets_stand_is_what_is_found()
    {
        var practice = Begun();
        var client = Path.Combine(practice, "clients", "rufus", "client.yaml");
        File.WriteAllText(
            client,
            Regex.Replace(File.ReadAllText(client), @"^equipment: .*$", "equipment: [chair]", RegexOptions.Multiline)
        );
        Assert.Contains("warning  equipment-missing", Audit(practice), StringComparison.Ordinal);
        var accepted = Example("## Letting a warning stand");
        File.WriteAllText(Path.Combine(practice, "accepted.yaml"), accepted);
        Assert.DoesNotContain("equipment-missing", Audit(practice), StringComparison.Ordinal);
        File.WriteAllText(
            Path.Combine(practice, "accepted.yaml"),
            accepted.Replace("'wall'", "'step'", StringComparison.Ordinal)
        );
        Assert.Contains("warning  equipment-missing", Audit(practice), StringComparison.Ordinal);
    }

    [Fact]
    public void Its_restriction_stops_what_goes_beyond_it()
    {
        var practice = Begun();
        Assert.Equal("No problems found.\n", Audit(practice));
        var client = Path.Combine(practice, "clients", "rufus", "client.yaml");
        File.AppendAllText(client, "\n" + Example("## What a clinician asked to spare"));
        Assert.Contains("left ankle: hold at most 20 s, until 2027-02-28", Audit(practice), StringComparison.Ordinal);
    }

    /// <summary>Perrin has very mobile joints, and no clearance for the end of one.</summary>
    [Fact]
    public void Its_property_keeps_a_heel_lift_from_the_end_of_the_joint()
    {
        var practice = Begun();
        var client = Path.Combine(practice, "clients", "perrin", "client.yaml");
        File.WriteAllText(
            client,
            File.ReadAllText(client).Replace("very-mobile-joints: no", "very-mobile-joints: yes", StringComparison.Ordinal)
        );
        const string lift = "'Slow heel lift with a backpack' needs a clearance for joints that bend";
        Assert.Contains(lift, Audit(practice), StringComparison.Ordinal);
        var exercise = Path.Combine(practice, "exercises", "slow-heel-lift.md");
        File.WriteAllText(
            exercise,
            File.ReadAllText(exercise)
                .Replace(
                    "properties: [balance]",
                    Example("## How far an exercise goes").Trim().Replace("[", "[balance, ", StringComparison.Ordinal),
                    StringComparison.Ordinal
                )
        );
        var said = Audit(practice);
        Assert.DoesNotContain(lift, said, StringComparison.Ordinal);
        Assert.Contains("'Calf lean' needs a clearance for joints that bend", said, StringComparison.Ordinal);
    }

    private string Begun()
    {
        var practice = Path.Combine(folder, "my-practice");
        Assert.Equal(0, Gradus.Run("begin", practice, "--today", "2026-12-07").Status);
        Assert.Equal(0, Gradus.Run("new", "client", "rufus", "--in", practice, "--today", "2026-12-07").Status);
        FillIn();
        return practice;
    }

    private static string Audit(string practice) => Gradus.Run("audit", practice, "--today", "2026-12-07").Output;

    /// <summary>The first block below a heading.</summary>
    private static string Example(string heading) => Part(heading).Split("```\n")[1];

    private void FillIn()
    {
        BegunPractice.SayWho(Path.Combine(folder, "my-practice"));
        var client = Path.Combine(folder, "my-practice", "clients", "rufus");
        var text = BegunPractice.Told(File.ReadAllText(Path.Combine(client, "client.yaml")));
        File.WriteAllText(
            Path.Combine(client, "client.yaml"),
            text.Replace(": not asked", ": no", StringComparison.Ordinal)
                .Replace("#equipment", "equipment", StringComparison.Ordinal)
        );
        var programme = File.ReadAllText(Path.Combine(client, "programme.md"));
        var sessions = Regex.Match(Guide, "```\n(sessions:\n.*?)```", RegexOptions.Singleline).Groups[1].Value;
        File.WriteAllText(
            Path.Combine(client, "programme.md"),
            Regex.Replace(programme, "sessions:\n.*?(?=---)", sessions, RegexOptions.Singleline)
        );
    }

    private static string Part(string heading) => Guide[Guide.IndexOf(heading, StringComparison.Ordinal)..].Split("\n## ")[0];
}
