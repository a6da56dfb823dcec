using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>Plan → calendar.ics (RFC 5545). Times are written in UTC, so that no calendar needs to know a zone; the stamp is the
/// first day of the programme, so that the file is the same on any day. From the second edition on each event says its
/// revision (3.8.7.4), so that a calendar takes it in place of the one before.</summary>
internal static class CalendarFile
{
    /// <summary>Octets of a line, without its end.</summary>
    private const int LineLimit = 75;

    public static Asset? Of(Plan plan) =>
        plan.Dates.Count == 0 ? null : new(PagePath.Calendar, Encoding.UTF8.GetBytes(string.Concat(Lines(plan).Select(Folded))));

    private static IEnumerable<string> Lines(Plan plan)
    {
        yield return "BEGIN:VCALENDAR";
        yield return "VERSION:2.0";
        yield return "PRODID:-//Gradus//Gradus//EN";
        yield return "CALSCALE:GREGORIAN";
        foreach (var date in plan.Dates)
        {
            yield return "BEGIN:VEVENT";
            yield return $"UID:{date.Uid}";
            if (plan.Edition > 1)
                yield return FormattableString.Invariant($"SEQUENCE:{plan.Edition - 1}");
            yield return $"DTSTAMP:{Day(plan.Programme.Start)}T000000Z";
            if (date.Start is { } start)
            {
                yield return $"DTSTART:{start.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture)}";
                yield return $"DURATION:{date.Length.ToIsoDuration()}";
            }
            else
            {
                yield return $"DTSTART;VALUE=DATE:{Day(date.Date)}";
            }

            yield return $"SUMMARY:{Escaped(date.Title)}";
            yield return $"DESCRIPTION:{Escaped(date.Note)}";
            yield return "END:VEVENT";
        }

        yield return "END:VCALENDAR";
    }

    private static string Day(DateOnly day) => day.ToString("yyyyMMdd", CultureInfo.InvariantCulture);

    private static string Escaped(string text) =>
        text.Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace(";", "\\;", StringComparison.Ordinal)
            .Replace(",", "\\,", StringComparison.Ordinal)
            .ReplaceLineEndings("\\n");

    /// <summary>A line as long as it may be, the rest on lines that begin with a blank; no character is torn.</summary>
    private static string Folded(string line)
    {
        var folded = new StringBuilder();
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > LineLimit)
            {
                folded.Append("\r\n ");
                octets = 1;
            }

            folded.Append(rune);
            octets += rune.Utf8SequenceLength;
        }

        return folded.Append("\r\n").ToString();
    }
}
