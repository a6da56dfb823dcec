using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The short names of weekdays that a practice is written with.</summary>
internal static class WeekdayWords
{
    private static readonly (string Word, DayOfWeek Day)[] Days =
    [
        ("Mon", DayOfWeek.Monday),
        ("Tue", DayOfWeek.Tuesday),
        ("Wed", DayOfWeek.Wednesday),
        ("Thu", DayOfWeek.Thursday),
        ("Fri", DayOfWeek.Friday),
        ("Sat", DayOfWeek.Saturday),
        ("Sun", DayOfWeek.Sunday),
    ];

    /// <summary>The days in the order of the week, from Monday.</summary>
    public static Series<DayOfWeek> Of(SourceFile sheet, Series<Mention<string>> names)
    {
        var all = Days.Select(d => d.Word).ToArray();
        foreach (var name in names)
            sheet.Note(name, ValueKind.Of(all));
        foreach (var unknown in names.Where(n => !all.Contains(n.Value)))
        {
            sheet.Fault(
                Faults.ValueWrong,
                unknown.At,
                $"{Quote.Of(unknown.Value)} is not how a day is written here.",
                Nearest.Ask(
                    unknown.Value.Length > 3 ? unknown.Value[..3] : unknown.Value,
                    all,
                    $"Write one of: {string.Join(", ", all)}."
                ),
                unknown.Value.Length
            );
        }

        return Days.Where(d => names.Any(n => n.Value == d.Word)).Select(d => d.Day).ToSeries();
    }
}
