using System.Globalization;
using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Domain;

/// <summary>Made lines over made weeks with lighter ones anywhere: the walk is that of a second implementation, which was written
/// from the page alone before the first, and it has the properties that make it safe. Each planted fault is seen.</summary>
[Trait("Slow", "yes")]
public sealed class GrowthProofTests(ITestOutputHelper output)
{
    private const int Cases = 20_000;

    private static readonly SecondGrowth Second = new();

    /// <summary>What a case is an example of.</summary>
    private static readonly string[] Kinds =
    [
        "nothing to grow",
        "one wheel",
        "two wheels",
        "three wheels",
        "four wheels",
        "several measures",
        "ramp",
        "felt effort",
        "coarse",
        "unfinished",
        "finished",
        "no full week",
        "one full week",
        "lighter first week",
        "several lighter weeks",
        "nothing to take away",
        "52 weeks",
    ];

    private sealed record Case(Dose Line, int Weeks, int[] Lighter)
    {
        public int[] Full() => [.. Enumerable.Range(1, Weeks).Where(w => !Lighter.Contains(w))];

        public override string ToString() => $"{Line} over {Weeks} weeks, lighter {string.Join(" ", Lighter)}";
    }

    private sealed record Made(Dose[] Doses, bool[] IsUncut, int Need, bool IsFinished);

    [Fact]
    public void Both_implementations_agree_and_no_week_breaks_a_property()
    {
        var spread = Kinds.ToDictionary(k => k, _ => 0, StringComparer.Ordinal);
        var cases = MadeCases().Take(LongProof.Cases(Cases)).ToArray();
        foreach (var one in cases)
        {
            var made = Walk(one);
            Assert.Null(Broken(one, made));
            Assert.Null(Other(one, made));
            foreach (var kind in KindsOf(one, made))
                spread[kind]++;
        }

        output.WriteLine($"{cases.Length} cases: {string.Join(", ", spread.Select(s => $"{s.Key} {s.Value}"))}");
        Assert.All(spread, s => Assert.True(s.Value > 0, s.Key));
    }

    /// <summary>The formula of before, in which each number grows by itself, is seen to jump and to have lighter weeks that are
    /// not; so are smaller slips.</summary>
    [Theory]
    [InlineData("each number by itself", "jumps", "not lighter")]
    [InlineData("lighter from the week's own number", "not lighter")]
    [InlineData("never to the high end", "not finished")]
    [InlineData("a rung too far", "jumps")]
    public void A_planted_fault_is_seen(string fault, params string[] seen)
    {
        var found = MadeCases()
            .Take(1500)
            .Select(one => Broken(one, Faulty(fault, one)))
            .OfType<string>()
            .GroupBy(b => b)
            .ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        output.WriteLine($"{fault}: {string.Join(", ", found.Select(f => $"{f.Key} {f.Value}"))}");
        Assert.All(seen, kind => Assert.True(found.GetValueOrDefault(kind) > 5, kind));
    }

    private static Made Walk(Case one) =>
        Lightened(one, Gradus.Domain.Walk.Over(Ladder.Of(one.Line, DoseOf.Usual), one.Full().Length, Walked.GrowAtMost));

    private static Made Lightened(Case one, Walk walk)
    {
        var steps = one.Line.Actions.Select(GrowthStep.Of).ToArray();
        var (doses, uncut, full, at) = (new List<Dose>(), new List<bool>(), 0, 0);
        for (var week = 1; week <= one.Weeks; week++)
        {
            var lighter = one.Lighter.Contains(week);
            if (!lighter)
                at = walk.Rungs[full++];
            var dose = walk.Ladder.Rungs[at].Dose;
            var light = lighter ? LighterDose.Of(dose.Settled(), Walked.Share, steps, DoseOf.Usual) : null;
            doses.Add(light?.Dose.AsDose ?? dose);
            uncut.Add(light is { IsLighter: false });
        }

        return new([.. doses], [.. uncut], walk.Need, walk.IsFinished);
    }

    /// <summary>The property that a case breaks; null where it breaks none.</summary>
    private static string? Broken(Case one, Made made)
    {
        var full = one.Full();
        foreach (var week in full)
            if (Envelope.Compare(one.Line, made.Doses[week - 1]).Count > 0)
                return "outside";
        if (full.Length > 0 && made.Doses[full[0] - 1] != one.Line.Low())
            return "does not begin low";
        if (full.Length > 1 && made.Need <= full.Length && made.Doses[full[^1] - 1] != one.Line.High())
            return "not finished";
        var rungs = Ladder.Of(one.Line, DoseOf.Usual).Rungs.Select(r => r.Dose).ToList();
        foreach (var (before, now) in full.Zip(full.Skip(1)))
        {
            var (was, done) = (made.Doses[before - 1], made.Doses[now - 1]);
            if (Work(done).Since(Work(was)).IsWithin(Walked.GrowAtMost))
                continue;
            if (rungs.LastIndexOf(was) + 1 != rungs.IndexOf(done))
                return "jumps";
        }

        for (var week = 2; week <= one.Weeks; week++)
        {
            if (
                !one.Lighter.Contains(week)
                || full.LastOrDefault(w => w < week) is not (> 0 and var last)
                || made.IsUncut[week - 1]
            )
                continue;
            if (!Work(made.Doses[week - 1]).Since(Work(made.Doses[last - 1])).IsAtMost(LighterDose.Enough))
                return "not lighter";
        }

        return null;
    }

    /// <summary>Where the second implementation says something else.</summary>
    private static string? Other(Case one, Made made)
    {
        var line = LineOf(one.Line);
        var other = Second.Walk(line, one.Weeks, one.Lighter);
        if (other.Need != made.Need || (one.Full().Length > 0 && other.Reached != made.IsFinished))
            return $"{one}: needs {made.Need} and {other.Need} weeks";
        foreach (var week in other.Weeks)
        {
            var (own, its) = (KeyOf(made.Doses[week.Number - 1]), KeyOf(week.Dose, line));
            if (own != its || week.NothingTaken != made.IsUncut[week.Number - 1])
                return $"{one}: week {week.Number} is {own} and {its}";
        }

        return null;
    }

    private static Made Faulty(string fault, Case one)
    {
        var made = Walk(one);
        var full = one.Full();
        Dose Old(int week) =>
            one.Line.At(c => c.Low + (int)Math.Floor(((c.High - c.Low) * (week - 1m) / Math.Max(1, one.Weeks - 1)) + 0.5m));
        Dose Cut(Dose dose) =>
            TermEffect.DropIdle(dose with { Sets = new(Math.Max(1, (int)Math.Floor((dose.Sets.Low * 0.6m) + 0.5m))) });
        return fault switch
        {
            "each number by itself" => made with
            {
                Doses = [.. Enumerable.Range(1, one.Weeks).Select(w => one.Lighter.Contains(w) ? Cut(Old(w)) : Old(w))],
                IsUncut = new bool[one.Weeks],
            },
            "lighter from the week's own number" => made with
            {
                Doses = [.. made.Doses.Select((d, i) => one.Lighter.Contains(i + 1) ? Cut(Old(i + 1)) : d)],
            },
            "never to the high end" => made with
            {
                Doses = [.. made.Doses.Select((d, i) => full.Length > 0 && i + 1 == full[^1] ? one.Line.Low() : d)],
            },
            _ => made with
            {
                Doses = [.. made.Doses.Select((d, i) => full.Length > 2 && i + 1 == full[1] ? one.Line.High() : d)],
            },
        };
    }

    private static IEnumerable<string> KindsOf(Case one, Made made)
    {
        var work = Work(one.Line.Low());
        var wheels = new[]
        {
            one.Line.Actions.Any(a => !a.Amount.Number.IsSingle),
            one.Line.Parts.Any(p => !p.Times.IsSingle) || one.Line.Actions.Any(a => a.Times is { IsSingle: false }),
            !one.Line.Sets.IsSingle,
            one.Line.Actions.Any(a => a.Effort is { IsSettled: false }),
        }.Count(w => w);
        yield return wheels == 0 ? Kinds[0] : Kinds[wheels];
        if (work.Measures.Count(m => m.Amount > 0) > 1)
            yield return "several measures";
        if (one.Line.Actions.Any(a => a.Effort is Effort.Ramp))
            yield return "ramp";
        if (one.Line.Actions.Any(a => a.Effort is Effort.Felt))
            yield return "felt effort";
        var full = one.Full();
        if (full.Zip(full.Skip(1)).Any(p => !Work(made.Doses[p.Second - 1]).Since(Work(made.Doses[p.First - 1])).IsWithin(30)))
            yield return "coarse";
        yield return full.Length == 0 ? "no full week"
        : made.IsFinished ? "finished"
        : "unfinished";
        if (full.Length == 1)
            yield return "one full week";
        if (one.Lighter.Contains(1))
            yield return "lighter first week";
        if (one.Lighter.Length > 1)
            yield return "several lighter weeks";
        if (made.IsUncut.Any(u => u))
            yield return "nothing to take away";
        if (one.Weeks == 52)
            yield return "52 weeks";
    }

    /// <summary>The same lines and weeks on every run; without those whose numbers allow more choices than a slow judge can look
    /// through.</summary>
    private static IEnumerable<Case> MadeCases()
    {
        var dice = new Dice(77);
        foreach (var dose in GeneratedLines.Take(40_000, seed: 14).Select(l => DoseOf.Line(l.Text)))
        {
            var weeks = dice.OneIn(40) ? 52 : dice.Between(1, 13);
            var lighter = dice.OneIn(3) ? [] : Enumerable.Range(1, weeks).Where(_ => dice.OneIn(5)).ToArray();
            if (dice.OneIn(60))
                lighter = [.. Enumerable.Range(1, weeks)];
            var choices = dose
                .Actions.Select(a => a.Times ?? new(1))
                .Concat(dose.Parts.Select(p => p.Times))
                .Aggregate(1L, (all, range) => all * (range.High - range.Low + 1));
            if (
                choices <= 60
                && dose.Sets.High - dose.Sets.Low <= 12
                && dose.Actions.All(a => a.Amount.Number.High - a.Amount.Number.Low <= 300)
            )
                yield return new(dose, weeks, lighter);
        }
    }

    private static SideWork Work(Dose dose) => SideWork.Of(dose.Settled(), DoseOf.Usual);

    private static GLine LineOf(Dose dose) =>
        new(
            dose.Sets.Low,
            dose.Sets.High,
            [
                .. dose.Parts.Select(p => new GPart(
                    p is DosePart.Group ? RangeOf(p.Times) : null,
                    [.. p.Actions.Select(ActionOf)]
                )),
            ],
            dose.Terms.Tempo is { } tempo ? new([tempo.Seconds.Value]) : null
        );

    private static GAction ActionOf(DoseAction action) =>
        new(
            Enum.Parse<GVerb>(action.Verb.ToString()),
            action.Times is { } times ? RangeOf(times) : null,
            RangeOf(action.Amount.Number),
            Enum.Parse<GUnit>(action.Amount.Unit.ToString()),
            action.Effort?.Match<GEffort>(
                steady => GEffort.Steady(steady.Percent.Low, steady.Percent.High),
                ramp => GEffort.Ramp(RangeOf(ramp.First), RangeOf(ramp.Last), ramp.Steps),
                felt => GEffort.Felt(felt.Rating.Low, felt.Rating.High)
            )
        );

    private static GRange RangeOf(Count range) => new(range.Low, range.High);

    private static string Joined<T>(IEnumerable<T> all) => string.Join(",", all);

    private static string KeyOf(Dose dose) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{dose.Sets} {Joined(dose.Parts.Select(p => p.Times))} {Joined(dose.Actions.Select(a => a.Times ?? new(1)))} "
                + $"{Joined(dose.Actions.Select(a => a.Amount.Number))} {Joined(dose.Actions.Select(EndsOf))}"
        );

    private static string EndsOf(DoseAction action) =>
        action.Effort?.Match(s => $"{s.Percent}-{s.Percent}", r => $"{r.First}-{r.Last}", f => $"{f.Rating}-{f.Rating}") ?? "0-0";

    private static string KeyOf(GDose dose, GLine line) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{dose.Sets} {string.Join(",", dose.Groups)} {string.Join(",", dose.Times)} {string.Join(",", dose.Amounts)} "
                + $"{string.Join(",", line.Actions.Select((_, i) => $"{dose.First[i]}-{dose.Last[i]}"))}"
        );
}
