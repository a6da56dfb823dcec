namespace Gradus.Domain;

/// <summary>Programme → uses: every week's dose settled, every side the client's own.</summary>
public static class Uses
{
    /// <summary>The uses of a client's programme in order. An exercise that could not be read has none; a side that cannot be resolved
    /// keeps its name, for the rule side-unresolved to find.</summary>
    public static Series<Use> Of(Practice practice, Client client)
    {
        var sport = practice.Find(client.Sport.Value);
        var settings = practice.Card.Settings;
        var uses =
            from session in client.Programme.Sessions.Index()
            from written in session.Item.Do
            let exercise = practice.Find(written.Exercise.Value)
            where exercise is not null
            select new Use(exercise, written, session.Index + 1, Weeks(exercise, written, client, sport, settings));
        return uses.ToSeries();
    }

    private static Series<WeekDose> Weeks(Exercise exercise, ProgrammeUse written, Client client, Sport? sport, PracticeSettings settings)
    {
        if (exercise.Dose.Dose is not { } envelope || written.ByWeek.Any(l => l.Dose.Dose is null)) return [];
        var (first, last) = (written.FromWeek ?? 1, written.UntilWeek ?? client.Programme.Weeks);
        var weeks = new List<WeekDose>();
        for (var week = first; week <= last; week++)
        {
            var line = written.ByWeek.LastOrDefault(l => l.Week <= week);
            if (line is null && written.ByWeek.Count > 0) continue;
            var dose = line?.Dose.Dose is { } own ? DoseInheritance.Complete(own, envelope).Low() : DoseGrowth.At(envelope, week, first, last);
            if (written.Side is { } side) dose = DoseInheritance.WithSide(dose, SideNames.TermOf(side.Value));
            if (client.Programme.Lighter.Contains(week)) dose = DoseGrowth.Lighter(dose, settings.LighterShare);
            weeks.Add(new(week, Resolved(dose, sport, client.Stance), (dose.Terms.Side as SideTerm.On)?.Name, line?.Dose, line?.Dose.At ?? exercise.Dose.At));
        }

        return weeks.ToSeries();
    }

    private static Dose Resolved(Dose dose, Sport? sport, Side stance)
    {
        var terms = dose.Terms;
        if (terms.Side is SideTerm.On(var name) && SideNames.Resolve(name, sport, stance) is { } side)
            terms = terms with { Side = new SideTerm.On(side.Word()) };
        if (terms.Plus is { } plus && SideNames.Resolve(plus.Side, sport, stance) is { } first)
            terms = terms with { Plus = new(plus.Sets, first.Word()) };
        return dose with { Terms = terms };
    }
}
