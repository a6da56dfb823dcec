using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The pauses of a programme: one, or a list of them.</summary>
internal static class PauseReader
{
    /// <summary>More days than these are no pause; common practice, no source: after two months the body that the doses were
    /// written for is another.</summary>
    private const int DaysLimit = 60;

    private static readonly int DateLength = "2026-12-07".Length;

    /// <summary>In the order of their days, those that can be kept: each after the first day of the programme and before its
    /// end, and none overlapping another.</summary>
    /// <param name="weeks">Of the programme.</param>
    public static Series<Pause> In(Fields fields, DateOnly? start, int weeks)
    {
        var written = Written(fields).OfType<(Pause Pause, Location At)>().OrderBy(p => p.Pause.From).ToArray();
        if (start is not { } first)
            return [];
        var kept = new List<Pause>();
        foreach (var (pause, at) in written)
        {
            var calendar = new WeekCalendar(first, kept.ToSeries());
            if (kept.Count > 0 && kept[^1].Until >= pause.From)
                Fault(
                    at,
                    $"This pause begins on {pause.From.Iso()}, before the one from {kept[^1].From.Iso()} to "
                        + $"{kept[^1].Until.Iso()} is over.",
                    "Write one pause over all of these days, or correct one of them."
                );
            else if (pause.From <= first)
                Fault(
                    at,
                    $"This pause begins on {pause.From.Iso()}, and the programme on {first.Iso()}.",
                    "A pause begins after the first day; move 'start' instead."
                );
            else if (pause.From > calendar.LastDayOf(weeks))
                Fault(
                    at,
                    $"This pause begins on {pause.From.Iso()}, and the programme is over on {calendar.LastDayOf(weeks).Iso()}.",
                    "Take it out, or correct 'from'."
                );
            else
                kept.Add(pause);
        }

        return kept.ToSeries();

        void Fault(Location at, string message, string help) =>
            fields.SourceFile.Fault(Faults.ValueWrong, at, message, help, DateLength);
    }

    private static IEnumerable<(Pause, Location)?> Written(Fields fields) =>
        fields.Take("pause") is YamlNode.Listing ? fields.Groups("pause", "a pause").Select(One)
        : fields.Group("pause", "a pause") is { } only ? [One(only)]
        : [];

    private static (Pause, Location)? One(Fields fields)
    {
        var at = fields.Take("from")?.At ?? fields.At;
        var (from, until) = (fields.NeedDate("from"), fields.NeedDate("until"));
        var because = fields.Text("because") ?? "";
        fields.Done();
        if (from is not { } first || until is not { } last)
            return null;
        var end = fields.Take("until")?.At ?? fields.At;
        var days = last.DayNumber - first.DayNumber + 1;
        if (days < 1)
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                end,
                "This pause ends before it begins.",
                "Correct 'from' or 'until'.",
                DateLength
            );
        else if (days > DaysLimit)
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                end,
                $"This pause is {days} days long; more than {DaysLimit} are no pause.",
                "End the programme before it with fewer 'weeks', and write a new one for the time after it.",
                DateLength
            );
        else
            return (new(first, last) { Because = because }, at);
        return null;
    }
}
