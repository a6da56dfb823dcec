namespace Gradus.Domain;

/// <summary>What the coach wrote of a caution or an exercise in another language, from <c>ID.LANG.md</c> beside <c>ID.md</c>.</summary>
/// <param name="Of">The file it translates, as <c>cautions/cramp.md</c>.</param>
/// <param name="Language">BCP 47, two letters.</param>
public sealed record Translation(string Of, string Language, string Title, Prose Body, Location At);
