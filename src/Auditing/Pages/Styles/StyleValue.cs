using System.Text.RegularExpressions;

namespace Gradus.Auditing;

/// <summary>The parts of a value in a style.</summary>
internal static partial class StyleValue
{
    [GeneratedRegex(
        @"\A(?<name>-?[a-z][\w-]*)\((?<inside>.*)\)\z",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.Singleline
    )]
    private static partial Regex Call();

    /// <summary>The name and what stands in the brackets, where the whole value is one function.</summary>
    public static (string Name, string Inside)? Function(string value) =>
        Call().Match(value) is { Success: true } call && EndOf(value, call.Groups["inside"].Index) == value.Length - 1
            ? (call.Groups["name"].Value.ToLowerInvariant(), call.Groups["inside"].Value)
            : null;

    /// <summary>The parts between separators that stand in no brackets and no quotes. Blanks count as one.</summary>
    public static IEnumerable<string> Parts(string value, char separator)
    {
        var (start, depth, quote) = (0, 0, '\0');
        for (var i = 0; i < value.Length; i++)
        {
            var sign = value[i];
            if (quote != '\0')
                quote = sign == quote ? '\0' : quote;
            else if (sign is '"' or '\'')
                quote = sign;
            else if (sign is '(' or '[')
                depth++;
            else if (sign is ')' or ']')
                depth--;
            else if (depth <= 0 && (sign == separator || (separator == ' ' && char.IsWhiteSpace(sign))))
            {
                if (separator != ' ' || i > start)
                    yield return value[start..i].Trim();
                start = i + 1;
            }
        }

        if (separator != ' ' || start < value.Length)
            yield return value[start..].Trim();
    }

    public static string[] Split(string value, char separator) => [.. Parts(value, separator)];

    /// <summary>The place of the bracket that closes what begins there; the length where none does.</summary>
    public static int EndOf(string value, int from)
    {
        var depth = 1;
        for (var i = from; i < value.Length; i++)
        {
            depth += value[i] switch
            {
                '(' => 1,
                ')' => -1,
                _ => 0,
            };
            if (depth == 0)
                return i;
        }

        return value.Length;
    }

    /// <summary>The value with each variable filled in; null where one is not there and has nothing to fall back on (CSS Custom
    /// Properties 1).</summary>
    public static string? Filled(string value, Func<string, string?> find, int depth = 0)
    {
        var at = value.IndexOf("var(", StringComparison.OrdinalIgnoreCase);
        if (at < 0)
            return value;
        if (depth > 20)
            return null;
        var end = EndOf(value, at + 4);
        if (end >= value.Length)
            return null;
        var parts = value[(at + 4)..end].Split(',', 2);
        var found = find(parts[0].Trim()) is { } said ? Filled(said, find, depth + 1) : null;
        var filled = found ?? (parts.Length > 1 ? Filled(parts[1], find, depth + 1) : null);
        return filled is null ? null : Filled(value[..at] + filled + value[(end + 1)..], find, depth + 1);
    }
}
