namespace Gradus.Domain;

/// <summary>A walk laid on the weeks in which a dose may grow.</summary>
/// <param name="Full">Weeks of use that are not lighter, in rising order.</param>
/// <param name="Coarse">Steps that are larger than the practice lets a week grow, because there is no smaller one.</param>
public sealed record WalkedWeeks(Walk Walk, Series<int> Full, Series<CoarseStep> Coarse)
{
    /// <param name="full">In rising order.</param>
    /// <param name="growAtMost">Per cent, as <see cref="Walk.Over"/> takes it.</param>
    public static WalkedWeeks Over(Ladder ladder, IReadOnlyList<int> full, int growAtMost)
    {
        var walk = Walk.Over(ladder, full.Count, growAtMost);
        var coarse =
            from i in Enumerable.Range(1, Math.Max(0, full.Count - 1))
            let step = ladder.Rungs[walk.Rungs[i]].Work.Since(ladder.Rungs[walk.Rungs[i - 1]].Work)
            where !step.IsWithin(growAtMost)
            select new CoarseStep(full[i - 1], full[i], step.MorePercent);
        return new(walk, full.ToSeries(), coarse.ToSeries());
    }

    /// <summary>That of the last full week up to this one; before the first the low end.</summary>
    public Dose DoseIn(int week)
    {
        var before = Full.Count(w => w <= week);
        return Walk.Ladder.Rungs[before == 0 ? 0 : Walk.Rungs[before - 1]].Dose;
    }
}

/// <param name="From">A full week.</param>
/// <param name="To">The next one.</param>
/// <param name="Percent">By how much the measure that grows most does so.</param>
public sealed record CoarseStep(int From, int To, int Percent);
