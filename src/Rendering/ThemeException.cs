using Gradus.Domain;
using Scriban.Parsing;

namespace Gradus.Rendering;

/// <summary>A theme that cannot be filled.</summary>
/// <param name="help">What to do about it; null for the usual.</param>
internal sealed class ThemeException(Location at, string message, string? help = null) : Exception(message)
{
    private const int LengthLimit = 200;

    public Location At { get; } = at;

    public string Help { get; } =
        help ?? "Mend the template there; its page in the documentation lists every name that a template may use.";

    /// <summary>What is wrong at a place of a template. Only the beginning of what is long is said.</summary>
    public static ThemeException In(SourceSpan span, string message, string? help = null) =>
        new(
            new(span.FileName ?? "theme", span.Start.Line + 1, span.Start.Column + 1),
            message.Length <= LengthLimit
                ? message
                : message[..(char.IsHighSurrogate(message[LengthLimit - 1]) ? LengthLimit - 1 : LengthLimit)] + "…",
            help
        );
}
