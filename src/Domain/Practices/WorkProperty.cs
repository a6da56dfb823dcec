namespace Gradus.Domain;

/// <summary>The names of what work does to a body, as floor.yaml and an exercise's header write them. Some a coach says, others
/// follow from the dose, the position and the motion.</summary>
public static class WorkProperty
{
    /// <summary>Whatever is done.</summary>
    public const string Everything = "everything";

    /// <summary>A muscle works against something, however gently: a press, a pull, a raise, a carry, and a hold where work is
    /// meant.</summary>
    public const string Effort = "effort";

    /// <summary>A joint is taken to the end of its range, by somebody's own strength or not.</summary>
    public const string EndRange = "end-range";

    /// <summary>The coach says that a joint stays away from its end.</summary>
    public const string MidRange = "mid-range";

    public const string TrunkEndRange = "trunk-end-range";

    /// <summary>A weight is lifted, held or carried.</summary>
    public const string Loaded = "loaded";

    /// <summary>The coach says that the weight is worn, on the back or round the waist, and in no hand.</summary>
    public const string WornLoad = "worn-load";

    public const string WeightOnHands = "weight-on-hands";

    /// <summary>On one leg, or on ground that gives way.</summary>
    public const string Balance = "balance";

    public const string Jumping = "jumping";

    public const string HeadLow = "head-low";

    /// <summary>Somebody sits back on their heels, so that knees and ankles are fully bent.</summary>
    public const string SitsOnHeels = "sits-on-heels";

    /// <summary>Those that a coach may write.</summary>
    public static readonly Series<string> Written =
    [
        HeadLow,
        WeightOnHands,
        TrunkEndRange,
        Balance,
        Jumping,
        MidRange,
        WornLoad,
        SitsOnHeels,
    ];

    /// <summary>Those that only say how something is done, and need no caution of their own.</summary>
    public static readonly Series<string> Descriptive = [MidRange, WornLoad, SitsOnHeels];

    /// <summary>Those that also follow without being written.</summary>
    public static readonly Series<string> Derived = [Everything, Effort, EndRange, Loaded];

    /// <summary>Of <see cref="Written"/> those that work has: what the coach says, and what follows from its position, its motion
    /// and its dose.</summary>
    /// <param name="dose">Null where it could not be understood.</param>
    public static IEnumerable<string> Of(Drill drill, Dose? dose)
    {
        foreach (var said in drill.Properties)
            yield return said;
        if (drill.Position is Position.HandsAndKnees or Position.Hanging)
            yield return WeightOnHands;
        if (dose is not null && BendsTheTrunk(drill, dose))
            yield return TrunkEndRange;
    }

    /// <summary>Whether the trunk is bent or turned to its end.</summary>
    public static bool BendsTheTrunk(Drill drill, Dose dose) =>
        drill.Properties.Contains(TrunkEndRange) || (drill.Trains.Region is { IsSpine: true } && GoesToTheEnd(drill, dose));

    /// <summary>Whoever holds, raises or moves may come to the end of the joint, unless the coach says otherwise; so does a push
    /// in a place where range is gained or its end controlled.</summary>
    public static bool GoesToTheEnd(Drill drill, Dose dose) =>
        !drill.Properties.Contains(MidRange)
        && (
            drill.Stage is Stage.Gain or Stage.Control && dose.Actions.Any(a => a.Verb is not Verb.Breathe)
            || dose.Actions.Any(a => a.Verb is Verb.Hold or Verb.Raise or Verb.Move)
            || drill.Properties.Contains(SitsOnHeels)
        );
}
