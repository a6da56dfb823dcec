using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>One line for a program, whose sum fits → an entry.</summary>
internal sealed class LogMessageLine
{
    private static readonly string[] Names =
    [
        "gradus",
        "edition",
        "course",
        "week",
        "session",
        "kind",
        "done",
        "stopped",
        "not today",
        "steps",
        "minutes",
        "effort",
        "pain-before",
        "pain-during",
        "pain-morning",
        "worse",
        "alarm",
        "pain",
        "sets",
        "left out",
        "measured",
        "note",
    ];

    private readonly Dictionary<string, string> parts = new(StringComparer.Ordinal);
    private readonly LogRemarks remarks;
    private readonly int line;

    private LogMessageLine(int line, LogRemarks remarks) => (this.line, this.remarks) = (line, remarks);

    private LogField this[string name] => new(name, parts.GetValueOrDefault(name, ""), line, remarks);

    /// <summary>Null (and a remark) where the day, the session or the week cannot be read.</summary>
    public static LogEntry? Read(string name, int line, string text, LogRemarks remarks)
    {
        var read = new LogMessageLine(line, remarks);
        foreach (var part in text.Split("; "))
        {
            if (Names.FirstOrDefault(n => part == n || part.StartsWith(n + " ", StringComparison.Ordinal)) is { } known)
                read.parts.TryAdd(known, part[known.Length..].Trim());
            else
                remarks.Note(line, $"{Letters.Quoted(part)} is not known here, and was left out");
        }

        return read.Entry(new(name, line, 1));
    }

    private LogEntry? Entry(Location at)
    {
        var when = this["gradus"].Text.Split(' ');
        var day = LogDays.DayOf(this["gradus"] with { Text = when[0] });
        var (session, week) = (Needed("session"), Needed("week"));
        if (day is null || session is null || week is null)
            return null;
        var steps = this["steps"].Text.Split(" of ");
        return new(
            day.Value,
            LogDays.TimeOf(this["gradus"] with { Name = "start", Text = when.Length > 1 ? when[1] : "" }),
            session.Value,
            week.Value,
            this["kind"].Is("full") ? null : this["kind"].Word<AlternateKind>(),
            this["course"].Key(),
            this["edition"].Edition(),
            Outcome(),
            (this["steps"] with { Text = steps[0] }).Whole(0, 9999),
            (this["steps"] with { Text = steps.Length == 2 ? steps[1] : "" }).Whole(0, 9999),
            this["minutes"].Number(0, 1440),
            this["effort"].Whole(0, 10),
            this["pain-before"].Pain(),
            this["pain-during"].Pain() ?? OldPain(),
            this["pain-morning"].Pain(),
            this["worse"].Flag(),
            this["alarm"].Alarm(),
            Exercises(),
            this["note"].Text,
            at
        );
    }

    private int? Needed(string name)
    {
        if (this[name].IsBlank)
            remarks.Unread(line, $"there is no number of a {name}; not taken");
        return this[name].Whole(1, 9999);
    }

    private LogOutcome Outcome() =>
        parts.ContainsKey("not today") ? new LogOutcome.NotToday(this["not today"].Word<NotTodayReason>())
        : parts.ContainsKey("stopped") ? new LogOutcome.EndedEarly(this["stopped"].Word<StopReason>())
        : new LogOutcome.Done();

    /// <summary>"3 of 10, left knee", "none", "not said".</summary>
    private LoggedPain? OldPain()
    {
        var pain = this["pain"];
        if (pain.IsBlank || pain.Is("not said"))
            return null;
        var parted = pain.Text.Split(" of 10", 2);
        return (
            pain with
            {
                Text = pain.Is("none") ? "0" : string.Join(' ', parted.Select(p => p.Trim(',', ' '))).Trim(),
            }
        ).Pain();
    }

    private Series<LoggedExercise> Exercises()
    {
        var exercises = new List<LoggedExercise>();
        foreach (var (words, exercise) in Items("sets"))
            exercises.Add(exercise with { Sets = Rest("sets", words).Whole(0, 1000) });
        foreach (var (words, exercise) in Items("left out"))
            Keep(exercises, Stopped(words, exercise));
        foreach (var (words, exercise) in Items("measured"))
            Keep(exercises, exercise with { Measured = Rest("measured", words).Numbers() });
        return exercises.ToSeries();
    }

    /// <summary>What is told of an exercise in several parts is one line of it.</summary>
    private static void Keep(List<LoggedExercise> exercises, LoggedExercise other)
    {
        var at = exercises.FindIndex(e => e.Exercise == other.Exercise && e.Side == other.Side);
        if (at < 0)
            exercises.Add(other);
        else
            exercises[at] = exercises[at] with
            {
                IsStopped = exercises[at].IsStopped || other.IsStopped,
                For = other.For ?? exercises[at].For,
                Pain = other.Pain ?? exercises[at].Pain,
                Measured = other.Measured.Count > 0 ? other.Measured : exercises[at].Measured,
            };
    }

    /// <summary>"plank", "plank sharp left knee", "ankle-rock left sharp"; a side before a place alone is that of the
    /// place.</summary>
    private LoggedExercise Stopped(string[] words, LoggedExercise exercise)
    {
        if (exercise.Side is not null && words.Length > 0 && !IsReason(words[0]) && LogField.SideOf(words[0]) is null)
            (words, exercise) = ([exercise.Side.Value.Word(), .. words], exercise with { Side = null });
        var reason = words.Length > 0 && IsReason(words[0]) ? LogWords<StopReason>.Of(words[0]) : null;
        return exercise with
        {
            IsStopped = true,
            For = reason,
            Pain = Rest("left out", reason is null ? words : words[1..]).Pain(),
        };
    }

    private static bool IsReason(string word) => LogWords<StopReason>.Of(word) is not null;

    private LogField Rest(string name, string[] words) => this[name] with { Text = string.Join(' ', words) };

    /// <summary>The exercises of a part, each with its side, and the words behind them.</summary>
    private IEnumerable<(string[] Words, LoggedExercise Exercise)> Items(string part)
    {
        foreach (var item in this[part].Text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var words = item.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (!Id.IsValid(words[0]))
            {
                remarks.Unread(line, $"exercise {Letters.Quoted(words[0])} is no id; not taken");
                continue;
            }

            var side = words.Length > 1 ? LogField.SideOf(words[1]) : null;
            yield return (words[(side is null ? 1 : 2)..], new(new(words[0]), side, null, null, "", null, false, null, []));
        }
    }
}
