using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What may be said of a condition before somebody goes on.</summary>
public enum MoveOnWord
{
    Met,
    NotMet,

    /// <summary>Too few sessions, or a blank among them, which is never a no and never 0.</summary>
    NotTold,
}

/// <summary>The conditions of one exercise, or of one stage, before the client goes on. Nothing ever goes on by itself.</summary>
/// <param name="Exercise">Null for the conditions of a stage.</param>
/// <param name="Stage">Null for those of an exercise.</param>
/// <param name="Computed">The conditions that the log can answer, as the coach wrote them.</param>
/// <param name="Word">Of them together; null where there is none.</param>
/// <param name="Since">The day of the last of the sessions that meet them; null where they are not met.</param>
/// <param name="Asked">The others, which the coach answers.</param>
public sealed partial record MoveOnCheck(
    ExerciseId? Exercise,
    Stage? Stage,
    Series<string> Computed,
    MoveOnWord? Word,
    DateOnly? Since,
    Series<string> Asked
)
{
    private static readonly string[] Numbers = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

    [GeneratedRegex(@"^pain (?:is )?at most (\d{1,2})\z", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex PainAtMost();

    [GeneratedRegex(@"^(\d{1,2}|[a-z]+) sessions running\z", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex SessionsRunning();

    public static IEnumerable<MoveOnCheck> Of(Client client, Training training, CountedLog log)
    {
        foreach (
            var own in from use in training.Uses
            where use.Version is null && use.Weeks.Count > 0 && use.Written.MoveOn.Count > 0
            group use by (use.Exercise.Id, use.Written.MoveOn) into same
            select same.Key
        )
            yield return Of(training, log, own.Id, null, own.MoveOn, e => e == own.Id);
        foreach (var check in client.Programme.MoveOn)
        {
            var exercises = training.Uses.Where(u => u.Exercise.Stage == check.Stage).Select(u => u.Exercise.Id).ToHashSet();
            yield return Of(training, log, null, check.Stage, check.Conditions, exercises.Contains);
        }
    }

    private static MoveOnCheck Of(
        Training training,
        CountedLog log,
        ExerciseId? exercise,
        Stage? stage,
        Series<string> conditions,
        Func<ExerciseId, bool> isAbout
    )
    {
        var computed = conditions.Where(c => PainIn(c) is not null || SessionsIn(c) is not null).ToSeries();
        var asked = conditions.Where(c => !computed.Contains(c)).ToSeries();
        if (computed.Count == 0)
            return new(exercise, stage, computed, null, null, asked);
        var (most, sessions) = (
            computed.Select(PainIn).OfType<int>().Select(n => (int?)n).Min(),
            computed.Select(SessionsIn).OfType<int>().DefaultIfEmpty(1).Max()
        );
        var last = log.Done.Where(e => e.Exercises.Any(x => isAbout(x.Exercise))).TakeLast(sessions).ToArray();
        var words = last.Select(e => Judge(training, e, most, isAbout)).ToArray();
        var word =
            words.Contains(MoveOnWord.NotMet) ? MoveOnWord.NotMet
            : last.Length < sessions || words.Contains(MoveOnWord.NotTold) ? MoveOnWord.NotTold
            : MoveOnWord.Met;
        return new(exercise, stage, computed, word, word == MoveOnWord.Met ? last[^1].Day : null, asked);
    }

    /// <summary>All sets done, and the worst pain and that of the morning after said, and no more than that.</summary>
    private static MoveOnWord Judge(Training training, LogEntry entry, int? most, Func<ExerciseId, bool> isAbout)
    {
        var lines = entry.Exercises.Where(x => isAbout(x.Exercise)).ToArray();
        var sets = lines.Select(line =>
            line.Sets is { } sets ? SetsDone.PlanOf(training, entry, line).All(p => sets >= p.Sets) : (bool?)null
        );
        int?[] pains = most is null ? [] : [entry.During?.Level, MorningOf(entry)];
        return lines.Any(l => l.IsStopped) || sets.Contains(false) || pains.Any(p => p > most) ? MoveOnWord.NotMet
            : sets.Contains(null) || pains.Contains(null) ? MoveOnWord.NotTold
            : MoveOnWord.Met;
    }

    /// <summary>The pages ask for a level only where the morning was worse: one that was not has no more than was told before or
    /// while it was done.</summary>
    private static int? MorningOf(LogEntry entry) =>
        entry.Morning?.Level ?? (entry.Worse == false ? new[] { entry.Before?.Level, entry.During?.Level }.Max() : null);

    private static int? PainIn(string condition) =>
        PainAtMost().Match(condition) is { Success: true } found
            ? int.Parse(found.Groups[1].ValueSpan, CultureInfo.InvariantCulture)
            : null;

    private static int? SessionsIn(string condition)
    {
        if (SessionsRunning().Match(condition) is not { Success: true } found)
            return null;
        var said = found.Groups[1].Value;
        return int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? Math.Max(1, number)
            : Array.FindIndex(Numbers, n => n.Equals(said, StringComparison.OrdinalIgnoreCase)) is >= 0 and var at ? at + 1
            : null;
    }
}
