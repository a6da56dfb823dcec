using System.Globalization;
using Gradus.Domain;

namespace Gradus.Tests.Trainings;

/// <summary>Entries of a log as a test writes them: "+3 session 1 week 1; before 2 left knee; during 4 left knee; morning 5;
/// worse;
/// stopped sharp; drill sharp left knee; alarm chest; not today pain; effort 5; minutes 20; steps 12 of 20; sets drill left
/// 2". The
/// number in front is the day from the first of the programme; what is not said stays blank.</summary>
internal static class ToldLog
{
    public static readonly DateOnly Start = new(2027, 1, 4);

    public static Series<LogEntry> Log(params string[] entries) => entries.Select(Entry).ToSeries();

    public static LogEntry Entry(string text)
    {
        var parts = text.Split("; ");
        var entry = Head(parts[0].Split(' '));
        foreach (var part in parts.Skip(1))
            entry = With(entry, part);
        return entry;
    }

    private static LogEntry Head(string[] words)
    {
        var day = Start.AddDays(Number(words[0]));
        return new(
            day,
            null,
            words is [_, "session", var session, ..] ? Number(session) : 1,
            words is [.., "week", var week] ? Number(week) : Math.Max(1, ((day.DayNumber - Start.DayNumber) / 7) + 1),
            null,
            null,
            "an edition",
            new LogOutcome.Done(),
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            [],
            "",
            new("clients/ada/log.csv", 2, 1)
        );
    }

    private static LogEntry With(LogEntry entry, string part)
    {
        var (word, rest) = part.Split(' ', 2) is [var first, var then] ? (first, then) : (part, "");
        return word switch
        {
            "start" => entry with { Start = TimeOnly.Parse(rest, CultureInfo.InvariantCulture) },
            "before" => entry with { Before = PainOf(rest) },
            "during" => entry with { During = PainOf(rest) },
            "morning" => entry with { Morning = PainOf(rest) },
            "worse" => entry with { Worse = true },
            "better" => entry with { Worse = false },
            "stopped" => entry with { Outcome = new LogOutcome.EndedEarly(rest == "" ? null : Reason(rest)) },
            "not" => entry with { Outcome = new LogOutcome.NotToday(Enum.Parse<NotTodayReason>(rest["today ".Length..], true)) },
            "alarm" => entry with { Alarm = Enum.Parse<RedFlag>(rest, true) },
            "effort" => entry with { Effort = Number(rest) },
            "minutes" => entry with { Minutes = decimal.Parse(rest, CultureInfo.InvariantCulture) },
            "steps" => entry with { StepsDone = Number(rest.Split(" of ")[0]), StepsPlanned = Number(rest.Split(" of ")[1]) },
            "course" => entry with { Course = rest },
            "kind" => entry with { Kind = Enum.Parse<AlternateKind>(rest, true) },
            "unknown" => entry with { Edition = null },
            "sets" => entry with { Exercises = [.. entry.Exercises, Sets(rest.Split(' '))] },
            "note" => entry with { Note = rest },
            _ => entry with { Exercises = [.. entry.Exercises, Stopped(word, rest)] },
        };
    }

    private static LoggedExercise Sets(string[] words) =>
        new(new(words[0]), SideOf(words[1]), words[^1] == "?" ? null : Number(words[^1]), null, "", null, false, null, []);

    private static LoggedExercise Stopped(string exercise, string rest)
    {
        var (why, where) = rest.Split(' ', 2) is [var first, var then] ? (first, then) : (rest, "");
        return new(new(exercise), null, 1, null, "", where == "" ? null : PainOf(where), true, Reason(why), []);
    }

    /// <summary>"2 left knee", "2", "left knee".</summary>
    private static LoggedPain PainOf(string text)
    {
        var words = text.Split(' ').ToList();
        int? level = int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
        if (level is not null)
            words.RemoveAt(0);
        var side = words.Count > 1 ? SideOf(words[0]) : null;
        if (side is not null)
            words.RemoveAt(0);
        var where = words.Count == 0 ? null : Region.Find(string.Join(' ', words)) ?? throw new ArgumentException(text);
        return new(level, where, side);
    }

    private static Side? SideOf(string word) =>
        word switch
        {
            "left" => Side.Left,
            "right" => Side.Right,
            _ => null,
        };

    private static StopReason Reason(string word) =>
        Enum.Parse<StopReason>(word.Replace("-", "", StringComparison.Ordinal), true);

    private static int Number(string text) => int.Parse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
}
