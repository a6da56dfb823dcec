namespace Gradus.Domain;

/// <summary>Signs that cannot wait, as a log tells of them.</summary>
public static class RedFlags
{
    /// <summary>Whether an entry tells of one: an alarm, or pain in the chest, at any level above nothing and where only the
    /// place was said.</summary>
    public static bool IsSign(this LogEntry entry) => entry.Alarm is not null || entry.Pains().Any(IsOfTheChest);

    /// <summary>Every pain that the entry tells of, those of its exercises last.</summary>
    public static IEnumerable<LoggedPain> Pains(this LogEntry entry) =>
        new[] { entry.Before, entry.During, entry.Morning }.Concat(entry.Exercises.Select(e => e.Pain)).OfType<LoggedPain>();

    private static bool IsOfTheChest(LoggedPain pain) => pain is { Where.Name: "chest", Level: null or > 0 };
}
