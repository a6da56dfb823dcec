using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>One session on one fixed day.</summary>
/// <param name="Index">Its place among the dates of that session in that week, from 0.</param>
/// <param name="Start">In UTC; null where the client has no hour, so that the session belongs to the whole day.</param>
public sealed record TrainedDate(int Session, int Week, int Index, DateOnly Day, DateTime? Start, Seconds Length)
{
    /// <summary>In the order of the days; of one day in the order of the sessions, each when the one before it ends. Sessions
    /// whose day the client chooses, or that go by the days of play, have none.</summary>
    public static IEnumerable<TrainedDate> Of(Client client, Series<TrainedWeek> weeks)
    {
        var dated =
            from week in weeks
            from session in week.Sessions
            from date in session.Dates.Index()
            group new TrainedDate(session.Session, week.Number, date.Index, date.Item, null, session.Seconds) by date.Item;
        foreach (var day in dated.OrderBy(d => d.Key))
        {
            var start = client.Hour is { } hour ? client.Zone.ToUtc(day.Key, hour) : (DateTime?)null;
            foreach (var date in day.OrderBy(d => d.Session))
            {
                yield return date with
                {
                    Start = start,
                };
                start = start?.AddSeconds(date.Length.Value);
            }
        }
    }
}
