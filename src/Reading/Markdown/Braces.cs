using System.Text.RegularExpressions;
using Gradus.Domain;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Gradus.Reading;

/// <summary>Braces that stand for nothing: a client would read them where a number should stand. A word of small letters in an
/// exercise's text is a placeholder, and the rules judge it.</summary>
internal static partial class Braces
{
    private const string Otherwise = "Write round brackets: in a text, braces hold only what Gradus fills in.";

    private static readonly string[] Anywhere = [EmergencyNumber.Placeholder];

    [GeneratedRegex(@"\{[^{}\n]*\}|[{}]", RegexOptions.CultureInvariant)]
    private static partial Regex Shape();

    [GeneratedRegex(@"^\{[a-z]+\}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Placeholder();

    public static void Find(SourceFile sheet, int firstLine, LaidOut text, MarkdownDocument document, ProseRules rules)
    {
        foreach (Match match in Shape().Matches(text.Shown))
        {
            var placeholders = rules.Placeholders;
            var isPlain = string.CompareOrdinal(text.Letters, match.Index, match.Value, 0, match.Length) == 0;
            var name = match.Value.Trim('{', '}');
            if (isPlain && Placeholder().IsMatch(match.Value) && rules.Fills(name))
                continue;
            if (isPlain && rules.Ranges is not null && RangeFigures.Is(match.Value))
                continue;
            var (line, column) = text.Place(match.Index);
            var (message, help) = RangeFigures.Said(match.Value, isPlain && rules.Ranges is not null)
                ?? Said(match.Value, name, isPlain, placeholders);
            sheet.Fault(Faults.BraceInText, sheet.At(firstLine + line, column), message, help, match.Length);
        }

        foreach (var entity in document.Descendants<HtmlEntityInline>().Where(e => HasAny(e.Transcoded.ToString())))
            sheet.Fault(
                Faults.BraceInText,
                sheet.At(firstLine + entity.Line, entity.Column + 1),
                "This stands for a brace, and a brace is never shown on a page.",
                Otherwise,
                entity.Span.Length
            );
    }

    /// <summary>The value of a key, which is shown as it is.</summary>
    public static void Find(SourceFile sheet, string key, YamlNode.Text text)
    {
        if (HasAny(text.Value))
            sheet.Fault(
                Faults.BraceInText,
                text.At,
                $"{Quote.Of(key)} holds a brace, and a brace is never shown on a page.",
                "Write round brackets: only in the text below a header is something filled in.",
                text.Value.Length
            );
    }

    private static bool HasAny(string text) => text.AsSpan().ContainsAny('{', '}');

    private static (string Message, string Help) Said(string written, string name, bool isPlain, bool placeholders)
    {
        if (written.Length == 1)
            return ("This brace stands alone, and a brace is never shown on a page.", Otherwise);
        if (!isPlain)
            return ($"{Quote.Of(written)} is not filled in here, and a brace is never shown on a page.", Otherwise);
        if (Nearest.To(name, Anywhere) is { } emergency)
            return (
                $"{Quote.Of(written)} stands for nothing here.",
                $"Write {{{emergency}}}, which is filled with the number that the client calls."
            );
        var meant = PlaceholderNames.Meant(name);
        return (placeholders, meant) switch
        {
            (true, not null) => ($"{Quote.Of(written)} is not a placeholder.", $"Did you mean {{{meant}}}?"),
            (false, not null) => (
                $"{Quote.Of(written)} stands for nothing here.",
                "Say it without braces: only an exercise's own text is filled in from the dose."
            ),
            _ => ($"{Quote.Of(written)} stands for nothing here.", Otherwise),
        };
    }
}
