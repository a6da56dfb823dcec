using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>The days of a calendar, in words.</summary>
internal static class DateWords
{
    /// <param name="pages">The path of each session's page, by its number from 1.</param>
    public static PlannedDate Of(ClientId client, TrainedDate date, IReadOnlyList<string> pages, Words words) =>
        new(
            UidOf(client, date.Session, date.Week, date.Index),
            words.Say("calendar-title", ("number", date.Session)),
            words.Say("calendar-note", ("time", words.Span(date.Length)), ("page", pages[date.Session - 1])),
            date.Day,
            date.Start,
            date.Length
        );

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
