namespace Gradus.Domain;

/// <summary>A programme that several clients follow, without any of them: when it begins, and what one of them does otherwise,
/// stands with the client.</summary>
/// <param name="RetestWeek">The week in which ranges are measured again; null where each client's programme says it, or
/// nobody.</param>
/// <param name="Letter">In which <c>{name}</c> stands for the client's.</param>
public sealed record SharedProgramme(
    string Id,
    string Title,
    int Weeks,
    Series<int> Lighter,
    Series<ProgrammeSession> Sessions,
    Series<ProgrammeSession> Alternates,
    Series<StageCheck> MoveOn,
    int? RetestWeek,
    Prose Letter,
    Location LighterAt,
    Location At
)
{
    /// <summary>What stands in the letter for the client's name.</summary>
    public const string NamePlaceholder = "name";

    public static string PathOf(string id) => $"programmes/{id}.md";
}

/// <summary>The shared programme that a client follows, and what the client does otherwise.</summary>
/// <param name="Minutes">The time that the client has for a session of it; null where client.yaml says it.</param>
/// <param name="HasOwnLetter">Whether the client reads another letter than the shared one.</param>
public sealed record SharedFrom(
    Mention<string> Programme,
    Series<Difference> Differences,
    Series<string> OwnDays,
    int? Minutes,
    bool HasOwnLetter
);
