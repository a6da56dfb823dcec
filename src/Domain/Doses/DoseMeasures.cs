namespace Gradus.Domain;

/// <summary>What a settled dose amounts to.</summary>
/// <param name="Seconds">Dose time, without get ready and transitions.</param>
/// <param name="About">Whether an average stands in it: reps without a tempo or with a fast beat, metres.</param>
/// <param name="First">The work of the first side: the one <c>plus</c> names, otherwise left. Under both sides each side has all
/// of it.</param>
/// <param name="Second">The work of the other side.</param>
/// <param name="Unsided">The work of a dose with no side term, or with <c>on</c>.</param>
public sealed record DoseMeasures(Seconds Seconds, bool About, WorkMeasures First, WorkMeasures Second, WorkMeasures Unsided)
{
    /// <summary>Over both sides; both sides at once counts every measure twice, and the seconds once.</summary>
    public WorkMeasures Total => First + Second + Unsided;

    public Seconds StretchSeconds => Total.StretchSeconds;

    public Seconds ContractionSeconds => Total.ContractionSeconds;

    public Seconds UnratedContractionSeconds => Total.UnratedContractionSeconds;

    public decimal EffortSeconds => Total.EffortSeconds;

    public int Reps => Total.Reps;

    /// <exception cref="ArgumentException">The dose has ranges, or takes longer than 4 h.</exception>
    public static DoseMeasures Of(Dose settled, DoseSettings settings)
    {
        RequireSettled(settled, settings);
        var set = settled
            .Parts.Select(part => SetOf(part, settled.Terms, settings))
            .Aggregate(WorkMeasures.None, (all, part) => all + part);
        var sets = settled.Sets.Low;
        var side = set * sets;
        var (first, second, unsided) = settled.Terms.Side switch
        {
            SideTerm.Each => (set * (sets + (settled.Terms.Plus?.Sets ?? 0)), side, WorkMeasures.None),
            SideTerm.Alternate or SideTerm.Both => (side, side, WorkMeasures.None),
            _ => (WorkMeasures.None, WorkMeasures.None, side),
        };
        return new(
            new((int)DoseTime.Exact(settled, settings)),
            settled.Actions.Any(a => IsAbout(a, settled.Terms)),
            first,
            second,
            unsided
        );
    }

    internal static void RequireSettled(Dose dose, DoseSettings settings)
    {
        if (!dose.IsSettled)
            throw new ArgumentException("The dose still has ranges.", nameof(dose));
        if (DoseBounds.IsTooLong(dose, settings))
            throw new ArgumentException("The dose takes longer than 4 h.", nameof(dose));
    }

    private static WorkMeasures SetOf(DosePart part, DoseTerms terms, DoseSettings settings) =>
        part.Actions.Select(action => WorkMeasures.Of(action, DoseTime.Once(action, terms, settings)))
            .Aggregate(WorkMeasures.None, (all, action) => all + action) * part.Times.Low;

    private static bool IsAbout(DoseAction action, DoseTerms terms) =>
        action.Amount switch
        {
            Amount.Reps => terms.Tempo is not { IsAbout: false },
            Amount.Metres => true,
            _ => false,
        };
}
