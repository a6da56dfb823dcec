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

    /// <exception cref="ArgumentException">The dose takes longer than 4 h.</exception>
    public static DoseMeasures Of(SettledDose dose, DoseSettings settings)
    {
        var seconds = Timeline.Of(dose, settings).Seconds;
        var set = dose.Parts.Select(part => SetOf(part, dose, settings)).Aggregate(WorkMeasures.None, (all, part) => all + part);
        var side = set * dose.Sets;
        var (first, second, unsided) = dose.Sides.Order switch
        {
            SideOrder.Each => (set * (dose.Sets + dose.Sides.MoreOnFirst), side, WorkMeasures.None),
            SideOrder.Alternate or SideOrder.Both => (side, side, WorkMeasures.None),
            SideOrder.None or SideOrder.One => (WorkMeasures.None, WorkMeasures.None, side),
        };
        return new(seconds, dose.Actions.Any(a => IsAbout(a, dose)), first, second, unsided);
    }

    private static WorkMeasures SetOf(SettledPart part, SettledDose dose, DoseSettings settings) =>
        part.Actions.Select(action => WorkMeasures.Of(action, DoseTime.Once(action, dose, settings)))
            .Aggregate(WorkMeasures.None, (all, action) => all + action) * part.Times;

    private static bool IsAbout(SettledAction action, SettledDose dose) =>
        action.Unit switch
        {
            AmountUnit.Reps => dose.Tempo is not { IsAbout: false },
            AmountUnit.Metres => true,
            AmountUnit.Seconds or AmountUnit.Breaths => false,
        };
}
