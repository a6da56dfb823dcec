using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Days and times of a log, also as spreadsheets turn them. One that could be two days is none.</summary>
internal static partial class LogDays
{
    /// <summary>Day 0 of spreadsheets, as they count since 1 March 1900.</summary>
    private static readonly DateOnly SpreadsheetZero = new(1899, 12, 30);

    private static readonly DateOnly First = new(2000, 1, 1);
    private static readonly DateOnly Last = new(2199, 12, 31);

    [GeneratedRegex(@"^(?<y>[0-9]{4})-(?<m>[0-9]{2})-(?<d>[0-9]{2})\z")]
    private static partial Regex Written();

    [GeneratedRegex(@"^(?<y>[0-9]{4})(?<s>[-/.])(?<m>[0-9]{1,2})\k<s>(?<d>[0-9]{1,2})(?:[ T]0{1,2}:00(?::00)?)?\z")]
    private static partial Regex YearFirst();

    [GeneratedRegex(@"^(?<a>[0-9]{1,2})(?<s>[-/.])(?<b>[0-9]{1,2})\k<s>(?<y>[0-9]{4})(?: 0{1,2}:00(?::00)?)?\z")]
    private static partial Regex YearLast();

    [GeneratedRegex(@"^[0-9]{5}\z")]
    private static partial Regex Serial();

    [GeneratedRegex(@"^(?<h>[0-9]{1,2}):(?<m>[0-9]{2})(?::[0-9]{2})?(?: ?(?<half>[AaPp])\.?[Mm]\.?)?\z")]
    private static partial Regex Time();

    /// <summary>Null where it is no day, or might be two, which is said.</summary>
    public static DateOnly? DayOf(LogField field)
    {
        if (DayIn(field.Text, Written()) is { } day)
            return day;
        var turned = DayIn(field.Text, YearFirst())
            ?? (
                Serial().IsMatch(field.Text)
                    ? Bounded(SpreadsheetZero.AddDays(int.Parse(field.Text, CultureInfo.InvariantCulture)))
                    : null
            );
        if (YearLast().Match(field.Text) is { Success: true } last)
        {
            var (a, b, y) = (Part(last, "a"), Part(last, "b"), Part(last, "y"));
            var (dayFirst, monthFirst) = (Of(y, b, a), last.Groups["s"].Value == "." ? null : Of(y, a, b));
            if (dayFirst is { } one && monthFirst is { } other && one != other)
            {
                field.Remarks.Unread(
                    field.Line,
                    $"the date {Letters.Quoted(field.Text)} may be {one.Iso()} or {other.Iso()}; not taken: send the file as the page "
                        + "saved it, or write dates as 2026-12-07"
                );
                return null;
            }

            turned = dayFirst ?? monthFirst;
        }

        if (turned is { } found)
            field.Remarks.Turned(field.Line, field.Text, found);
        else
            field.Remarks.Unread(
                field.Line,
                field.IsBlank
                    ? "there is no date; not taken"
                    : $"the date {Letters.Quoted(field.Text)} is no day, as 2026-12-07; not taken"
            );
        return turned;
    }

    /// <summary>By the clock of 24 hours, or with am and pm; what is less than a minute is left out.</summary>
    public static TimeOnly? TimeOf(LogField field)
    {
        if (field.IsBlank)
            return null;
        if (Time().Match(field.Text) is { Success: true } time)
        {
            var (hour, minute) = (Part(time, "h"), Part(time, "m"));
            if (time.Groups["half"].Value.ToLowerInvariant() is { Length: > 0 } half)
                hour = hour is < 1 or > 12 ? 24 : (hour % 12) + (half == "p" ? 12 : 0);
            if (hour < 24 && minute < 60)
                return new(hour, minute);
        }

        field.Remarks.Unread(field.Line, $"{field.Name} {Letters.Shown(field.Text)} is no time, as 18:05; not taken");
        return null;
    }

    private static DateOnly? DayIn(string text, Regex shape) =>
        shape.Match(text) is { Success: true } found ? Of(Part(found, "y"), Part(found, "m"), Part(found, "d")) : null;

    private static int Part(Match found, string name) => int.Parse(found.Groups[name].ValueSpan, CultureInfo.InvariantCulture);

    private static DateOnly? Of(int year, int month, int day) =>
        year is > 0 and < 10_000 && month is > 0 and < 13 && day > 0 && day <= DateTime.DaysInMonth(year, month)
            ? Bounded(new(year, month, day))
            : null;

    private static DateOnly? Bounded(DateOnly day) => day >= First && day <= Last ? day : null;
}
