namespace Gradus.Domain;

/// <summary>A word that the practice explains to its clients, from <c>glossary.yaml</c>.</summary>
public sealed record GlossaryEntry(string Word, string Explanation, Location At);
