using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What is said beside whatever came back.</summary>
internal static class CameBackSentences
{
    /// <summary>For who is under 18.</summary>
    public static string Guardian(Client client) =>
        client.Born.IsIn(AgeBand.Under18, client.Programme) ? " Tell the guardian too." : "";

    /// <summary>For an entry of a day that is still to come.</summary>
    public static string Clock(LogEntry entry, DateOnly today) =>
        entry.Day > today ? " That day is still to come: if a clock was wrong, put the day right in log.csv." : "";
}
