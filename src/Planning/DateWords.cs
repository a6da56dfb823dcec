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
    /// <param name="over">How many programmes of the client were over before: the days of the next one are others, and do not
    /// move those of the last.</param>
    /// <param name="pages">The path of each session's page, by its number from 1.</param>
    /// <param name="retest">Null where nobody has said when; without a day it is none of the dates.</param>
    public static Series<PlannedDate> Of(
        Training training,
        int over,
        IReadOnlyList<string> pages,
        PlannedRetest? retest,
        Words words
    )
    {
        var course = over == 0 ? $"{training.Client}" : FormattableString.Invariant($"{training.Client}/after-{over}");
        return training
            .Dates.Select(d => Of(course, d, pages, words))
            .Concat(retest?.Day is { } day ? [Measuring(course, day, words)] : [])
            .OrderBy(d => d.Date)
            .ToSeries();
    }

    private static PlannedDate Of(string course, TrainedDate date, IReadOnlyList<string> pages, Words words) =>
        new(
            UidOf(course, string.Create(CultureInfo.InvariantCulture, $"{date.Session}/{date.Week}/{date.Index}")),
            words.Say("calendar-title", ("number", date.Session)),
            words.Say("calendar-note", ("time", words.Span(date.Length)), ("page", pages[date.Session - 1])),
            date.Day,
            date.Start,
            date.Length
        );

    private static PlannedDate Measuring(string course, DateOnly day, Words words) =>
        new(
            UidOf(course, "retest"),
            words.Say("calendar-retest-title"),
            words.Say("calendar-retest-note", ("page", PagePath.Weeks)),
            day,
            null,
            Seconds.Zero
        );

    /// <summary>In the form of RFC 9562, version 8: the digest of the ids.</summary>
    private static string UidOf(string course, string what)
    {
        var digest = SHA256.HashData(Encoding.UTF8.GetBytes($"gradus/{course}/{what}"));
        digest[6] = (byte)((digest[6] & 0x0F) | 0x80);
        digest[8] = (byte)((digest[8] & 0x3F) | 0x80);
        return new Guid(digest.AsSpan(0, 16), bigEndian: true).ToString();
    }
}
