using Gradus.Domain;

namespace Gradus.Reading;

internal static class ProgrammeReader
{
    /// <summary>A programme of at most two years.</summary>
    public const int WeeksLimit = 104;

    public static Programme? Read(SourceFile sheet, KnownIds known, DoseSettings settings)
    {
        if (Headed.Read(sheet) is not { } headed || Fields.OfHeader(sheet, headed, "a programme") is not { } fields)
            return null;
        var title = fields.NeedText("title");
        var start = fields.NeedDate("start");
        var weeks = fields.NeedWhole("weeks", 1, WeeksLimit);
        var span = weeks ?? WeeksLimit;
        var lighterAt = fields.Take("lighter")?.At ?? sheet.Whole;
        var lighter = LighterIn(fields, span);
        var pauses = PauseReader.In(fields, start, span);
        var retest = RetestIn(fields, start is { } first ? new(first, pauses) : null, span);
        var moveOn = MoveOnIn(fields).ToSeries();
        var uses = new UseReader(span, known, settings);
        var sessions = fields
            .Groups("sessions", "a session", needed: true)
            .Select(f => SessionReader.Read(f, uses))
            .OfType<ProgrammeSession>()
            .ToSeries();
        var alternates = fields
            .Groups("alternate", "an alternate session")
            .Select(f => SessionReader.ReadAlternate(f, uses, sessions))
            .OfType<ProgrammeSession>()
            .ToSeries();
        foreach (
            var twice in sessions.Concat(alternates).GroupBy(s => s.Name, StringComparer.Ordinal).SelectMany(same => same.Skip(1))
        )
            sheet.Fault(
                Faults.ValueWrong,
                twice.At,
                $"There is another session called {Quote.Of(twice.Name)}.",
                "Give one of them another name: the client chooses by it."
            );
        fields.Done();
        var letter = ProseReader.Read(
            sheet,
            headed.Body,
            headed.BodyLine,
            new(Placeholders: false, known.Exercises, known.Media) { Ranges = known }
        );
        return title is null || start is null || weeks is null
            ? null
            : new(title, start.Value, weeks.Value, lighter, sessions, alternates, moveOn, letter, lighterAt, sheet.Whole)
            {
                Retest = retest,
                Pauses = pauses,
            };
    }

    /// <summary>A day after the first one, or the number of a week.</summary>
    private static Retest? RetestIn(Fields fields, WeekCalendar? calendar, int weeks)
    {
        if (fields.Mention("retest") is not { } written || calendar is null)
            return null;
        fields.SourceFile.Note(written, ValueKind.Day);
        fields.SourceFile.Note(written, new ValueKind.Whole(1, WeeksLimit));
        if (Values.DayOf(written.Value) is { } day)
        {
            if (day > calendar.Start)
                return new(day, day);
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                written.At,
                $"{Quote.Of(written.Value)} is not behind the first day of the programme.",
                "Write a later day, or the number of a week.",
                written.Value.Length
            );
            return null;
        }

        if (
            Values.NumberOf(new(written.Value, true, written.At, written.At)) is { } week
            && Enumerable.Range(1, weeks).Any(w => w == week)
        )
            return new(calendar.FirstDayOf((int)week), calendar.LastDayOf((int)week));
        fields.SourceFile.Fault(
            Faults.ValueWrong,
            written.At,
            $"{Quote.Of(written.Value)} is no day and no week of the programme.",
            $"Write a day, as 2026-12-07, or the number of a week from 1 to {weeks}.",
            written.Value.Length
        );
        return null;
    }

    /// <summary>For each stage that is named, when to go on from it.</summary>
    private static IEnumerable<StageCheck> MoveOnIn(Fields fields)
    {
        if (fields.Group("move-on", "move-on") is not { } stages)
            yield break;
        foreach (var (word, stage) in ExerciseWords.Stages)
        {
            var conditions = stages.Texts(word).Select(t => t.Value).ToSeries();
            if (conditions.Count > 0)
                yield return new(stage, conditions);
        }

        stages.Done();
    }

    private static Series<int> LighterIn(Fields fields, int weeks)
    {
        var written = fields.Take("lighter");
        if (written is null)
            return [];
        if (written is not YamlNode.Listing list)
        {
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                written.At,
                $"'lighter' is a list of weeks, but here is {written.Kind}.",
                "Write it in square brackets: lighter: [4]."
            );
            return [];
        }

        return list
            .Items.Select(item => Values.Whole(fields.SourceFile, "lighter", item, 1, weeks, WeeksLimit))
            .OfType<int>()
            .Distinct()
            .Order()
            .ToSeries();
    }
}
