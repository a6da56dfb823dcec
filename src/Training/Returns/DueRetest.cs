using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Why a range is to be measured again now.</summary>
public enum RetestWhy
{
    /// <summary>The day that the coach set has come.</summary>
    SetByCoach,

    /// <summary>Six full weeks since it was measured (a setting; common practice, no source).</summary>
    SixWeeks,

    /// <summary>The last week of the programme has begun.</summary>
    LastWeek,

    /// <summary>What must be true before going on is met.</summary>
    MoveOnMet,

    /// <summary>The reading beside a demand of the sport is too old.</summary>
    Old,

    /// <summary>Less than before, beyond the error: measure again.</summary>
    Less,
}

/// <summary>A series that is due, by the first of the reasons that came. Never within 14 days of the latest reading; with the
/// same
/// instrument, method, rater and time of day, and not within an hour after training.</summary>
/// <param name="Since">The day on which it became due.</param>
public sealed record DueRetest(SeriesKey Key, Occasion Latest, RetestWhy Why, DateOnly Since)
{
    private const int DaysApart = 14;
    private const int SixWeeks = 42;

    /// <param name="ranges">As of the day that is asked about.</param>
    public static IEnumerable<DueRetest> Of(Client client, Training training, ClientRanges ranges, Series<MoveOnCheck> moveOn)
    {
        var work = PlannedWork.Of(client, training);
        foreach (var series in ranges.Series.Where(s => s.Latest is not null))
        {
            var latest = series.Latest ?? throw new InvalidOperationException("It was asked for.");
            var first = Reasons(client, training, ranges, moveOn, work, series, latest)
                .Select(r => r with { Since = Later(r.Since, latest.Last.AddDays(DaysApart)) })
                .Where(r => r.Since <= ranges.Today)
                .MinBy(r => r.Since);
            if (first is not null)
                yield return first;
        }
    }

    private static IEnumerable<DueRetest> Reasons(
        Client client,
        Training training,
        ClientRanges ranges,
        Series<MoveOnCheck> moveOn,
        Series<PlannedWork> work,
        MeasuredSeries series,
        Occasion latest
    )
    {
        var programme = client.Programme;
        var trained = work.Where(w => w.Works(series.Measure, series.Key.Side)).ToArray();
        if (trained.Length > 0)
        {
            if (programme.Retest is { } retest && latest.Last < retest.From)
                yield return Due(RetestWhy.SetByCoach, retest.From);
            yield return Due(RetestWhy.SixWeeks, latest.Last.AddDays(SixWeeks));
            if (latest.Last < programme.FirstDayOf(programme.Weeks))
                yield return Due(RetestWhy.LastWeek, programme.FirstDayOf(programme.Weeks));
            foreach (var met in moveOn.Where(m => m.Since > latest.Last && IsAbout(training, m, trained)))
                yield return Due(RetestWhy.MoveOnMet, met.Since ?? latest.Last);
        }

        if (ranges.Demands.Any(d => d.Key == series.Key))
            yield return Due(RetestWhy.Old, latest.Last.AddDays(RangeMark.ReadingsLast + 1));
        if (series.Sudden is not null || series.Changes.Any(c => c.Word == ChangeWord.Less))
            yield return Due(RetestWhy.Less, latest.Last);

        DueRetest Due(RetestWhy why, DateOnly since) => new(series.Key, latest, why, since);
    }

    private static bool IsAbout(Training training, MoveOnCheck met, PlannedWork[] trained) =>
        training.Uses.Any(u =>
            (u.Exercise.Id == met.Exercise || u.Exercise.Stage == met.Stage) && trained.Any(t => t.Motion == u.Exercise.Trains)
        );

    private static DateOnly Later(DateOnly one, DateOnly other) => one > other ? one : other;
}
