using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>How hard sessions were felt to be beside how hard they were meant.</summary>
/// <param name="Difference">The median of what was reported less the median of what was planned, in points of ten; null below
/// four
/// sessions that say both.</param>
/// <param name="TooHard">Sessions of effort 9 or 10 where the plan says 6 at most.</param>
public sealed record EffortAgainstPlan(decimal? Difference, int Sessions, Series<LogEntry> TooHard)
{
    private const int SessionsNeeded = 4;
    private const int SaidFrom = 2;
    private const int VeryHard = 9;
    private const int Moderate = 6;

    /// <summary>Whether the difference is enough to be said.</summary>
    public bool IsSaid => Math.Abs(Difference ?? 0) >= SaidFrom;

    /// <summary>Whether it happened twice.</summary>
    public bool IsHarderThanMeant => TooHard.Count >= 2;

    public static EffortAgainstPlan Of(Training training, CountedLog log)
    {
        var both = (
            from entry in log.Done
            where entry.Effort is not null
            let planned = PlannedOf(training, entry)
            where planned is not null
            select (Entry: entry, Reported: entry.Effort ?? 0, Planned: planned ?? 0)
        ).ToArray();
        return new(
            both.Length < SessionsNeeded
                ? null
                : Medians.Of(both.Select(b => (decimal)b.Reported)) - Medians.Of(both.Select(b => b.Planned)),
            both.Length,
            both.Where(b => b.Reported >= VeryHard && b.Planned <= Moderate).Select(b => b.Entry).ToSeries()
        );
    }

    /// <summary>The hardest that the plan asks for in that session and week, in points of ten; null where no dose of it says how
    /// hard.</summary>
    private static decimal? PlannedOf(Training training, LogEntry entry) =>
        (
            from use in training.Uses
            where use.Session == entry.Session
            from week in use.Weeks
            where week.Week == entry.Week
            from points in PointsOf(week.Dose)
            select (decimal?)points
        )
            .DefaultIfEmpty(null)
            .Max();

    private static IEnumerable<decimal> PointsOf(SettledDose dose)
    {
        foreach (var effort in dose.Actions.Select(a => a.Effort).OfType<SettledEffort>())
            yield return effort.Match(
                steady => steady.Percent / 10m,
                ramp => Math.Max(ramp.First, ramp.Last) / 10m,
                felt => felt.Rating
            );
        if (dose.Leave is { } leave)
            yield return Math.Max(0, 10 - leave);
    }
}
