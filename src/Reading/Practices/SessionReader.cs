using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

internal static partial class SessionReader
{
    [GeneratedRegex(@"^every ([1-9]|1[0-4]) days\z", RegexOptions.CultureInvariant)]
    private static partial Regex EveryDays();

    [GeneratedRegex(@"^([1-7]) a week, a day between\z", RegexOptions.CultureInvariant)]
    private static partial Regex TimesAWeek();

    public static ProgrammeSession? Read(Fields fields, int weeks, KnownIds known, DoseSettings settings)
    {
        var name = fields.NeedText("name");
        var days = DaysIn(fields);
        var uses = fields.Groups("do", "a use of an exercise", needed: true).Select(f => UseIn(f, weeks, known, settings)).OfType<ProgrammeUse>().ToSeries();
        fields.Done();
        return name is null || days is null ? null : new(name, days, uses, fields.At);
    }

    private static SessionDays? DaysIn(Fields fields)
    {
        var written = fields.Need("days");
        if (written is YamlNode.Listing) return new SessionDays.On(WeekdayWords.Of(fields.Sheet, Values.Texts(fields.Sheet, "days", written)));
        if (Values.Text(fields.Sheet, "days", written) is not { } text) return null;
        if (text.Value == "before play") return new SessionDays.BeforePlay();
        if (EveryDays().Match(text.Value) is { Success: true } every) return new SessionDays.EveryDays(Number(every));
        if (TimesAWeek().Match(text.Value) is { Success: true } times) return new SessionDays.TimesAWeek(Number(times));
        Values.Wrong(fields.Sheet, text, $"{Quote.Of(text.Value)} does not say when.", "Write days as [Mon, Thu], or one of: every 2 days; 3 a week, a day between; before play.");
        return null;
    }

    private static ProgrammeUse? UseIn(Fields fields, int weeks, KnownIds known, DoseSettings settings)
    {
        var exercise = known.ExerciseOf(fields.Sheet, fields.NeedMention("use"));
        var side = fields.Mention("side") is { } named ? named with { Value = Spacing.Collapse(named.Value).ToLowerInvariant() } : null;
        var byWeek = WeekLinesIn(fields, weeks, settings);
        var from = fields.Whole("from-week", 1, weeks);
        var until = fields.Whole("until-week", 1, weeks);
        if (from > until)
            fields.Sheet.Fault(Faults.ValueWrong, fields.Take("until-week")?.At ?? fields.At, $"This ends with week {until}, before it begins in week {from}.", "Correct 'from-week' or 'until-week'.");
        var moveOn = fields.Texts("move-on").Select(m => m.Value).ToSeries();
        var keep = fields.Flag("keep-when-short");
        fields.Done();
        return exercise is null || from > until ? null : new(exercise, side, byWeek, from, until, moveOn, keep);
    }

    private static Series<WeekLine> WeekLinesIn(Fields fields, int weeks, DoseSettings settings)
    {
        if (fields.Group("by-week", "by-week") is not { } byWeek) return [];
        var lines = new List<WeekLine>();
        foreach (var entry in byWeek.Entries)
        {
            var week = Values.Whole(byWeek.Sheet, "by-week", entry.Name, 1, weeks);
            var dose = DoseReader.Read(byWeek.Sheet, entry.Key, entry.Value, settings);
            if (dose?.Dose is { IsSettled: false })
                byWeek.Sheet.Fault(Faults.ValueWrong, dose.At, "The dose of a week has single numbers, but here is a range.", "Write the one number for that week; ranges belong to the exercise.", dose.Line.Length);
            else if (week is not null && dose is not null) lines.Add(new(week.Value, dose));
        }

        return lines.OrderBy(l => l.Week).ToSeries();
    }

    private static int Number(Match match) => int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture);
}
