using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>The days of a calendar, in words.</summary>
internal static class DateWords
{
    /// <summary>In the order of the days; measuring again comes behind the sessions of its day.</summary>
    /// <param name="pages">The path of each session's page, by its number from 1.</param>
    /// <param name="retest">Null where nobody has said when; without a day it is none of the dates.</param>
    public static Series<PlannedDate> Of(Training training, IReadOnlyList<string> pages, PlannedRetest? retest, Words words) =>
        training
            .Dates.Select(d => Of(training.Client, d, pages, words))
            .Concat(retest?.Day is { } day ? [Measuring(training.Client, day, words)] : [])
            .OrderBy(d => d.Date)
            .ToSeries();

    private static PlannedDate Of(ClientId client, TrainedDate date, IReadOnlyList<string> pages, Words words) =>
        new(
            UidOf(client, string.Create(CultureInfo.InvariantCulture, $"{date.Session}/{date.Week}/{date.Index}")),
            words.Say("calendar-title", ("number", date.Session)),
            words.Say("calendar-note", ("time", words.Span(date.Length)), ("page", pages[date.Session - 1])),
            date.Day,
            date.Start,
            date.Length
        );

    private static PlannedDate Measuring(ClientId client, DateOnly day, Words words) =>
        new(
            UidOf(client, "retest"),
            words.Say("calendar-retest-title"),
            words.Say("calendar-retest-note", ("page", PagePath.Weeks)),
            day,
            null,
            Seconds.Zero
        );

    /// <summary>In the form of RFC 9562, version 8: the digest of the ids.</summary>
    private static string UidOf(ClientId client, string what)
    {
        var digest = SHA256.HashData(Encoding.UTF8.GetBytes($"gradus/{client}/{what}"));
        digest[6] = (byte)((digest[6] & 0x0F) | 0x80);
        digest[8] = (byte)((digest[8] & 0x3F) | 0x80);
        return new Guid(digest.AsSpan(0, 16), bigEndian: true).ToString();
    }
}
