namespace Gradus.Domain;

/// <summary>People who train one session of a shared programme together, with the coach. It is for the coach alone: nothing of it
/// stands on a client's page.</summary>
/// <param name="Clients">At least one, each once.</param>
/// <param name="Programme">The shared programme that all of them follow.</param>
/// <param name="Session">Its session that they do together.</param>
/// <param name="Hour">When it begins; null where nothing is said.</param>
/// <param name="Place">Empty where nothing is said.</param>
public sealed record Group(
    string Id,
    string Name,
    Series<ClientId> Clients,
    SharedProgramme Programme,
    ProgrammeSession Session,
    DayOfWeek Day,
    TimeOnly? Hour,
    string Place,
    Location At
)
{
    /// <summary>More do not fit on one page.</summary>
    public const int Most = 12;

    public static string PathOf(string id) => $"groups/{id}.yaml";

    /// <summary>Whether a file is about a group, and so about no client's pages.</summary>
    public static bool IsOf(string file) => file.StartsWith("groups/", StringComparison.Ordinal);

    /// <summary>The next day on which they meet.</summary>
    public DateOnly NextFrom(DateOnly today) => today.AddDays(((int)Day - (int)today.DayOfWeek + 7) % 7);
}
