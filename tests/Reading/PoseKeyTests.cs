using System.Text;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

/// <summary>The keys <c>pose</c> and <c>feel</c> of an exercise.</summary>
public sealed class PoseKeyTests
{
    private const string File = "exercises/wall-calf-lean.md";

    private static readonly SourceFolder Demonstration = SourceFolder.Open(Repository.Path("content"));

    [Fact]
    public void Every_exercise_of_the_demonstration_has_a_pose_that_is_drawn()
    {
        var read = PracticeReader.Read(Demonstration, []).Practice;
        Assert.NotNull(read);
        Assert.True(read.Exercises.Count >= 25);
        Assert.All(read.Exercises, e => Assert.True(e.Pose is not null, $"{e.Id.Text} has no pose."));
    }

    [Fact]
    public void A_pose_keeps_its_items_and_the_place_where_it_is_felt()
    {
        var (exercise, findings) = Read("pose: { start: [standing, HANDS on wall], end: [heels off floor] }", "feel: shin");
        Assert.Empty(findings);
        Assert.Equal(["standing", "HANDS on wall"], exercise?.Pose?.Start);
        Assert.Equal(["heels off floor"], exercise?.Pose?.End);
        Assert.Equal("shin", exercise?.Pose?.Feel);
    }

    [Theory]
    [InlineData("pose: { start: [standing, kne flexion 9] }", "feel: calf", 27, "pose-wrong")]
    [InlineData("pose: { start: [standing], end: [knee flexion 200] }", "feel: calf", 34, "pose-wrong")]
    [InlineData("pose: { start: [stand] }", "feel: calf", 17, "pose-wrong")]
    [InlineData("pose: { start: [] }", "feel: calf", 0, "")]
    [InlineData("pose: { begin: [standing] }", "feel: calf", 9, "key-unknown")]
    [InlineData("pose: { end: [standing] }", "feel: calf", 9, "key-missing")]
    [InlineData("pose: standing", "feel: calf", 7, "value-wrong")]
    public void What_is_wrong_is_found_at_its_word(string pose, string feel, int column, string rule)
    {
        var (exercise, findings) = Read(pose, feel);
        Assert.Null(exercise?.Pose);
        if (rule.Length > 0)
            Assert.Contains(findings, f => f.Rule.Text == rule && f.At.Column == column);
    }

    [Fact]
    public void A_place_that_nobody_knows_is_asked_back()
    {
        var found = Assert.Single(Read("pose: { start: [standing] }", "feel: clf").Findings);
        Assert.Equal(("value-wrong", "Did you mean 'calf'?"), (found.Rule.Text, found.Help));
    }

    [Fact]
    public void A_place_without_a_pose_is_shown_nowhere()
    {
        var found = Assert.Single(Read("#", "feel: calf").Findings);
        Assert.Equal("'feel' is shown on a figure, and there is none.", found.Message);
    }

    /// <summary>What reading says of the exercise with these two lines for its own.</summary>
    private static (Exercise? Exercise, IReadOnlyList<Finding> Findings) Read(string pose, string feel)
    {
        var lines = Encoding.UTF8.GetString(Demonstration.Read(File)).Split('\n').ToList();
        var at = lines.FindIndex(l => l.StartsWith("pose:", StringComparison.Ordinal));
        lines.RemoveAll(l => l.StartsWith("pose:", StringComparison.Ordinal) || l.StartsWith("feel:", StringComparison.Ordinal));
        lines.RemoveRange(at, lines.FindIndex(at, l => !l.StartsWith(' ')) - at);
        lines.InsertRange(at, [pose, feel]);
        var findings = new Findings();
        var read = PracticeReader.Read(
            SourceFolder.Of(
                Demonstration
                    .Paths.Where(p => p != File)
                    .Select(p => KeyValuePair.Create(p, Demonstration.Read(p)))
                    .Append(KeyValuePair.Create(File, Encoding.UTF8.GetBytes(string.Join('\n', lines))))
            ),
            findings
        );
        return (
            read.Practice?.Exercises.FirstOrDefault(e => e.Id.Text == "wall-calf-lean"),
            [.. findings.InOrder().Where(f => f.At.File == File)]
        );
    }
}
