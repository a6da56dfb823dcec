using Gradus.Domain;
using Gradus.Reading;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>The dose of each week, by the lines and the ladder that it comes from.</summary>
public sealed class WeekDosesTests
{
    private static readonly LittlePractice Library = Club
        .Empty.Exercise("sway", "2-3 x hold 30-60 s, rest 20 s, each side", "easier: sit\nharder: lean")
        .Exercise("sit", "1 x hold 20 s, each side")
        .Exercise("lean", "2 x press 10 s at 50%, rest 20 s, each side");

    [Theory]
    [InlineData("", "[]", "1: 2 x hold 30 s")]
    [InlineData("from-week: 2", "[]", "2: 2 x hold 30 s")]
    [InlineData("by-week: { 2: 3 x hold 45 s }", "[]", "2: 3 x hold 45 s|3: 3 x hold 45 s|4: 3 x hold 45 s")]
    [InlineData(
        "by-week: { 1: 2 x hold 30 s, 3: 3 x hold 45 s }\n  until-week: 3",
        "[]",
        "1: 2 x hold 30 s|2: 2 x hold 30 s|3: 3 x hold 45 s"
    )]
    [InlineData("by-week: { 1: 2 x hold 30 s, 3: 3 x hold 45 s }\n  from-week: 2\n  until-week: 2", "[]", "2: 2 x hold 30 s")]
    [InlineData(
        "by-week: { 1: 4 x hold 30 s, 2: 1 x hold 30 s }",
        "[2]",
        "1: 4 x hold 30 s|2: 1 x hold 30 s ByCoach|3: 4 x hold 30 s|4: 4 x hold 30 s"
    )]
    [InlineData(
        "by-week: { 1: 5 x hold 30 s }",
        "[3]",
        "1: 5 x hold 30 s|2: 5 x hold 30 s|3: 3 x hold 30 s Cut|4: 5 x hold 30 s"
    )]
    public void Each_week_has_the_dose_of_its_line(string more, string lighter, string weeks)
    {
        var use = Of($"- use: sway{(more.Length > 0 ? "\n  " + more : "")}", lighter)[0];
        Assert.StartsWith(weeks, string.Join('|', use.Weeks.Select(Said)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_version_is_a_use_of_its_own_behind_the_exercise()
    {
        var uses = Of("- use: sway\n  by-week: { 1: 2 x hold 30 s, 3: { use: harder }, 4: { use: easier } }");
        Assert.Equal(
            ["sway: 1 2", "lean: 3", "sit: 4"],
            uses.Select(u => $"{u.Exercise.Id}: {string.Join(' ', u.Weeks.Select(w => w.Week))}")
        );
        Assert.Equal([null, ExerciseVersion.Harder, ExerciseVersion.Easier], uses.Select(u => u.Version));
    }

    [Fact]
    public void A_name_that_is_no_side_leaves_no_weeks()
    {
        var one = Of("- use: sway\n  side: bow arm")[0];
        Assert.Equal((0, "bow arm"), (one.Weeks.Count, one.Unresolved?.Word));
        var plus = Of("- use: sway\n  by-week: { 1: '2 x hold 30 s, each side, plus 1 x on bow arm' }")[0];
        Assert.Equal((0, "bow arm"), (plus.Weeks.Count, plus.Unresolved?.Word));
        Assert.Null(Of("- use: sway\n  side: rear leg")[0].Unresolved);
    }

    /// <summary>Nor has a version of it.</summary>
    [Fact]
    public void An_exercise_that_could_not_be_read_has_no_use()
    {
        var folder = Library
            .Member("ansel", ["- use: sway\n  by-week: { 1: 2 x hold 30 s, 3: { use: harder } }\n- use: lean"], 4)
            .Without("exercises/sway.md")
            .Folder;
        var practice = Assert.IsType<Practice>(PracticeReader.Read(folder, new Findings()).Practice);
        Assert.Equal(["lean"], Training.Of(practice, practice.Clients.Single()).Uses.Select(u => u.Exercise.Id.Text));
    }

    private static string Said(WeekDose week)
    {
        var dose = week.Dose.AsDose with { Terms = DoseTerms.None };
        return week.Lightness == Lightness.Full ? $"{week.Week}: {dose}" : $"{week.Week}: {dose} {week.Lightness}";
    }

    private static Series<Use> Of(string use, string lighter = "[]")
    {
        var practice = Library.Member("ansel", [use], 4, lighter: lighter).Read();
        return Training.Of(practice, practice.Clients.Single()).Uses;
    }
}
