// A second, independent writing of the growth rule, from the page of the rule alone: plain and slow on purpose.

namespace Gradus.Tests.Domain;

/// <summary>The rule. Breath: seconds a breath.</summary>
internal sealed class SecondGrowth(decimal breath = 10m)
{
    private const double Tiny = 1e-9;
    private const double LightEnough = 0.75;

    /// <summary>The numbers as places on the wheels. Times: T of each action, then G of each part. Time: the position
    /// 0..n1. Effort: notches of each action.</summary>
    private sealed record Setting(int Sets, int[] Times, int Time, int[] Effort);

    /// <summary>Section 2. The measures that are not 0: ST, EF (or CO), TT in seconds, ME in metres.</summary>
    internal SortedDictionary<string, double> W(GLine line, GDose x)
    {
        var actions = line.Actions;
        var unstated = actions.Any(a => a.Contracts && a.Unit != GUnit.Metres && a.Effort is null);
        var sums = new SortedDictionary<string, decimal>(StringComparer.Ordinal);
        for (var i = 0; i < actions.Length; i++)
        {
            var a = actions[i];
            var amount = (decimal)x.Sets * x.Groups[line.PartOf[i]] * x.Times[i] * x.Amounts[i];
            var repetition = line.Tempo?.Beats.Sum() ?? 4m;
            var seconds =
                amount
                * (
                    a.Unit == GUnit.Breaths ? breath
                    : a.Unit == GUnit.Reps ? repetition
                    : 1m
                );
            var (measure, worth) = a switch
            {
                { Unit: GUnit.Metres } => ("ME", amount),
                { Verb: GVerb.Hold or GVerb.Breathe } => ("ST", seconds),
                { Contracts: true } when unstated => ("CO", seconds),
                { Contracts: true } => ("EF", seconds * Share(a.Effort!, x.First[i], x.Last[i])),
                _ => ("TT", seconds),
            };
            sums[measure] = sums.GetValueOrDefault(measure) + worth;
        }
        return new(sums.Where(s => s.Value != 0m).ToDictionary(s => s.Key, s => (double)s.Value), StringComparer.Ordinal);
    }

    /// <summary>The effort e as a part of 1.</summary>
    private static decimal Share(GEffort effort, int first, int last) =>
        effort.Kind switch
        {
            GEffortKind.Ramp => (first + last) / 200m,
            GEffortKind.Felt => first / 10m,
            _ => first / 100m,
        };

    /// <summary>The largest b/a over the measures a has (work that begins has no percentage); 1 where there is none.</summary>
    internal static double Ratio(SortedDictionary<string, double> a, SortedDictionary<string, double> b) =>
        a.Count == 0 ? 1.0 : a.Max(m => b.GetValueOrDefault(m.Key) / m.Value);

    private static bool NothingLess(SortedDictionary<string, double> before, SortedDictionary<string, double> after) =>
        before.All(m => after.GetValueOrDefault(m.Key) >= m.Value * (1 - Tiny));

    /// <summary>Section 3. All rungs, from all numbers low to all numbers high.</summary>
    internal List<GDose> Ladder(GLine line)
    {
        var times = TimesOf(line);
        var x = new Setting(line.SetsLow, times.Select(t => t.Low).ToArray(), 0, new int[line.Actions.Length]);
        var ladder = new List<GDose> { Dose(line, x) };
        while (true)
        {
            var before = W(line, Dose(line, x));
            var next = Turned(line, x)
                .Select(s => (Setting: s, Measures: W(line, Dose(line, s))))
                .Where(s => NothingLess(before, s.Measures))
                .Select(s => (s.Setting, Ratio: Ratio(before, s.Measures)))
                .ToList();
            if (next.Count == 0)
                return ladder;
            var smallest = next.Min(s => s.Ratio);
            x = next.Where(s => s.Ratio <= smallest * (1 + Tiny))
                .Select(s => s.Setting)
                .OrderByDescending(s => TimesInAll(line, s))
                .ThenBy(s => s.Time)
                .First(); // stable: then the first listed
            ladder.Add(Dose(line, x));
        }
    }

    /// <summary>The settings one notch on: the innermost wheel that is not at its high end turns, those inside it fall back to
    /// any place between low and high. None where all wheels are at their high end.</summary>
    private static IEnumerable<Setting> Turned(GLine line, Setting x)
    {
        var times = TimesOf(line);
        var efforts = line.Actions.Select(a => a.Effort?.Notches ?? 0).ToArray();
        var last = LastPosition(line);
        var positions = Enumerable.Range(0, last + 1);
        if (x.Time < last)
            return [x with { Time = x.Time + 1 }];
        if (Enumerable.Range(0, times.Length).Any(i => x.Times[i] < times[i].High))
            return from i in Enumerable.Range(0, times.Length)
                where x.Times[i] < times[i].High
                from p in positions
                select x with
                {
                    Times = OneUp(x.Times, i),
                    Time = p,
                };
        if (x.Sets < line.SetsHigh)
            return from t in AllWithin(times) from p in positions select x with { Sets = x.Sets + 1, Times = t, Time = p };
        return from i in Enumerable.Range(0, efforts.Length)
            where x.Effort[i] < efforts[i]
            from p in positions
            select x with
            {
                Effort = OneUp(x.Effort, i),
                Time = p,
            };
    }

    /// <summary>The ranges of the times wheel: T of each action in written order, then G of each part.</summary>
    private static GRange[] TimesOf(GLine line) => [.. line.Actions.Select(a => a.T), .. line.Parts.Select(p => p.G)];

    private static int[] OneUp(int[] numbers, int at) => numbers.Select((n, i) => i == at ? n + 1 : n).ToArray();

    /// <summary>Every choice of one number from each range; the first range varies slowest, each from high to low.</summary>
    private static IEnumerable<int[]> AllWithin(GRange[] ranges)
    {
        IEnumerable<int[]> all =
        [
            [],
        ];
        foreach (var r in ranges)
            all = from head in all from n in Enumerable.Range(r.Low, r.High - r.Low + 1).Reverse() select (int[])[.. head, n];
        return all;
    }

    /// <summary>How many actions one set has in all: the sum of G times T.</summary>
    private static int TimesInAll(GLine line, Setting x) =>
        line.PartOf.Select((part, i) => x.Times[i] * x.Times[line.PartOf.Length + part]).Sum();

    /// <summary>n1, the last position of the time wheel.</summary>
    private static int LastPosition(GLine line) => line.Actions.Max(a => (a.Amount.High - a.Amount.Low + a.Step - 1) / a.Step);

    /// <summary>The amount at position p, in the action's unit; at the last position its high end, and never above it.</summary>
    private static int AmountAt(GAction a, int p, int last)
    {
        if (p == 0)
            return a.Amount.Low;
        if (p == last)
            return a.Amount.High;
        var climbed = a.Grain * HalfUp((decimal)(a.Amount.High - a.Amount.Low) * p / (a.Grain * last));
        return Math.Min(a.Amount.High, a.Amount.Low + climbed);
    }

    private static int HalfUp(decimal number) => (int)Math.Floor(number + 0.5m);

    private static GDose Dose(GLine line, Setting x)
    {
        var actions = line.Actions;
        var last = LastPosition(line);
        int End(int i, Func<GEffort, GRange> end) =>
            actions[i].Effort is { } e ? Math.Min(end(e).High, end(e).Low + e.Notch * x.Effort[i]) : 0;
        return new(
            x.Sets,
            x.Times.Skip(actions.Length).ToArray(),
            x.Times.Take(actions.Length).ToArray(),
            actions.Select(a => AmountAt(a, x.Time, last)).ToArray(),
            actions.Select((_, i) => End(i, e => e.First)).ToArray(),
            actions.Select((_, i) => End(i, e => e.Last)).ToArray()
        );
    }

    /// <summary>The rungs that may follow rung k from one full week to the next; g as a part of 1.</summary>
    internal List<int> Allowed(GLine line, List<GDose> ladder, int k, decimal g) =>
        Enumerable
            .Range(k, ladder.Count - k)
            .Where(j =>
                j <= k + 1
                || (WheelsUp(ladder[k], ladder[j]) <= 1 && Ratio(W(line, ladder[k]), W(line, ladder[j])) <= 1 + (double)g + Tiny)
            )
            .ToList();

    /// <summary>How many of the four wheels have some number that is higher in b than in a.</summary>
    internal static int WheelsUp(GDose a, GDose b)
    {
        static bool Up(int[] from, int[] to) => from.Zip(to).Any(n => n.Second > n.First);
        bool[] up =
        [
            Up(a.Amounts, b.Amounts),
            Up(a.Times, b.Times) || Up(a.Groups, b.Groups),
            b.Sets > a.Sets,
            Up(a.First, b.First) || Up(a.Last, b.Last),
        ];
        return up.Count(u => u);
    }

    /// <summary>Section 4. The dose of each week 1..weeks; g and share as parts of 1.</summary>
    internal GWalk Walk(GLine line, int weeks, IReadOnlyCollection<int> lighterWeeks, decimal g = 0.3m, decimal share = 0.6m)
    {
        var ladder = Ladder(line);
        var top = ladder.Count - 1;
        var allowed = Enumerable.Range(0, ladder.Count).Select(k => Allowed(line, ladder, k, g)).ToArray();
        var m = Enumerable.Range(1, weeks).Count(w => !lighterWeeks.Contains(w));

        var need = 1;
        for (var here = new HashSet<int> { 0 }; !here.Contains(top); need++)
            here = here.SelectMany(k => allowed[k]).ToHashSet();

        var even = new double[ladder.Count]; // D
        for (var k = 1; k <= top; k++)
            even[k] = even[k - 1] + Math.Log(Ratio(W(line, ladder[k - 1]), W(line, ladder[k])));

        var reach = new HashSet<int>[m];
        for (var i = m - 1; i >= 0; i--)
            reach[i] =
                i == m - 1
                    ? [top]
                    : Enumerable.Range(0, ladder.Count).Where(k => allowed[k].Any(reach[i + 1].Contains)).ToHashSet();

        var rungs = new int[m]; // k(i); k(0) = 0
        for (var i = 1; i < m; i++)
        {
            var open = allowed[rungs[i - 1]].Where(j => m < need || reach[i].Contains(j)).ToList();
            var low = open.Where(j => even[j] <= even[top] * i / (m - 1) + Tiny).ToList();
            rungs[i] =
                m < need ? open.Max()
                : low.Count > 0 ? low.Max()
                : open.Min();
        }

        var made = new List<GWeek>();
        var (full, rung) = (0, 0); // full weeks so far; the rung of the last of them
        for (var week = 1; week <= weeks; week++)
        {
            var light = lighterWeeks.Contains(week);
            if (!light)
                rung = rungs[full++];
            var (dose, nothing) = light ? Lighter(line, ladder[rung], share) : (ladder[rung], false);
            made.Add(new(week, light, dose, light ? -1 : rung, nothing));
        }
        return new(made.ToArray(), need, m, m > 0 && rungs[m - 1] == top);
    }

    /// <summary>Section 5. The lighter dose of a full week's dose; whether some measure is still above 0.75 of it.</summary>
    internal (GDose Dose, bool NothingTaken) Lighter(GLine line, GDose full, decimal share = 0.6m)
    {
        int Less(int n) => Math.Max(1, HalfUp(n * share));
        int LessAmount(GAction a, int n) => Math.Min(n, Math.Max(a.Step, a.Grain * HalfUp(n * share / a.Grain)));
        GDose[] ways =
        [
            full with
            {
                Sets = Less(full.Sets),
            },
            full with
            {
                Times = full.Times.Select(Less).ToArray(),
                Groups = full.Groups.Select(Less).ToArray(),
            },
            full with
            {
                Amounts = line.Actions.Select((a, i) => LessAmount(a, full.Amounts[i])).ToArray(),
            },
        ];
        foreach (var way in ways)
            if (Ratio(W(line, full), W(line, way)) <= LightEnough + Tiny)
                return (way, false);
        return (ways[^1], true);
    }
}
