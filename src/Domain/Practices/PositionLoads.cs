namespace Gradus.Domain;

/// <summary>What a position loads, whatever else an exercise says. That hands and knees rest on both wrists and both knees is a
/// fact of the trade; so are the others: common practice, no source.</summary>
public static class PositionLoads
{
    private static readonly Series<LoadedRegion> Knees = Both("knee");
    private static readonly Series<LoadedRegion> WristsAndKnees = Both("wrist", "knee");
    private static readonly Series<LoadedRegion> Legs = Both("hip", "knee", "ankle", "foot");
    private static readonly Series<LoadedRegion> Arms = Both("shoulder", "elbow", "wrist", "hand");

    /// <summary>What an exercise loads in that position: what it says, and what the position rests on that a body does not rest
    /// on in daily life. Who stands loads both legs, but only an exercise that says nothing itself is taken to work
    /// them.</summary>
    /// <param name="written">What the exercise says under loads; empty where it says nothing.</param>
    public static Series<LoadedRegion> Of(Position position, Series<LoadedRegion> written)
    {
        var own = position switch
        {
            Position.HandsAndKnees => WristsAndKnees,
            Position.Kneeling or Position.HalfKneeling => Knees,
            Position.Hanging => Arms,
            Position.Standing or Position.SplitStance or Position.Squat when written.Count == 0 => Legs,
            _ => [],
        };
        return written.Concat(own).Distinct().ToSeries();
    }

    private static Series<LoadedRegion> Both(params string[] regions) =>
        regions
            .Select(name => Region.Find(name) ?? throw new ArgumentException($"No region '{name}'.", nameof(regions)))
            .SelectMany(region => new LoadedRegion[] { new(region, false), new(region, true) })
            .ToSeries();
}
