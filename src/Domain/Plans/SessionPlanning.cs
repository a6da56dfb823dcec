namespace Gradus.Domain;

/// <summary>The uses of one session in one week → the steps somebody goes through, to the second.</summary>
internal static class SessionPlanning
{
    /// <summary>Weeks with the same steps together, in the order of their first week. A week in which nothing of the session is done has none.</summary>
    public static Series<PlannedWeeks> WeeksOf(IReadOnlyList<Use> uses, int weeks, PracticeSettings settings, Words words)
    {
        var byWeek = Enumerable.Range(1, weeks)
            .Select(week => (week, doses: DosesOf(uses, week)))
            .Where(w => w.doses.Count > 0)
            .Select(w => (w.week, steps: StepsOf(w.doses, settings, words).ToSeries(), about: w.doses.Any(d => DoseMeasures.Of(d.Dose, settings.Dose).About)));
        return byWeek.GroupBy(w => (w.steps, w.about)).Select(same =>
        {
            var shared = same.Select(w => w.week).ToSeries();
            return new PlannedWeeks(shared, words.Weeks(shared), same.Key.steps, same.Key.about);
        }).ToSeries();
    }

    private static List<(Use Use, Dose Dose)> DosesOf(IReadOnlyList<Use> uses, int week) =>
        [.. uses.SelectMany(use => use.Weeks.Where(w => w.Week == week).Select(w => (use, w.Dose)))];

    private static IEnumerable<Step> StepsOf(List<(Use Use, Dose Dose)> doses, PracticeSettings settings, Words words)
    {
        Exercise? before = null;
        foreach (var (use, dose) in doses)
        {
            var exercise = use.Exercise;
            var first = dose.Terms.Side is null or SideTerm.Both ? (Side?)null : Use.SidesOf(dose)[0];
            if (before is not null && TransitionBetween(before, exercise, settings) is { Value: > 0 } change) yield return Made(StepKind.Transition, first, change);
            if (settings.GetReady.Value > 0) yield return Made(StepKind.GetReady, first, settings.GetReady);
            foreach (var step in Timeline.Of(dose, settings.Dose).Steps)
            {
                var side = step.Side is { } ordered ? Use.SidesOf(dose)[ordered == DoseSide.First ? 0 : 1] : first;
                var detail = step is TimelineStep.Work work ? StepWords.Detail(work, dose, SetsOf(dose, step.Side), words) : "";
                yield return Made(step.Kind, side, step.Seconds) with { Detail = detail };
            }

            before = exercise;

            Step Made(StepKind kind, Side? side, Seconds seconds) => new(kind, exercise.Id, side, seconds, StepWords.Of(kind, exercise, side, words), "");
        }
    }

    private static int SetsOf(Dose dose, DoseSide? side) => dose.Sets.Low + (side == DoseSide.First ? dose.Terms.Plus?.Sets ?? 0 : 0);

    /// <summary>The short one where position and equipment stay, the long one between the floor and standing, the middle one otherwise
    /// (dose.md, Arithmetic).</summary>
    private static Seconds TransitionBetween(Exercise from, Exercise to, PracticeSettings settings)
    {
        var heights = (from.Position.HeightOf(), to.Position.HeightOf());
        if (heights is (Height.Floor, Height.Feet) or (Height.Feet, Height.Floor)) return settings.TransitionStanding;
        var stays = from.Position == to.Position && from.Equipment.ToHashSet().SetEquals(to.Equipment);
        return stays ? settings.Transition : settings.TransitionChange;
    }
}
