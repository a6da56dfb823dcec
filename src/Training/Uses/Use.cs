using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>One exercise in one session of one client's programme, with the dose of every week it is done in.</summary>
/// <param name="Exercise">The one that is done: of a version the easier or harder one, not the one that the coach named.</param>
/// <param name="Session">Its session's number, from 1, among all sessions of the programme.</param>
/// <param name="Version">Null where it is the exercise that the coach named.</param>
/// <param name="Weeks">In rising order; a week in which it is not done is missing. Empty where a dose line could not be
/// understood or a side could not be resolved.</param>
/// <param name="Source">As the coach wrote it.</param>
public sealed record Use(
    Drill Exercise,
    int Session,
    ExerciseVersion? Version,
    Series<WeekDose> Weeks,
    Aside<ProgrammeUse> Source
)
{
    /// <summary>What stands against it, in the order in which the conditions are asked; empty where nothing does, or nobody has
    /// screened it yet.</summary>
    public Series<Objection> Against { get; init; } = [];

    /// <summary>What of it a clinician asked to be left out.</summary>
    public Series<RestrictionBreach> Restricted { get; init; } = [];

    /// <summary>A name of a side in its dose that means no side of this client, so that nothing can be planned; null where there
    /// is none.</summary>
    public SideName? Unresolved { get; init; }

    /// <summary>How its dose grows, a span for each time that it does by itself; empty where it follows the use of another
    /// session, and where nothing of it can grow.</summary>
    public Series<UseGrowth> Growth { get; init; } = [];

    /// <exception cref="InvalidOperationException">It is not done in that week.</exception>
    public SettledDose DoseIn(int week) => Weeks.First(w => w.Week == week).Dose;

    public ProgrammeUse Written => Source.Value;

    public Location At => Written.Exercise.At;

    /// <summary>The sides at work in any week. A dose without a side works both, as far as a body is concerned.</summary>
    public IEnumerable<Side> Sides => Weeks.SelectMany(w => w.Dose.Sides.All).Distinct();
}

/// <summary>The dose of one week.</summary>
/// <param name="Role">The role whose side it is done on; null for left, right, two sides or none.</param>
/// <param name="Switch">Between the sides: the practice's own where the dose names none.</param>
/// <param name="InRounds">Whether the sets are done one in each round, among those of other uses.</param>
/// <param name="Lightness">Whether it is a lighter week, and what of it.</param>
/// <param name="Counted">What the dose amounts to; null where it takes longer than 4 h.</param>
/// <param name="Source">Where it is written.</param>
public sealed record WeekDose(
    int Week,
    SettledDose Dose,
    RoleMeant? Role,
    Seconds Switch,
    bool InRounds,
    Lightness Lightness,
    DoseMeasures? Counted,
    Aside<WeekSource> Source
)
{
    public bool IsLighter => Lightness != Lightness.Full;

    /// <summary>The week's own line, where there is one.</summary>
    public WrittenDose? Line => Source.Value.Line;

    /// <summary>The place of that line, or of the exercise's own dose.</summary>
    public Location At => Source.Value.At;

    /// <exception cref="InvalidOperationException">The dose takes longer than 4 h.</exception>
    public DoseMeasures Measures => Counted ?? throw new InvalidOperationException("The dose takes longer than 4 h.");

    /// <summary>What it gives to each side; one entry without a side where there is none.</summary>
    public Series<(Side? Side, WorkMeasures Work)> BySide =>
        Dose.Sides.Order switch
        {
            SideOrder.None => [(null, Measures.Unsided)],
            SideOrder.One => [(Dose.Sides.First, Measures.Unsided)],
            SideOrder.Each or SideOrder.Alternate or SideOrder.Both =>
            [
                (Dose.Sides.First, Measures.First),
                (Dose.Sides.First.Other(), Measures.Second),
            ],
        };

    /// <summary>The dose of one round.</summary>
    public SettledDose OneSet => OneSetOf(Dose);

    /// <summary>The same week with another dose.</summary>
    public WeekDose Shorter(SettledDose dose, DoseSettings settings) =>
        this with
        {
            Dose = dose,
            Counted = Count(dose, InRounds, settings),
        };

    /// <summary>In rounds every set has the change of sides to itself, and the rests belong to the rounds.</summary>
    internal static DoseMeasures? Count(SettledDose dose, bool inRounds, DoseSettings settings)
    {
        if (Timeline.IsTooLong(dose, settings))
            return null;
        var whole = DoseMeasures.Of(dose, settings);
        return inRounds
            ? whole with
            {
                Seconds = new(dose.Sets * DoseMeasures.Of(OneSetOf(dose), settings).Seconds.Value),
            }
            : whole;
    }

    private static SettledDose OneSetOf(SettledDose dose) => dose.With(d => d with { Sets = new(1) });
}

/// <summary>Where the dose of a week is written.</summary>
/// <param name="Line">The week's line; null where the dose is the exercise's own.</param>
public sealed record WeekSource(WrittenDose? Line, Location At);
