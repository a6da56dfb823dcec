using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>The sessions of each week → the days of a calendar.</summary>
internal static class DatePlanning
{
    /// <summary>In the order of the days; of one day in the order of the sessions, each when the one before it ends. Sessions
    /// whose day the client chooses, or that go by the days of play, have none.</summary>
    public static IEnumerable<PlannedDate> Of(
        Client client,
        Series<PlannedSession> sessions,
        Series<PlannedWeek> weeks,
        Words words
    )
    {
        var dated = weeks.SelectMany(w =>
            w.Sessions.SelectMany(s => s.Dates.Select((date, index) => (Week: w.Number, Session: s, Date: date, Index: index)))
        );
        foreach (var day in dated.GroupBy(d => d.Date).OrderBy(d => d.Key))
        {
            var start = client.Hour is { } hour ? client.Zone.ToUtc(day.Key, hour) : (DateTime?)null;
            foreach (var (week, session, date, index) in day.OrderBy(d => d.Session.Session))
            {
                yield return new(
                    UidOf(client.Id, session.Session, week, index),
                    words.Say("calendar-title", ("number", session.Session)),
                    words.Say(
                        "calendar-note",
                        ("time", words.Span(session.Seconds)),
                        ("page", sessions[session.Session - 1].Path)
                    ),
                    date,
                    start,
                    session.Seconds
                );
                start = start?.AddSeconds(session.Seconds.Value);
            }
        }
    }

    /// <summary>In the form of RFC 9562, version 8: the digest of the ids.</summary>
    private static string UidOf(ClientId client, int session, int week, int index)
    {
        var digest = SHA256.HashData(
            Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"gradus/{client}/{session}/{week}/{index}"))
        );
        digest[6] = (byte)((digest[6] & 0x0F) | 0x80);
        digest[8] = (byte)((digest[8] & 0x3F) | 0x80);
        return new Guid(digest.AsSpan(0, 16), bigEndian: true).ToString();
    }
}
