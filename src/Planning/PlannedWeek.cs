using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>One week of the programme: seven days from its first one.</summary>
/// <param name="Heading">"Week 2, from Monday 14 December 2026"</param>
/// <param name="Sessions">Those of the programme that are done in it, in their order.</param>
public sealed record PlannedWeek(int Number, DateOnly FirstDay, string Heading, Series<PlannedWeekSession> Sessions)
{
    /// <summary>The pauses right before it.</summary>
    public Series<PlannedPause> Pauses { get; init; } = [];

    /// <summary>All sessions that have their number of times; those that go by the days of play come on top.</summary>
    public Seconds Total => new(Sessions.Sum(s => s.Seconds.Value * (s.Times ?? 0)));

    public bool About => Sessions.Any(s => s.About);
}

/// <summary>Days on which nothing is done.</summary>
/// <param name="Days">"2026-12-21/2027-01-03"</param>
/// <param name="Sentence">When it is, and with what the client goes on.</param>
/// <param name="Now">What page one says on these days.</param>
public sealed record PlannedPause(string Days, string Sentence, string Now);

/// <param name="Times">How often in this week; null where it goes by how often the client plays.</param>
/// <param name="Dates">The days of the week that are fixed; empty where the client chooses.</param>
/// <param name="When">"Monday and Thursday", "3 times", "before you play"</param>
/// <param name="Seconds">Once.</param>
public sealed record PlannedWeekSession(
    int Session,
    string Name,
    int? Times,
    Series<DateOnly> Dates,
    string When,
    Seconds Seconds,
    bool About
);

/// <summary>When the ranges are measured again.</summary>
/// <param name="Sentence">Who measures, when, and what.</param>
/// <param name="Week">The week it falls into; null where it comes behind the last one.</param>
/// <param name="Day">Null where any day of that week will do.</param>
public sealed record PlannedRetest(string Sentence, int? Week, DateOnly? Day);
