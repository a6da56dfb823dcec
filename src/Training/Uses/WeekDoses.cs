using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Lines and envelopes → the dose of each week.</summary>
internal sealed class WeekDoses(Programme programme, Stances stances, PracticeSettings settings)
{
    /// <summary>The weeks of a use. An entry under <c>by-week</c> holds until the next one; before the first nothing is done.
    /// Without a line the dose grows evenly over the weeks of use, that of a version over the weeks from its entry to the next.
    /// None where a line could not be understood, or some side could not be resolved: then its name is said.</summary>
    /// <param name="done">The exercise, or its version.</param>
    public (Series<WeekDose> Weeks, SideName? Unresolved) Of(Exercise done, ProgrammeUse written, ExerciseVersion? version)
    {
        if (done.Dose.Dose is not { } envelope || written.ByWeek.Any(l => l.Dose.Dose is null))
            return ([], null);
        var weeks = Written(done, envelope, written, version).ToArray();
        return weeks.SelectMany(w => Unresolved(w.Dose)).FirstOrDefault() is { } name
            ? ([], name)
            : (weeks.Select(w => Settled(w.Week, w.Dose, written, w.Source)).ToSeries(), null);
    }

    private IEnumerable<(int Week, Dose Dose, WeekSource Source)> Written(
        Exercise done,
        Dose envelope,
        ProgrammeUse written,
        ExerciseVersion? version
    )
    {
        var (from, until) = (written.FromWeek ?? 1, written.UntilWeek ?? programme.Weeks);
        var named = written.ByWeek.Select(l => l.Week).Concat(written.Versions.Select(v => v.Week)).Order().ToArray();
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
            if (written.Side is { } side)
                dose = DoseInheritance.WithSide(dose, side.Value);
            if (written.Rounds is { } rounds)
                dose = InRounds(dose, rounds);
            yield return (week, dose, new(line?.Dose, line?.Dose.At ?? done.Dose.At));
        }
    }

    private WeekDose Settled(int week, Dose dose, ProgrammeUse written, WeekSource source)
    {
        var settled = dose.Settled(name => stances.Resolve(name) ?? throw new InvalidOperationException($"No side '{name}'."));
        var lighter = programme.Lighter.Contains(week);
        if (lighter)
            settled = DoseGrowth.Lighter(settled, settings.LighterShare);
        return new(
            week,
            settled,
            dose.Terms.Side is SideTerm.On(var one) ? stances.RoleOf(one) : null,
            Timeline.SwitchOf(settled, settings.Dose),
            written.Rounds is not null,
            lighter,
            WeekDose.Count(settled, written.Rounds is not null, settings.Dose),
            Aside.Of(source)
        );
    }

    /// <summary>One set in each round; what stands between the sets of an exercise done by itself falls away, and so do the sets
    /// that one side has more.</summary>
    private static Dose InRounds(Dose dose, Rounds rounds) =>
        TermEffect.DropIdle(dose with { Sets = new(rounds.Times), Terms = dose.Terms with { Rest = null, Plus = null } });

    /// <summary>The names of sides in a dose that mean no side of this client.</summary>
    private IEnumerable<SideName> Unresolved(Dose dose)
    {
        if (dose.Terms.Side is SideTerm.On(var one) && stances.Resolve(one) is null)
            yield return one;
        if (dose.Terms.Plus is { } plus && stances.Resolve(plus.Side) is null)
            yield return plus.Side;
    }
}
