namespace Gradus.Domain;

/// <summary>A settled dose as the steps somebody goes through, in order.</summary>
public sealed record Timeline(Series<TimelineStep> Steps)
{
    public Seconds Seconds => new(Steps.Sum(step => step.Seconds.Value));

    /// <summary>Under each side all sets of the first side come first, those of <c>plus</c> with them; between alternate sets
    /// stands the rest where it is at least as long as the switch, otherwise a switch.</summary>
    /// <exception cref="ArgumentException">The dose has ranges, or takes longer than 4 h.</exception>
    public static Timeline Of(Dose settled, DoseSettings settings)
    {
        DoseMeasures.RequireSettled(settled, settings);
        var steps = settled.Terms.Side switch
        {
            SideTerm.Each => EachSide(settled, settings),
            SideTerm.Alternate => AlternateSides(settled, settings),
            _ => OneSide(settled, settings, null, settled.Sets.Low),
        };
        return new(steps.Where(step => step.Seconds > Seconds.Zero).ToSeries());
    }

    private static IEnumerable<TimelineStep> EachSide(Dose dose, DoseSettings settings) =>
        [
            .. OneSide(dose, settings, DoseSide.First, dose.Sets.Low + (dose.Terms.Plus?.Sets ?? 0)),
            new TimelineStep.Switch(DoseSide.Second, DoseTime.Switch(dose.Terms, settings)),
            .. OneSide(dose, settings, DoseSide.Second, dose.Sets.Low),
        ];

    private static IEnumerable<TimelineStep> OneSide(Dose dose, DoseSettings settings, DoseSide? side, int sets)
    {
        for (var set = 1; set <= sets; set++)
        {
            if (set > 1)
                yield return new TimelineStep.Rest(side, DoseTime.Rest(dose.Terms));
            foreach (var step in OneSet(dose, settings, side, set))
                yield return step;
        }
    }

    private static IEnumerable<TimelineStep> AlternateSides(Dose dose, DoseSettings settings)
    {
        var rest = DoseTime.Rest(dose.Terms);
        var change = DoseTime.Switch(dose.Terms, settings);
        for (var set = 1; set <= dose.Sets.Low; set++)
        {
            if (set > 1 && rest >= change)
                yield return new TimelineStep.Rest(DoseSide.First, rest);
            if (set > 1 && rest < change)
                yield return new TimelineStep.Switch(DoseSide.First, change);
            foreach (var step in OneSet(dose, settings, DoseSide.First, set))
                yield return step;
            yield return new TimelineStep.Switch(DoseSide.Second, change);
            foreach (var step in OneSet(dose, settings, DoseSide.Second, set))
                yield return step;
        }
    }

    private static IEnumerable<TimelineStep> OneSet(Dose dose, DoseSettings settings, DoseSide? side, int set) =>
        from part in dose.Parts
        from round in Enumerable.Range(1, part.Times.Low)
        from action in part.Actions
        from step in Repetitions(action, dose.Terms, DoseTime.Once(action, dose.Terms, settings), side, set, round)
        select step;

    private static IEnumerable<TimelineStep> Repetitions(
        DoseAction action,
        DoseTerms terms,
        Seconds once,
        DoseSide? side,
        int set,
        int round
    )
    {
        for (var repetition = 1; repetition <= (action.Times?.Low ?? 1); repetition++)
        {
            if (repetition > 1)
                yield return new TimelineStep.Pause(side, DoseTime.Pause(terms));
            if (action.Effort is Effort.Ramp { Steps: var k } ramp)
            {
                for (var i = 1; i <= k; i++)
                    yield return new TimelineStep.Work(
                        side,
                        new(once.Value / k),
                        set,
                        round,
                        repetition,
                        i,
                        PercentAt(ramp, i),
                        action
                    );
            }
            else
            {
                var percent = (action.Effort as Effort.Steady)?.Percent.Low;
                yield return new TimelineStep.Work(side, once, set, round, repetition, null, percent, action);
            }
        }
    }

    /// <summary>Efforts evenly spaced from the first to the last, both included.</summary>
    private static decimal PercentAt(Effort.Ramp ramp, int step) =>
        ramp.First.Low + ((decimal)(ramp.Last.Low - ramp.First.Low) * (step - 1) / (ramp.Steps - 1));
}
