namespace Gradus.Domain;

/// <summary>A settled dose as the steps somebody goes through, in order. The one clock: every time of a dose is the sum of
/// these.</summary>
public sealed record Timeline(Series<TimelineStep> Steps)
{
    public Seconds Seconds => new(Steps.Sum(step => step.Seconds.Value));

    /// <summary>Under each side all sets of the first side come first, those of <c>plus</c> with them; between alternate sets
    /// stands the rest where it is at least as long as the switch, otherwise a switch.</summary>
    /// <exception cref="ArgumentException">The dose takes longer than 4 h.</exception>
    public static Timeline Of(SettledDose dose, DoseSettings settings) =>
        IsTooLong(dose, settings)
            ? throw new ArgumentException("The dose takes longer than 4 h.", nameof(dose))
            : new(StepsOf(dose, settings).ToSeries());

    /// <summary>Whether the steps come to more than 4 h. No more of them are counted than it takes to know.</summary>
    public static bool IsTooLong(SettledDose dose, DoseSettings settings)
    {
        long sum = 0;
        return StepsOf(dose, settings).Any(step => (sum += step.Seconds.Value) > DoseBounds.Longest.Value);
    }

    /// <summary>Between the sides: the practice's own where the line names none.</summary>
    public static Seconds SwitchOf(SettledDose dose, DoseSettings settings) => dose.Switch ?? settings.Switch;

    private static IEnumerable<TimelineStep> StepsOf(SettledDose dose, DoseSettings settings)
    {
        var steps = dose.Sides.Order switch
        {
            SideOrder.Each => EachSide(dose, settings),
            SideOrder.Alternate => AlternateSides(dose, settings),
            SideOrder.None or SideOrder.One or SideOrder.Both => OneSide(dose, settings, dose.Sides.Begins, dose.Sets),
        };
        return steps.Where(step => step.Seconds > Seconds.Zero);
    }

    private static IEnumerable<TimelineStep> EachSide(SettledDose dose, DoseSettings settings)
    {
        var (first, second) = (dose.Sides.First, dose.Sides.First.Other());
        foreach (var step in OneSide(dose, settings, first, dose.Sets + dose.Sides.MoreOnFirst))
            yield return step;
        yield return new TimelineStep.Switch(second, SwitchOf(dose, settings));
        foreach (var step in OneSide(dose, settings, second, dose.Sets))
            yield return step;
    }

    private static IEnumerable<TimelineStep> OneSide(SettledDose dose, DoseSettings settings, Side? side, int sets)
    {
        for (var set = 1; set <= sets; set++)
        {
            if (set > 1)
                yield return new TimelineStep.Rest(side, DoseTime.Rest(dose));
            foreach (var step in OneSet(dose, settings, side, set, sets))
                yield return step;
        }
    }

    private static IEnumerable<TimelineStep> AlternateSides(SettledDose dose, DoseSettings settings)
    {
        var (first, second) = (dose.Sides.First, dose.Sides.First.Other());
        var (rest, change) = (DoseTime.Rest(dose), SwitchOf(dose, settings));
        for (var set = 1; set <= dose.Sets; set++)
        {
            if (set > 1 && rest >= change)
                yield return new TimelineStep.Rest(first, rest);
            if (set > 1 && rest < change)
                yield return new TimelineStep.Switch(first, change);
            foreach (var step in OneSet(dose, settings, first, set, dose.Sets))
                yield return step;
            yield return new TimelineStep.Switch(second, change);
            foreach (var step in OneSet(dose, settings, second, set, dose.Sets))
                yield return step;
        }
    }

    private static IEnumerable<TimelineStep> OneSet(SettledDose dose, DoseSettings settings, Side? side, int set, int sets) =>
        from part in dose.Parts
        from round in Enumerable.Range(1, part.Times)
        from action in part.Actions
        let place = new StepPlace(set, sets, round, part.Times, 1)
        from step in Repetitions(action, dose, DoseTime.Once(action, dose, settings), side, place)
        select step;

    private static IEnumerable<TimelineStep> Repetitions(
        SettledAction action,
        SettledDose dose,
        Seconds once,
        Side? side,
        StepPlace place
    )
    {
        for (var repetition = 1; repetition <= (action.Times ?? 1); repetition++)
        {
            var here = place with { Repetition = repetition };
            if (repetition > 1)
                yield return new TimelineStep.Pause(side, DoseTime.Pause(dose));
            if (action.Effort is SettledEffort.Ramp { Steps: var k } ramp)
            {
                for (var i = 1; i <= k; i++)
                    yield return new TimelineStep.Work(side, new(once.Value / k), here, i, ramp.PercentAt(i), action);
            }
            else
            {
                var percent = (action.Effort as SettledEffort.Steady)?.Percent;
                yield return new TimelineStep.Work(side, once, here, null, percent, action);
            }
        }
    }
}
