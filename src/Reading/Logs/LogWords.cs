using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The words that a log has for the members of an enumeration: their names in small letters, joined by hyphens.</summary>
internal static class LogWords<T>
    where T : struct, Enum
{
    private static readonly Dictionary<string, T> Known = Enum.GetValues<T>()
        .ToDictionary(value => Kebab.Of(value.ToString()), StringComparer.OrdinalIgnoreCase);

    public static string All { get; } = string.Join(", ", Known.Keys);

    public static T? Of(string word) => Known.TryGetValue(word, out var value) ? value : null;

    public static string Word(T? value) => value is { } one ? Kebab.Of(one.ToString()) : "";
}
