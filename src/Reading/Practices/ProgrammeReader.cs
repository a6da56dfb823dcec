using Gradus.Domain;

namespace Gradus.Reading;

internal static class ProgrammeReader
{
    /// <summary>A programme of at most two years.</summary>
    public const int WeeksLimit = 104;

    /// <summary>A client's own programme, or one that comes from a shared one.</summary>
    /// <param name="shared">The shared programmes that could be read, by their ids.</param>
    public static Programme? Read(
        SourceFile sheet,
        KnownIds known,
        DoseSettings settings,
        IReadOnlyDictionary<string, SharedProgramme?> shared
    )
    {
        if (Headed.Read(sheet) is not { } headed || Fields.OfHeader(sheet, headed, "a programme") is not { } fields)
            return null;
        if (fields.Has("from"))
            return FollowedReader.Read(sheet, headed, fields, known, settings, shared);
        var start = fields.NeedDate("start");
        var body = Body(sheet, fields, known, settings);
        var span = body.Weeks ?? WeeksLimit;
        var pauses = PauseReader.In(fields, start, span);
        var retest = RetestIn(fields, start is { } first ? new(first, pauses) : null, span);
        fields.Done();
        var letter = Letter(sheet, headed, known);
        return body.Title is null || start is null || body.Weeks is null
            ? null
            : new(
                body.Title,
                start.Value,
                body.Weeks.Value,
                body.Lighter,
                body.Sessions,
                body.Alternates,
                body.MoveOn,
                letter,
                body.LighterAt,
                sheet.Whole
            )
            {
                Retest = retest,
                Pauses = pauses,
            };
    }

    /// <summary>A programme that several clients may follow.</summary>
    public static SharedProgramme? ReadShared(SourceFile sheet, string id, KnownIds known, DoseSettings settings)
    {
        if (Headed.Read(sheet) is not { } headed || Fields.OfHeader(sheet, headed, "a shared programme") is not { } fields)
            return null;
        var body = Body(sheet, fields, known, settings);
        var retest = fields.Whole("retest", 1, body.Weeks ?? WeeksLimit, WeeksLimit);
        fields.Done();
        var letter = Letter(sheet, headed, known);
        return body.Title is null || body.Weeks is null
            ? null
            : new(
                id,
                body.Title,
                body.Weeks.Value,
                body.Lighter,
                body.Sessions,
                body.Alternates,
                body.MoveOn,
                retest,
                letter,
                body.LighterAt,
                sheet.Whole
            );
    }

    /// <summary>What is true of a programme whoever follows it.</summary>
    private static ProgrammeBody Body(SourceFile sheet, Fields fields, KnownIds known, DoseSettings settings)
    {
        var title = fields.NeedText("title");
        var weeks = fields.NeedWhole("weeks", 1, WeeksLimit);
        var span = weeks ?? WeeksLimit;
        var lighterAt = fields.Take("lighter")?.At ?? sheet.Whole;
        var lighter = LighterIn(fields, span);
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
        return new(title, weeks, lighter, lighterAt, sessions, alternates, moveOn);
    }

    private sealed record ProgrammeBody(
        string? Title,
        int? Weeks,
        Series<int> Lighter,
        Location LighterAt,
        Series<ProgrammeSession> Sessions,
        Series<ProgrammeSession> Alternates,
        Series<StageCheck> MoveOn
    );

    /// <summary>A letter may call whoever reads it by name.</summary>
    public static Prose Letter(SourceFile sheet, Headed headed, KnownIds known) =>
        ProseReader.Read(
            sheet,
            headed.Body,
            headed.BodyLine,
            new(Placeholders: false, known.Exercises, known.Media) { Ranges = known, Names = true }
        );

    /// <summary>A day after the first one, or the number of a week.</summary>
    public static Retest? RetestIn(Fields fields, WeekCalendar? calendar, int weeks)
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
