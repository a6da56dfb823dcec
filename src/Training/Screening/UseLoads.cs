using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What a use loads on the client's own sides.</summary>
public static class UseLoads
{
    /// <summary>Whether it loads that region on that side: by what the exercise says, by what its position rests on, or because
    /// it trains that joint.</summary>
    /// <param name="side">Null for either side, and where the region has no sides.</param>
    public static bool Loads(this Use use, Region region, Side? side)
    {
        if (region.Name == "whole body")
            return true;
        if (use.Exercise.Trains.Region == region && IsOn(use, side, other: false))
            return true;
        return use.Exercise.Loads.Any(l => l.Region == region && IsOn(use, side, l.Other));
    }

    /// <summary>Whether it loads what hurts. Who stands on a leg that hurts loads it, whatever else an exercise works; pain in
    /// the chest is everywhere.</summary>
    public static bool Hurts(this Use use, Pain pain) =>
        pain.Where.Name == "chest"
        || use.Loads(pain.Where, pain.Side)
        || PositionLoads.Of(use.Exercise.Position, []).Any(l => l.Region == pain.Where && IsOn(use, pain.Side, l.Other));

    /// <summary>What hurts may not be loaded by it, as a page writes it for its script: the joint that it trains, what it says,
    /// and what its position rests on.</summary>
    public static Series<string> Written(Drill exercise) =>
        (exercise.Trains.Region is { } trained ? [new LoadedRegion(trained, false)] : Array.Empty<LoadedRegion>())
            .Concat(exercise.Loads)
            .Concat(PositionLoads.Of(exercise.Position, []))
            .Select(l =>
                Kebab.OfWords(l.Region.Name)
                + (
                    !l.Region.IsSided ? ""
                    : l.Other ? ":other"
                    : ":work"
                )
            )
            .Distinct(StringComparer.Ordinal)
            .ToSeries();

    private static bool IsOn(Use use, Side? side, bool other) =>
        side is null || use.Sides.Any(worked => (other ? worked.Other() : worked) == side);
}
