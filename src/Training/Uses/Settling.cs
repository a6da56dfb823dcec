using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Lines and envelopes → the dose of each week.</summary>
internal sealed class Settling(Programme programme, Playing playing, PracticeSettings settings)
{
    /// <summary>The weeks of a use. An entry under <c>by-week</c> holds until the next one; before the first nothing is done.
    /// Without a line the dose grows evenly over the weeks of use, that of a version over the weeks from its entry to the
    /// next.</summary>
    /// <param name="done">The exercise, or its version.</param>
    public Series<WeekDose> Weeks(Exercise done, ProgrammeUse written, ExerciseVersion? version)
    {
        if (done.Dose.Dose is not { } envelope || written.ByWeek.Any(l => l.Dose.Dose is null))
            return [];
        var (from, until) = (written.FromWeek ?? 1, written.UntilWeek ?? programme.Weeks);
        var named = written.ByWeek.Select(l => l.Week).Concat(written.Versions.Select(v => v.Week)).Order().ToArray();
        var weeks = new List<WeekDose>();
        for (var week = from; week <= until; week++)
        {
            var entry = named.LastOrDefault(n => n <= week);
            if (entry == 0 && named.Length > 0)
                continue;
            if (written.Versions.FirstOrDefault(v => v.Week == entry)?.Version != version)
                continue;
            var line = written.ByWeek.FirstOrDefault(l => l.Week == entry);
            var (first, last) = version is null
                ? (from, until)
                : (
                    Math.Max(from, entry),
                    Math.Min(until, named.Where(n => n > week).Select(n => n - 1).DefaultIfEmpty(until).First())
                );
            var dose = line?.Dose.Dose is { } own
                ? DoseInheritance.Complete(own, envelope).Low()
                : DoseGrowth.At(envelope, week, first, last);
            weeks.Add(OfWeek(week, dose, written, line, line?.Dose.At ?? done.Dose.At));
        }

        return weeks.ToSeries();
    }

    private WeekDose OfWeek(int week, Dose dose, ProgrammeUse written, WeekLine? line, Location at)
    {
        if (written.Side is { } side)
            dose = DoseInheritance.WithSide(dose, SideNames.TermOf(side.Value));
        if (written.Rounds is { } rounds)
            dose = InRounds(dose, rounds);
        var lighter = programme.Lighter.Contains(week);
        if (lighter)
            dose = DoseGrowth.Lighter(dose, settings.LighterShare);
        return new(
            week,
            Resolved(dose),
            dose.Terms.Side is SideTerm.On(var name) ? playing.RoleOf(name) : null,
            line?.Dose,
            at,
            written.Rounds is not null,
            lighter
        );
    }

    /// <summary>One set in each round; what stands between the sets of an exercise done by itself falls away, and so do the sets
    /// that one side has more.</summary>
    private static Dose InRounds(Dose dose, Rounds rounds) =>
        TermEffect.DropIdle(dose with { Sets = new(rounds.Times), Terms = dose.Terms with { Rest = null, Plus = null } });

    private Dose Resolved(Dose dose)
    {
        var terms = dose.Terms;
        if (terms.Side is SideTerm.On(var name) && playing.Resolve(name) is { } side)
            terms = terms with { Side = new SideTerm.On(side.Word()) };
        if (terms.Plus is { } plus && playing.Resolve(plus.Side) is { } first)
            terms = terms with { Plus = new(plus.Sets, first.Word()) };
        return dose with { Terms = terms };
    }
}
