using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What a use loads on the client's own sides.</summary>
public static class UseLoads
{
    /// <summary>Whether it loads that region on that side: by what the exercise says, by what its position rests on, by what is
    /// held in some week, or because it trains that joint.</summary>
    /// <param name="side">Null for either side, and where the region has no sides.</param>
    public static bool Loads(this Use use, Region region, Side? side) =>
        region.Name == "whole body" || Worked(use).Any(l => region.IsLoadedWith(l.Region) && IsOn(use, side, l.Other));

    /// <summary>Whether it loads what hurts, or what must be spared. Who stands on a leg loads it, whatever else an exercise
    /// works, and whichever side was chosen; pain in the chest is everywhere.</summary>
    /// <param name="side">As above.</param>
    public static bool Bears(this Use use, Region region, Side? side) =>
        region.Name == "chest"
        || use.Loads(region, side)
        || PositionLoads.Bearing(use.Exercise.Position).Any(l => region.IsLoadedWith(l.Region) && IsOn(use, side, l.Other));

    /// <summary>What hurts may not be loaded by it, as a page writes it for its script: the joint that it trains, what it says,
    /// and what its position rests on; with each what is worked along with it.</summary>
    public static Series<string> Written(Use use) =>
        Worked(use)
            .Concat(PositionLoads.Bearing(use.Exercise.Position))
            .SelectMany(l => Region.All.Where(r => r.IsLoadedWith(l.Region)).Select(r => (Region: r, l.Other)))
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

    private static IEnumerable<LoadedRegion> Worked(Use use) =>
        (use.Exercise.Trains.Region is { } trained ? [new LoadedRegion(trained, false)] : Array.Empty<LoadedRegion>())
            .Concat(use.Exercise.Loads)
            .Concat(
                PositionLoads.Held(
                    use.Weeks.Any(w => w.Dose.Load is not null),
                    use.Weeks.SelectMany(w => w.Dose.Actions).Select(a => a.Verb),
                    use.Exercise.Loads,
                    use.Exercise.Properties
                )
            );

    private static bool IsOn(Use use, Side? side, bool other) =>
        side is null || use.Sides.Any(worked => (other ? worked.Other() : worked) == side);
}
