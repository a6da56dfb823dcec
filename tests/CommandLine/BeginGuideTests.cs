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

    private void FillIn()
    {
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
