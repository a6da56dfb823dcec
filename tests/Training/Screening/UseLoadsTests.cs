using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What a use loads, as its page tells the script that asks where it hurts: what it trains, what it says, what its
/// position rests on and what is held, each with what cannot be spared while that is loaded (the thigh with hip and knee, the
/// calf with ankle and foot, the groin with the hip, the head with the neck). Common practice, no source.</summary>
public sealed class UseLoadsTests
{
    private const string Legs = "hip knee ankle foot groin thigh calf";

    [Theory]
    [InlineData("supine", "knee flexion", "", "knee:work thigh:work")]
    [InlineData("supine", "hip extension", "", "groin:work hip:work thigh:work")]
    [InlineData("supine", "ankle dorsiflexion", "", "ankle:work calf:work")]
    [InlineData("supine", "cervical rotation", "", "head neck")]
    [InlineData("supine", "knee flexion", "loads: [other knee]", "knee:other knee:work thigh:other thigh:work")]
    [InlineData("supine", "knee flexion", "loads: [lower-back]", "belly knee:work lower-back thigh:work")]
    [InlineData("hanging", "cervical rotation", "", "head neck * shoulder elbow wrist hand")]
    [InlineData("standing", "cervical rotation", "loads: [neck]", "head neck * " + Legs)]
    public void It_is_written_by_region_and_side(string position, string trains, string more, string loads) =>
        Assert.Equal(Sides(loads), UseLoads.Written(Of(position, trains, more)).Order(StringComparer.Ordinal));

    /// <summary>A dumbbell is held up to the elbow, in both hands unless one is said.</summary>
    [Theory]
    [InlineData("", "head neck * elbow wrist hand")]
    [InlineData("loads: [wrist]", "head neck elbow:work wrist:work hand:work")]
    public void What_is_held_loads_hand_and_elbow(string more, string loads) =>
        Assert.Equal(
            Sides(loads),
            UseLoads
                .Written(Of("supine", "cervical rotation", more, "2 x move 6 reps at effort 5, each side, load a dumbbell"))
                .Order(StringComparer.Ordinal)
        );

    /// <summary>What a coach writes for a week counts like what the exercise says.</summary>
    [Theory]
    [InlineData("", false)]
    [InlineData(", load a dumbbell", true)]
    public void What_is_held_in_some_week_is_loaded(string more, bool isLoaded)
    {
        var practice = Club
            .Empty.Exercise("bend", "2 x move 6 reps at effort 5, each side", "", "supine", "knee flexion")
            .Member("ada", [$"- use: bend\n  by-week:\n    2: 2 x move 6 reps at effort 5{more}"], weeks: 2)
            .Read();
        Assert.Equal(isLoaded, Assert.Single(Planned.Uses(practice)).Loads(Region.Find("wrist")!, null));
    }

    /// <summary>The left is at work, lying down.</summary>
    [Theory]
    [InlineData("knee", Side.Left, true)]
    [InlineData("knee", Side.Right, false)]
    [InlineData("thigh", Side.Left, true)]
    [InlineData("hip", Side.Left, false)]
    [InlineData("chest", null, true)] // pain there is everywhere
    [InlineData("neck", null, false)]
    public void What_hurts_is_borne_where_it_is_at_work(string region, Side? side, bool isBorne) =>
        Assert.Equal(isBorne, Of("supine", "knee flexion").Bears(Region.Find(region)!, side));

    /// <summary>Whoever stands bears both legs, and no arm.</summary>
    [Theory]
    [InlineData("ankle", Side.Right, true)]
    [InlineData("hip", Side.Left, true)]
    [InlineData("wrist", Side.Left, false)]
    [InlineData("wrist", Side.Right, false)]
    [InlineData("lower-back", null, false)]
    public void Whoever_stands_bears_both_legs(string region, Side? side, bool isBorne) =>
        Assert.Equal(isBorne, Of("standing", "knee flexion", "loads: [knee]").Bears(Region.Find(region)!, side));

    /// <summary>Regions behind a star have both sides.</summary>
    private static string[] Sides(string loads)
    {
        var parts = loads.Split(" * ");
        var both = parts.Length > 1 ? parts[1].Split(' ') : [];
        return
        [
            .. parts[0]
                .Split(' ')
                .Concat(both.SelectMany(r => new[] { r + ":work", r + ":other" }))
                .Order(StringComparer.Ordinal),
        ];
    }

    private static Use Of(string position, string trains, string more = "", string dose = "2 x hold 30 s, each side") =>
        Assert.Single(
            Planned.Uses(
                Club.Empty.Exercise("bend", dose, more, position, trains).Member("ada", ["- use: bend\n  side: left"]).Read()
            )
        );
}
