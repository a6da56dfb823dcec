using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>One exercise in one session of one client's programme, with the dose of every week it is done in.</summary>
/// <param name="Exercise">The one that is done: of a version the easier or harder one, not the one that the coach named.</param>
/// <param name="Session">Its session's number, from 1, among all sessions of the programme.</param>
/// <param name="Version">Null where it is the exercise that the coach named.</param>
/// <param name="Weeks">In rising order; a week in which it is not done is missing. Empty where a dose line could not be
/// understood.</param>
public sealed record Use(Exercise Exercise, ProgrammeUse Written, int Session, ExerciseVersion? Version, Series<WeekDose> Weeks)
{
    public Location At => Written.Exercise.At;

    /// <summary>The sides at work in any week. A dose without a side works both, as far as a body is concerned.</summary>
    public IEnumerable<Side> Sides => Weeks.SelectMany(w => SidesOf(w.Dose)).Distinct();

    /// <summary>The first and the second side of a dose: the one that plus names first, otherwise the left; of one side that
    /// one.</summary>
    /// <param name="dose">With its sides resolved.</param>
    public static Series<Side> SidesOf(Dose dose) =>
        dose.Terms switch
        {
            { Side: SideTerm.On(var name) } => [Named(name)],
            { Plus: { } plus } => [Named(plus.Side), Named(plus.Side).Other()],
            _ => [Side.Left, Side.Right],
        };

    private static Side Named(string name) => name == "right" ? Side.Right : Side.Left;
}

/// <summary>The dose of one week: settled, its sides left or right.</summary>
/// <param name="At">Where the dose is written: the week's line, or the exercise's own dose.</param>
/// <param name="Line">The week's line, where there is one.</param>
/// <param name="Role">The role whose side it is done on; null for left, right, two sides or none.</param>
/// <param name="InRounds">Whether the sets are done one in each round, among those of other uses.</param>
/// <param name="IsLighter">Whether the week keeps only a share of the sets.</param>
public sealed record WeekDose(
    int Week,
    Dose Dose,
    RoleName? Role,
    WrittenDose? Line,
    Location At,
    bool InRounds = false,
    bool IsLighter = false
)
{
    /// <summary>What the dose amounts to. In rounds every set has the change of sides to itself, and the rests belong to the
    /// rounds.</summary>
    public DoseMeasures Measures(DoseSettings settings)
    {
        var whole = DoseMeasures.Of(Dose, settings);
        return InRounds ? whole with { Seconds = new(Dose.Sets.Low * DoseMeasures.Of(OneSet, settings).Seconds.Value) } : whole;
    }

    /// <summary>The dose of one round.</summary>
    public Dose OneSet => TermEffect.DropIdle(Dose with { Sets = new(1) });
}
