using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Lines and envelopes → the dose of each week.</summary>
internal sealed class WeekDoses(Programme programme, Stances stances, PracticeSettings settings)
{
    /// <summary>The weeks of a use. An entry under <c>by-week</c> holds until the next one; before the first nothing is done. One
    /// that is named for a lighter week is that week's own dose, and afterwards the one before holds. Without a line the dose
    /// walks its ladder over the full weeks of use, that of a version over the weeks from its entry to the next. A lighter week
    /// is taken from the last full one before it. None where a line could not be understood, or some side could not be resolved:
    /// then its name is said.</summary>
    /// <param name="done">The exercise, or its version.</param>
    /// <param name="still">Weeks in which the dose does not grow, because other work begins.</param>
    /// <param name="lead">The use of the same exercise whose doses this one has, on its own sides; null where it walks by
    /// itself.</param>
    public SettledWeeks Of(
        Exercise done,
        ProgrammeUse written,
        ExerciseVersion? version,
        IReadOnlySet<int> still,
        Use? lead = null
    )
    {
        if (done.Dose.Dose is not { } envelope || written.ByWeek.Any(l => l.Dose.Dose is null))
            return SettledWeeks.None;
        var (open, growth) = (new List<OpenWeek>(), new List<UseGrowth>());
        foreach (var span in SpansOf(written, version))
        {
            if (span.Line is { } line)
                open.AddRange(span.Weeks.Select(w => new OpenWeek(w, Own(line, envelope), new(line.Dose, line.Dose.At))));
            else if (lead is not null)
                open.AddRange(span.Weeks.Select(w => new OpenWeek(w, Following(lead, w, envelope), new(null, done.Dose.At))));
            else
                open.AddRange(
                    Grown(span, envelope, written, still, growth)
                        .Select(g => new OpenWeek(g.Week, g.Dose, new(null, done.Dose.At)))
                );
        }

        var doses = open.Select(w => w with { Dose = Placed(w.Dose, written) }).ToArray();
        return doses.SelectMany(w => Unresolved(w.Dose)).FirstOrDefault() is { } name
            ? SettledWeeks.None with
            {
                Unresolved = name,
            }
            : new(Settled(doses, envelope, written, lead).ToSeries(), growth.ToSeries(), null);
    }

    /// <summary>The weeks of use by what holds in them.</summary>
    private IEnumerable<Span> SpansOf(ProgrammeUse written, ExerciseVersion? version)
    {
        var (from, until) = (written.FromWeek ?? 1, written.UntilWeek ?? programme.Weeks);
        var named = programme.EntriesOf(written).ToArray();
        if (named.Length == 0)
            return version is null ? [new(Weeks(from, until), null)] : [];
        return named
            .Select((first, i) => (First: first, Last: i + 1 < named.Length ? named[i + 1] - 1 : until))
            .Where(n => written.Versions.FirstOrDefault(v => v.Week == n.First)?.Version == version)
            .Select(n => new Span(
                Weeks(Math.Max(from, n.First), Math.Min(until, n.Last)),
                written.ByWeek.FirstOrDefault(l => l.Week == n.First)
            ));
    }

    private IEnumerable<(int Week, Dose Dose)> Grown(
        Span span,
        Dose envelope,
        ProgrammeUse written,
        IReadOnlySet<int> still,
        List<UseGrowth> growth
    )
    {
        if (span.Weeks.Length == 0)
            return [];
        var ladder = Ladder.Of(written.Rounds is null ? envelope : envelope with { Sets = new(1) }, settings.Dose);
        var full = span.Weeks.Where(w => !programme.Lighter.Contains(w) && !still.Contains(w)).ToArray();
        var walked = WalkedWeeks.Over(ladder, full, settings.GrowAtMost);
        if (!envelope.IsSettled)
            growth.Add(UseGrowth.Of(walked));
        return span.Weeks.Select(week => (week, walked.DoseIn(week)));
    }

    private static Dose Own(WeekLine line, Dose envelope) =>
        line.Dose.Dose is { } own
            ? DoseInheritance.Complete(own, envelope).Low()
            : throw new InvalidOperationException("No dose.");

    /// <summary>The dose that the other use has in that week; before it begins its first, and where it is not done the last full
    /// one before.</summary>
    private static Dose Following(Use lead, int week, Dose envelope)
    {
        var dose = (lead.Weeks.LastOrDefault(w => w.Week <= week && !w.IsLighter) ?? lead.Weeks[0]).Dose.AsDose;
        return dose with
        {
            Terms = dose.Terms with { Side = envelope.Terms.Side, Plus = envelope.Terms.Plus, Switch = envelope.Terms.Switch },
        };
    }

    private static Dose Placed(Dose dose, ProgrammeUse written)
    {
        if (written.Side is { } side)
            dose = DoseInheritance.WithSide(dose, side.Value);
        return written.Rounds is { } rounds ? InRounds(dose, rounds) : dose;
    }

    private IEnumerable<WeekDose> Settled(OpenWeek[] open, Dose envelope, ProgrammeUse written, Use? lead)
    {
        SettledDose? full = null;
        foreach (var (week, dose, source) in open)
        {
            if (!programme.Lighter.Contains(week))
            {
                full = Settled(dose);
                yield return Of(week, dose, full, written, source, Lightness.Full);
            }
            else if ((OwnLighter(written, week) ?? OwnLighter(lead?.Written, week)) is { } line)
            {
                var own = Placed(Own(line, envelope), written);
                yield return Of(week, own, Settled(own), written, new(line.Dose, line.Dose.At), Lightness.ByCoach);
            }
            else
            {
                var light = LighterDose.Of(full ?? Settled(dose), settings.LighterShare, StepsOf(dose, envelope), settings.Dose);
                yield return Of(week, dose, light.Dose, written, source, light.IsLighter ? Lightness.Cut : Lightness.Uncut);
            }
        }
    }

    private WeekLine? OwnLighter(ProgrammeUse? written, int week) =>
        programme.Lighter.Contains(week) ? written?.ByWeek.FirstOrDefault(l => l.Week == week) : null;

    private WeekDose Of(int week, Dose open, SettledDose settled, ProgrammeUse written, WeekSource source, Lightness lightness) =>
        new(
            week,
            settled,
            open.Terms.Side is SideTerm.On(var one) ? stances.RoleOf(one) : null,
            Timeline.SwitchOf(settled, settings.Dose),
            written.Rounds is not null,
            lightness,
            WeekDose.Count(settled, written.Rounds is not null, settings.Dose),
            Aside.Of(source)
        );

    private SettledDose Settled(Dose dose) =>
        dose.Settled(name => stances.Resolve(name) ?? throw new InvalidOperationException($"No side '{name}'."));

    /// <summary>By how much each action of a dose grows at once: as the exercise's own, where the work is the same.</summary>
    private static int[] StepsOf(Dose dose, Dose envelope)
    {
        var (own, allowed) = (dose.Actions.ToArray(), envelope.Actions.ToArray());
        var same =
            own.Length == allowed.Length
            && own.Zip(allowed).All(p => p.First.Verb == p.Second.Verb && p.First.Amount.Unit == p.Second.Amount.Unit);
        return [.. own.Select((action, i) => GrowthStep.Of(same ? allowed[i] : action))];
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

    private static int[] Weeks(int from, int until) => [.. Enumerable.Range(from, Math.Max(0, until - from + 1))];

    /// <param name="Line">What holds in these weeks; null where the dose is the exercise's own.</param>
    private sealed record Span(int[] Weeks, WeekLine? Line);

    /// <param name="Dose">Every number single, its sides still names.</param>
    private sealed record OpenWeek(int Week, Dose Dose, WeekSource Source);
}

/// <param name="Growth">A span for each time that the exercise's own dose is walked.</param>
/// <param name="Unresolved">A name of a side that means no side of this client; then there are no weeks.</param>
internal sealed record SettledWeeks(Series<WeekDose> Weeks, Series<UseGrowth> Growth, SideName? Unresolved)
{
    public static readonly SettledWeeks None = new([], [], null);
}
