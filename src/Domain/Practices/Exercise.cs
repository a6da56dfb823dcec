namespace Gradus.Domain;

/// <summary>An exercise of the library: what the body does in it, the dose it allows, what it asks of a client, and the coach's
/// words for it.</summary>
/// <param name="Signs">The cautions it names itself, in the coach's order.</param>
/// <param name="NotWith">Conditions that forbid it, clearance or not.</param>
/// <param name="ClearFirst">Conditions that forbid it until a clearance is in force.</param>
/// <param name="Needs">The range, in the motion's unit, that it takes to get into the start safely.</param>
public sealed record Exercise(
    Drill Drill,
    string Title,
    WrittenDose Dose,
    Series<Mention<CautionId>> Signs,
    Series<Mention<ConditionId>> NotWith,
    Series<Mention<ConditionId>> ClearFirst,
    Series<NeededRange> Needs,
    Mention<ExerciseId>? Easier,
    Mention<ExerciseId>? Harder,
    ExerciseText Text,
    Location At
)
{
    /// <summary>Null where the side says enough.</summary>
    public SideCue? Cue { get; init; }

    /// <summary>What the client measures in it; null where nothing is measured.</summary>
    public Mention<string>? Measure { get; init; }

    /// <summary>Null where nobody said how it looks.</summary>
    public WrittenPose? Pose { get; init; }

    public ExerciseId Id => Drill.Id;

    public Motion Trains => Drill.Trains;

    public Stage Stage => Drill.Stage;

    public Position Position => Drill.Position;

    public Series<string> Equipment => Drill.Equipment;

    public Series<LoadedRegion> Loads => Drill.Loads;

    public Series<string> Properties => Drill.Properties;

    /// <summary>The exercise that it names as that version of it.</summary>
    public Mention<ExerciseId>? Named(ExerciseVersion version) =>
        version switch
        {
            ExerciseVersion.Easier => Easier,
            ExerciseVersion.Harder => Harder,
        };

    /// <summary>The properties it says, and those that follow from its dose at the high end.</summary>
    public IEnumerable<string> AllProperties => Properties.Concat(Dose.Dose is { } dose ? DoseProperties.Of(Stage, dose) : []);

    /// <summary>Whether it loads that region on some side: by what it says, by its position and what is held, or because it
    /// trains that joint.</summary>
    public bool MayLoad(Region region) =>
        (Trains.Region is { } trained && region.IsLoadedWith(trained)) || Loads.Any(l => region.IsLoadedWith(l.Region));

    /// <summary>Whether it takes the joint into that movement, on whichever side: it trains it, asks for range in it, or says an
    /// angle of it in its pose, at the start or at the end.</summary>
    /// <param name="motion">Its name, as "knee flexion".</param>
    public bool GoesInto(string motion) =>
        Trains.Name == motion || Needs.Any(n => n.Motion == motion) || Pose?.GoesInto(motion) == true;

    /// <summary>Every condition it asks about, each once: not-with first, then clear-first.</summary>
    public IEnumerable<Mention<ConditionId>> Contraindications => NotWith.Concat(ClearFirst).DistinctBy(c => c.Value);
}

/// <param name="Why">What stands before the set-up: why the exercise is there.</param>
/// <param name="SetUp">How to get into the start.</param>
/// <param name="Do">What to do.</param>
/// <param name="More">Whatever the coach wrote under other headings, those headings included.</param>
public sealed record ExerciseText(Prose Why, Prose SetUp, Prose Do, Prose More)
{
    /// <summary>A picture of the start, or, where it cannot be shown, its words; null where the exercise names none.</summary>
    public Inline? Start { get; init; }

    /// <summary>Likewise of the end.</summary>
    public Inline? End { get; init; }

    /// <summary>Start and end, as far as there are any.</summary>
    public IEnumerable<Inline> Pair => new[] { Start, End }.OfType<Inline>();

    /// <summary>The parts that tell somebody to move.</summary>
    public Series<Prose> Instructions => [SetUp, Do, More];

    public ExerciseText With(Func<Inline, Inline> change) =>
        new(Why.With(change), SetUp.With(change), Do.With(change), More.With(change))
        {
            Start = Start is null ? null : change(Start),
            End = End is null ? null : change(End),
        };

    /// <summary>A translation with the pictures of what it translates, in its own words as far as it has them.</summary>
    public ExerciseText WithPairOf(ExerciseText original) =>
        this with
        {
            Start = Said(original.Start, Start),
            End = Said(original.End, End),
        };

    private static Inline? Said(Inline? picture, Inline? words) =>
        (picture, words) is (Inline.Picture shown, Inline.Plain said) ? shown with { Shows = said.Words } : picture;
}

/// <param name="Mode">Whose reading counts; null where nothing is said, and the smaller of both is taken.</param>
/// <param name="AtLeast">In the motion's unit.</param>
public sealed record NeededRange(string Motion, RangeMode? Mode, decimal AtLeast, Location At);

/// <summary>What an exercise is for in the order of training a joint.</summary>
public enum Stage
{
    Prepare,
    Gain,
    Strengthen,
    Control,
    Load,
}

public enum Position
{
    Supine,
    Prone,
    SideLying,
    HandsAndKnees,
    Kneeling,
    HalfKneeling,
    FloorSitting,
    Sitting,
    Standing,
    SplitStance,
    Squat,
    Hanging,
}

/// <summary>Where the body is, as far as getting up and down is concerned.</summary>
public enum Height
{
    Floor,
    Seat,
    Feet,
}

public static class Positions
{
    public static Height HeightOf(this Position position) =>
        position switch
        {
            Position.Sitting => Height.Seat,
            Position.Standing or Position.SplitStance or Position.Squat or Position.Hanging => Height.Feet,
            _ => Height.Floor,
        };
}
