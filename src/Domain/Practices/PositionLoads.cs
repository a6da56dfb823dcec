namespace Gradus.Domain;

/// <summary>What an exercise loads without saying so: by its position, by what it holds, and by what the coach says of it. All
/// of it common practice, no source.</summary>
public static class PositionLoads
{
    private static readonly Series<LoadedRegion> Legs = Both("hip", "knee", "ankle", "foot");

    /// <summary>Who kneels rests on the knees and on the top of the feet.</summary>
    private static readonly Series<LoadedRegion> Kneeling = Both("knee", "foot");

    private static readonly Series<LoadedRegion> Heels = Both("knee", "ankle", "foot");
    private static readonly Series<LoadedRegion> Hands = Both("elbow", "wrist", "hand");

    /// <summary>What bears the weight of the body on the hands, or hanging from them.</summary>
    private static readonly Series<LoadedRegion> Arms = Both("shoulder", "elbow", "wrist", "hand");

    /// <summary>What an exercise says that it loads, and what it loads besides. Who stands loads both legs, but only an exercise
    /// that says nothing itself is taken to work them.</summary>
    /// <param name="written">Under loads; empty where it says nothing.</param>
    /// <param name="properties">Those that the coach names.</param>
    /// <param name="dose">Null where it could not be understood.</param>
    public static Series<LoadedRegion> Of(Position position, Series<LoadedRegion> written, Series<string> properties, Dose? dose)
    {
        var own = position switch
        {
            Position.HandsAndKnees => Kneeling.Concat(Arms),
            Position.Kneeling or Position.HalfKneeling => Kneeling,
            Position.Hanging => Arms,

            // The rear foot of a split stance bends its ankle, whichever leg is at work.
            Position.SplitStance => Both("knee", "ankle", "foot"),
            Position.Standing or Position.Squat when written.Count == 0 => Legs,
            _ => [],
        };
        return written
            .Concat(own)
            .Concat(position == Position.SplitStance && written.Count == 0 ? Legs : [])
            .Concat(properties.Contains(WorkProperty.SitsOnHeels) ? Heels : [])
            .Concat(properties.Contains(WorkProperty.WeightOnHands) ? UnlessSaid(Arms, written) : [])
            .Concat(dose is null ? [] : Held(dose.Terms.Load is not null, dose.Actions.Select(a => a.Verb), written, properties))
            .Distinct()
            .ToSeries();
    }

    /// <summary>What is held in a hand loads it up to the elbow: both, unless the exercise says of a hand or a wrist which it
    /// loads.</summary>
    /// <param name="said">What the exercise loads.</param>
    /// <param name="properties">Those that the coach names.</param>
    public static Series<LoadedRegion> Held(
        bool isLoaded,
        IEnumerable<Verb> verbs,
        Series<LoadedRegion> said,
        Series<string> properties
    ) => (isLoaded && !properties.Contains(WorkProperty.WornLoad)) || verbs.Contains(Verb.Carry) ? UnlessSaid(Hands, said) : [];

    /// <summary>The arm whose hand is said; both where none is.</summary>
    private static Series<LoadedRegion> UnlessSaid(Series<LoadedRegion> arms, Series<LoadedRegion> said)
    {
        var sides = said.Where(l => l.Region.Name is "wrist" or "hand").Select(l => l.Other).ToArray();
        return sides.Length == 0 ? arms : arms.Where(h => sides.Contains(h.Other)).ToSeries();
    }

    /// <summary>What bears the body in that position, whatever the exercise says that it loads.</summary>
    public static Series<LoadedRegion> Bearing(Position position) => Of(position, [], [], null);

    private static Series<LoadedRegion> Both(params string[] regions) =>
        regions
            .Select(name => Region.Find(name) ?? throw new ArgumentException($"No region '{name}'.", nameof(regions)))
            .SelectMany(region => new LoadedRegion[] { new(region, false), new(region, true) })
            .ToSeries();
}
