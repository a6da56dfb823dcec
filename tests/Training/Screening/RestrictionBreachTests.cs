using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What a clinician asked to be spared: "from which day", "its last day", "what is spared, with its side", "the name of
/// a motion", "where there is no limit it is not done at all" (practice-format.md).</summary>
public sealed class RestrictionBreachTests
{
    /// <summary>The programme has the weeks from Monday, 4 January 2027, and from the 11th.</summary>
    [Theory]
    [InlineData("2026-12-01", "2027-01-03", null)]
    [InlineData("2026-12-01", "2027-01-04", 1)]
    [InlineData("2027-01-10", "2027-12-31", 1)]
    [InlineData("2027-01-11", "2027-12-31", 2)]
    [InlineData("2027-01-17", "2027-12-31", 2)]
    [InlineData("2027-01-18", "2027-12-31", null)]
    public void It_holds_from_its_first_day_to_its_last(string on, string until, int? week) =>
        Assert.Equal(week, First("joint: left knee", on, until)?.Week.Week);

    [Theory]
    [InlineData("joint: left knee", true)]
    [InlineData("joint: right knee", false)] // the left is at work
    [InlineData("joint: left shoulder", false)]
    [InlineData("movement: knee flexion", true)]
    [InlineData("movement: hip extension", false)]
    [InlineData("joint: left knee, movement: knee flexion", true)]
    [InlineData("joint: left knee, movement: hip extension", false)] // only both together are asked to be spared
    [InlineData("joint: left shoulder, movement: knee flexion", false)]
    public void It_is_about_a_joint_or_a_movement_or_both(string spared, bool isBroken) =>
        Assert.Equal(isBroken, First(spared) is not null);

    [Theory]
    [InlineData("supine", false)]
    [InlineData("standing", true)]
    [InlineData("half-kneeling", true)]
    public void What_the_position_rests_on_is_not_spared(string position, bool isBroken) =>
        Assert.Equal(isBroken, First("joint: right knee", position: position) is not null);

    /// <summary>What a surgeon forbade is done as well where another motion is trained: common practice, no source.</summary>
    [Theory]
    [InlineData("movement: hip flexion", "needs: { hip flexion passive: 100 }", true)]
    [InlineData("movement: hip flexion", "pose: { start: [supine], end: [hip flexion 90] }", true)]
    [InlineData("movement: hip flexion", "pose: { start: [supine, other hip flexion 45] }", true)]
    [InlineData("movement: hip flexion", "pose: { start: [supine, hip flexion 10] }", false)]
    [InlineData("movement: hip flexion", "pose: { start: [supine, knee flexion 90] }", false)]
    [InlineData("joint: left shoulder, movement: hip flexion", "needs: { hip flexion passive: 100 }", false)]
    public void It_is_about_a_movement_that_the_start_or_the_end_goes_into(string spared, string said, bool isBroken) =>
        Assert.Equal(isBroken, First(spared, said: said) is not null);

    /// <summary>The dose is 30 s in week 1 and 45 s in week 2.</summary>
    [Theory]
    [InlineData("hold at most 45 s", null)]
    [InlineData("hold at most 44 s", 2)]
    [InlineData("hold at most 30 s", 2)]
    [InlineData("hold at most 29 s", 1)]
    public void A_limit_is_broken_in_the_first_week_beyond_it(string limit, int? week)
    {
        var breach = First($"joint: left knee, limit: {limit}");
        Assert.Equal(week, breach?.Week.Week);
        Assert.True(breach is null || breach.Limit is ClearanceLimit.HoldAtMost);
    }

    private static RestrictionBreach? First(
        string spared,
        string on = "2026-12-01",
        string until = "2027-12-31",
        string position = "supine",
        string said = ""
    )
    {
        var practice = Club
            .Empty.Exercise("bend", "2 x hold 30-60 s, each side", position: position, trains: "knee flexion")
            .Member("ada", ["- use: bend\n  side: left\n  by-week:\n    1: 2 x hold 30 s\n    2: 2 x hold 45 s"], weeks: 2)
            .Edit("exercises/bend.md", "trains: knee flexion\n", $"trains: knee flexion\n{said}\n")
            .Edit(
                "clients/ada/client.yaml",
                "clearances: []",
                $"restrictions: [{{ by: her doctor, on: {on}, until: {until}, {spared} }}]\nclearances: []"
            )
            .Read();
        return Assert.Single(Planned.Uses(practice)).Restricted.FirstOrDefault();
    }
}
