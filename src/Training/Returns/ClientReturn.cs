using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What came back of one client, as far as anything may be said of it. Without a word, and no part of a
/// <see cref="Training"/>, because it hangs on the day. What is not here is never computed: a risk of injury, a readiness, any
/// ratio
/// of loads (Impellizzeri 2020, J Athl Train 55:893-901, and 2021, Sports Med 51:581-92, both seen), a figure made of pain,
/// effort
/// and adherence together, a prediction, a comparison of clients, a mean of efforts.</summary>
/// <param name="Weeks">Those that the log covers.</param>
/// <param name="Missed">Three planned sessions or more without one of the log; null where there are none.</param>
/// <param name="Pains">Worst first, of one kind the latest.</param>
/// <param name="MoveOn">What must be true before going on.</param>
/// <param name="Retests">What is to be measured again.</param>
public sealed record ClientReturn(
    ClientId Client,
    DateOnly Today,
    CountedLog Log,
    Series<ReturnedWeek> Weeks,
    TrainingGap? Gap,
    MissedRun? Missed,
    Series<SetsDone> Sets,
    Series<SessionLoad> Sessions,
    Series<LoadedWeek> Loads,
    Series<ReturnedPain> Pains,
    QuietPain Quiet,
    EffortAgainstPlan Effort,
    Series<MoveOnCheck> MoveOn,
    Series<DueRetest> Retests
)
{
    /// <summary>From so many planned sessions on a share is said.</summary>
    private const int PlannedForShare = 10;

    /// <summary>How many were planned in the weeks of which that is known.</summary>
    public int Planned => Weeks.Sum(w => w.Planned ?? 0);

    /// <summary>How many of those were done.</summary>
    public int Done => Weeks.Where(w => w.Planned is not null).Sum(w => w.Done);

    /// <summary>Per cent of the planned sessions that were done, rounded, at most 100; null below ten planned.</summary>
    public int? Share =>
        Planned < PlannedForShare ? null : (int)Math.Round(Math.Min(100m, 100m * Done / Planned), MidpointRounding.AwayFromZero);

    /// <summary>Whether two weeks running fewer than half were done; the last of them.</summary>
    public ReturnedWeek? TooLittle =>
        Weeks.Zip(Weeks.Skip(1)).LastOrDefault(p => p.First.IsBelowHalf && p.Second.IsBelowHalf) is { Second: { } second }
            ? second
            : null;

    /// <summary>Whether a re-test will tell little, because fewer than half were done.</summary>
    public bool TellsLittle => Planned > 0 && 2 * Done < Planned;

    /// <param name="training">The client's own.</param>
    /// <param name="today">What came back of a later day does not count yet.</param>
    public static ClientReturn Of(Practice practice, Client client, Training training, DateOnly today)
    {
        var log = CountedLog.Of(client, training, today);
        var single = ReturnedPains.Of(client.Log, training.Rules);
        var sessions = SessionLoad.Of(training, log).ToSeries();
        var moveOn = MoveOnCheck.Of(client, training, log).ToSeries();
        return new(
            client.Id,
            today,
            log,
            ReturnedWeek.Of(client, training, log).ToSeries(),
            TrainingGap.Longest(log),
            MissedRun.Last(client, training, log),
            SetsDone.Of(client, training, log),
            sessions,
            LoadedWeek.Of(client, training, log, sessions).ToSeries(),
            single
                .Concat(PainTrend.Of(client.Programme, log.Entries, training.Rules))
                .OrderBy(p => p.Kind)
                .ThenByDescending(p => p.Day)
                .ToSeries(),
            QuietPain.Of(log, single),
            EffortAgainstPlan.Of(training, log),
            moveOn,
            DueRetest.Of(client, training, ClientRanges.Of(practice, client, training, today), moveOn).ToSeries()
        );
    }
}
