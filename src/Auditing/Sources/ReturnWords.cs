using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

/// <summary>What came back from a client, in words for the coach.</summary>
public static class ReturnWords
{
    public static string Of(PainKind kind) =>
        kind switch
        {
            PainKind.Now => "a sign that cannot wait",
            PainKind.SameDay => "a stop that a clinician sees the same day",
            PainKind.Stopped => "pain that stopped it",
            PainKind.AboveStop => "pain above the stop",
            PainKind.NextMorning => "pain that was worse on the morning after",
            PainKind.Rising => "pain that rises",
            PainKind.AboveEase => "pain above the ease-off again",
            PainKind.Lasting => "pain that lasts",
        };

    /// <summary>"chest pain", "breathlessness": what the entry tells that cannot wait.</summary>
    public static string SignOf(LogEntry entry) =>
        entry.Alarm switch
        {
            RedFlag.Breath => "breathlessness",
            RedFlag.Faint => "fainting",
            RedFlag.Weakness => "weakness on one side",
            RedFlag.Speech => "trouble speaking",
            RedFlag.Sight => "a change of sight",
            RedFlag.Headache => "the worst headache ever",
            RedFlag.Saddle => "numbness of the saddle, or trouble with the bladder",
            RedFlag.Other => "a sign that is not known here",
            RedFlag.Chest or null => "chest pain",
        };

    /// <summary>"pain of 7 in the left knee", "sharp pain or giving way in the left knee", as it was told.</summary>
    public static string Of(ReturnedPain pain) =>
        pain.Kind switch
        {
            PainKind.Now => SignOf(pain.Entry),
            PainKind.SameDay => $"{ReasonsOf(pain)} ({pain.Place})",
            PainKind.Stopped when pain.Level is { } level && Reasons(pain).Length == 0 => $"{Level(level)} ({pain.Place})",
            PainKind.Stopped => $"{ReasonsOf(pain)} ({pain.Place})",
            PainKind.AboveStop => $"{Level(pain.Level ?? 0)} before it or on the morning after ({pain.Place})",
            PainKind.NextMorning => pain.Level is { } level
                ? $"worse on the morning after: {Level(level)} ({pain.Place})"
                : $"worse on the morning after ({pain.Place})",
            PainKind.Rising => $"mornings 2 points or more above those of two weeks before ({pain.Place})",
            PainKind.AboveEase => "more than the pages say to ease off at, in two sessions or more of the last 14 days: up to "
                + $"{Level(pain.Level ?? 0)} ({pain.Place})",
            PainKind.Lasting => $"pain in two thirds or more of the last 14 days' sessions ({pain.Place})",
        };

    private static string Level(int level) => string.Create(CultureInfo.InvariantCulture, $"pain of {level} out of 10");

    private static string ReasonsOf(ReturnedPain pain) => string.Join(" and ", Reasons(pain));

    private static string[] Reasons(ReturnedPain pain) =>
        [
            .. pain
                .Entry.Exercises.Select(e => e.For)
                .Append((pain.Entry.Outcome as LogOutcome.EndedEarly)?.For)
                .OfType<StopReason>()
                .Where(f => IsOf(pain.Kind, f))
                .Distinct()
                .Select(Of),
        ];

    private static bool IsOf(PainKind kind, StopReason why) =>
        kind == PainKind.Stopped
            ? why is StopReason.Sharp or StopReason.GivingWay
            : why is StopReason.Numb or StopReason.Snap or StopReason.Swollen or StopReason.NoWeight;

    public static string Of(StopReason why) =>
        why switch
        {
            StopReason.Sharp => "sharp pain",
            StopReason.Dull => "dull pain",
            StopReason.Numb => "numbness",
            StopReason.GivingWay => "giving way",
            StopReason.Snap => "something that snapped or tore",
            StopReason.Swollen => "a hot, swollen or tender joint or calf",
            StopReason.NoWeight => "a limb that does not bear weight",
            StopReason.Tired => "tiredness",
            StopReason.Time => "no time",
        };
}
