using System.Text;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Reading;

/// <summary>What comes of a yes, written once in <c>conditions.yaml</c> for all exercises that have something in
/// common.</summary>
public sealed class ConditionTraitsTests
{
    private const string Wrist =
        "\n- id: sore-wrist\n  name: a sore wrist\n  question: Is a wrist sore?\n  where: wrist\n  sided: yes\n";

    [Theory]
    [InlineData("{ positions: [split-stance] }", "calf-press wall-calf-stretch")]
    [InlineData("{ stages: [strengthen] }", "calf-press")]
    [InlineData("{ loads: [ankle] }", "calf-press wall-calf-stretch")]
    [InlineData("{ stages: [gain], loads: [hand] }", "wall-calf-stretch")]
    [InlineData("{ properties: [jumping] }", "")]
    public void It_holds_for_each_exercise_that_has_one_of_them(string traits, string exercises)
    {
        foreach (var (key, named) in Keys)
        {
            var (practice, findings) = Read($"{Wrist}  {key}: {traits}\n");
            Assert.Empty(findings.Select(f => $"{f.At} {f.Message}"));
            Assert.Equal(
                exercises,
                string.Join(' ', practice.Exercises.Where(e => named(e).Any(c => c.Value.Text == "sore-wrist")).Select(e => e.Id))
            );
        }
    }

    [Fact]
    public void Where_it_comes_from_is_the_line_that_says_so()
    {
        var (practice, _) = Read($"{Wrist}  not-with-for: {{ stages: [strengthen] }}\n");
        var press = practice.Exercises.Single(e => e.Id.Text == "calf-press");
        var named = press.NotWith.Single(c => c.Value.Text == "sore-wrist");
        Assert.Equal("conditions.yaml", named.At.File);
        Assert.Equal(
            "  not-with-for: { stages: [strengthen] }",
            Lines($"{Wrist}  not-with-for: {{ stages: [strengthen] }}\n")[named.At.Line - 1]
        );
    }

    [Fact]
    public void A_yes_forbids_the_exercise_as_though_it_named_the_condition_itself()
    {
        var (practice, _) = Read($"{Wrist}  not-with-for: {{ stages: [strengthen] }}\n", client =>
            client.Replace("ankle-injury: no", "ankle-injury: no\n  sore-wrist: yes, left", StringComparison.Ordinal)
        );
        var tess = practice.Find(new ClientId("tess"));
        Assert.NotNull(tess);
        var against = Planned
            .Trainings(practice)[tess.Id]
            .Uses.ToLookup(u => u.Exercise.Id.Text, u => u.Against.Any(o => o.Condition.Text == "sore-wrist"));
        Assert.All(against["calf-press"], Assert.True);
        Assert.All(against["wall-calf-stretch"], Assert.False);
    }

    [Fact]
    public void What_an_exercise_says_itself_stays()
    {
        var (practice, _) = Read(
            "\n- id: hernia\n  name: a hernia\n  question: Have you a hernia?\n  where: belly\n"
                + "  not-with-for: { stages: [strengthen] }\n"
        );
        var press = practice.Exercises.Single(e => e.Id.Text == "calf-press");
        Assert.Single(press.NotWith, c => c.Value.Text == "hernia");
        Assert.Equal("exercises/calf-press.md", press.ClearFirst.Single(c => c.Value.Text == "hernia").At.File);
    }

    [Theory]
    [InlineData("not-with-for: { stages: [strong] }", "'strong' is not a value of 'stages'")]
    [InlineData("not-with-for: { positions: [upside-down] }", "'upside-down' is not a value of 'positions'")]
    [InlineData("not-with-for: { properties: [jumpy] }", "'jumpy' is no property of an exercise.")]
    [InlineData("not-with-for: { loads: [leg] }", "'leg' is no region of the body that Gradus knows.")]
    [InlineData("not-with-for: { stage: [gain] }", "'stage' is no key of what exercises have in common.")]
    [InlineData("not-with-for: {}", "'not-with-for' says for no exercise what comes of a yes.")]
    [InlineData("clear-first-for: jumping", "Here should stand the keys of what exercises have in common")]
    public void What_cannot_be_read_is_said_at_its_line(string line, string message)
    {
        var finding = Assert.Single(Read($"{Wrist}  {line}\n").Findings, f => f.At.File == "conditions.yaml");
        Assert.StartsWith(message, finding.Message, StringComparison.Ordinal);
    }

    private static readonly (string Key, Func<Exercise, IEnumerable<Mention<ConditionId>>> Named)[] Keys =
    [
        ("not-with-for", e => e.NotWith),
        ("clear-first-for", e => e.ClearFirst),
    ];

    private static string[] Lines(string more) => (Conditions + more).Split('\n');

    private static string Conditions => Auditing.LittlePractice.Files.Single(f => f.Key == "conditions.yaml").Value.TrimEnd('\n');

    private static (Practice Practice, Series<Finding> Findings) Read(string more, Func<string, string>? client = null)
    {
        var findings = new Findings();
        var files = Auditing.LittlePractice.Files.Select(f =>
            KeyValuePair.Create(
                f.Key,
                Encoding.UTF8.GetBytes(
                    f.Key == "conditions.yaml" ? Conditions + more
                    : f.Key == "clients/tess/client.yaml" && client is not null ? client(f.Value)
                    : f.Value
                )
            )
        );
        var practice = PracticeReader.Read(SourceFolder.Of(files), findings).Practice;
        Assert.NotNull(practice);
        return (practice, findings.InOrder().ToSeries());
    }
}
