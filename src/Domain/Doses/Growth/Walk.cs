namespace Gradus.Domain;

/// <summary>Which rung of a ladder each full week stands on: to the high end as evenly as the rungs allow, never by more than the
/// practice lets a week grow. <c>dose-line.md</c>, How it grows.</summary>
/// <param name="Ladder">What is walked.</param>
/// <param name="Rungs">Of each full week in order, from 0.</param>
/// <param name="Need">How many full weeks it takes at least to get to the high end; 1 where there is nothing to grow.</param>
public sealed record Walk(Ladder Ladder, Series<int> Rungs, int Need)
{
    /// <summary>What the target may be missed by, for logarithms are not exact.</summary>
    private const double Tiny = 1e-9;

    /// <summary>Whether the last full week is at the high end.</summary>
    public bool IsFinished => Rungs.Count > 0 && Rungs[^1] == Ladder.Rungs.Count - 1;

    /// <param name="fullWeeks">Weeks of use that are not lighter; 0 is none.</param>
    /// <param name="growAtMost">Per cent from one full week to the next. A rung that is further from the one below it is one step
    /// all the same: there is no smaller one.</param>
    public static Walk Over(Ladder ladder, int fullWeeks, int growAtMost)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fullWeeks);
        var top = ladder.Rungs.Count - 1;
        var allowed = Enumerable.Range(0, top + 1).Select(k => Allowed(ladder.Rungs, k, growAtMost).ToArray()).ToArray();
        var need = NeedOf(allowed);
        var rungs = new int[fullWeeks];
        if (fullWeeks < need)
        {
            for (var week = 1; week < fullWeeks; week++)
                rungs[week] = allowed[rungs[week - 1]][^1];
            return new(ladder, rungs.ToSeries(), need);
        }

        var (reach, target) = (ReachOf(allowed, fullWeeks), TargetsOf(ladder.Rungs));
        for (var week = 1; week < fullWeeks; week++)
        {
            var open = allowed[rungs[week - 1]].Where(j => reach[week][j]).ToArray();
            var even = target[top] * week / (fullWeeks - 1);
            rungs[week] = open.LastOrDefault(j => target[j] <= even + Tiny, open[0]);
        }

        return new(ladder, rungs.ToSeries(), need);
    }

    /// <summary>The rungs that may follow in the next full week, from itself on, in rising order.</summary>
    private static IEnumerable<int> Allowed(Series<Rung> rungs, int from, int growAtMost)
    {
        yield return from;
        for (var to = from + 1; to < rungs.Count; to++)
        {
            var within = rungs[to].Work.Since(rungs[from].Work).IsWithin(growAtMost);
            if (to == from + 1 || (within && rungs[to].At.HigherThan(rungs[from].At) <= 1))
                yield return to;

            // No measure falls along a ladder, so nothing above is within either.
            if (!within)
                yield break;
        }
    }

    private static int NeedOf(int[][] allowed)
    {
        var (need, here) = (1, new HashSet<int> { 0 });
        for (; !here.Contains(allowed.Length - 1); need++)
            here = [.. here.SelectMany(k => allowed[k])];
        return need;
    }

    /// <summary>For each full week the rungs from which the high end is still reached.</summary>
    private static bool[][] ReachOf(int[][] allowed, int weeks)
    {
        var reach = new bool[weeks][];
        for (var week = weeks - 1; week >= 0; week--)
            reach[week] =
            [
                .. allowed.Select((next, k) => week == weeks - 1 ? k == allowed.Length - 1 : next.Any(j => reach[week + 1][j])),
            ];
        return reach;
    }

    /// <summary>How far up each rung is: the growth of every rung below it, as logarithms, so that even steps are even in per
    /// cent.</summary>
    private static double[] TargetsOf(Series<Rung> rungs)
    {
        var far = new double[rungs.Count];
        for (var k = 1; k < rungs.Count; k++)
            far[k] = far[k - 1] + rungs[k].Work.Since(rungs[k - 1].Work).Log;
        return far;
    }
}
