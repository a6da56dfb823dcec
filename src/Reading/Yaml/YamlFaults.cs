using System.Buffers;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What the YAML parser says → what a coach can do about it.</summary>
internal static class YamlFaults
{
    private const string Unreadable = "This cannot be read as keys and values.";

    /// <summary>Quotation marks as a word processor makes them of straight ones. Not the single one, which is an apostrophe
    /// too.</summary>
    private static readonly SearchValues<char> Typographic = SearchValues.Create("\u201c\u201d\u201e\u00ab\u00bb");

    /// <summary>Where to look: at the tab itself, where one is the trouble.</summary>
    public static Location Place(string said, SourceFile sheet, Location place)
    {
        if (!said.Contains("tab", StringComparison.Ordinal))
            return place;
        var lines = sheet.Text.Split('\n');
        var line = Array.FindIndex(lines, Math.Max(0, place.Line - 1), text => text.TrimStart(' ').StartsWith('\t'));
        return line < 0 ? place : sheet.At(line + 1, lines[line].IndexOf('\t', StringComparison.Ordinal) + 1);
    }

    /// <summary>What to do about quotation marks that YAML takes for letters; null where there are none.</summary>
    public static string? OfQuotes(ReadOnlySpan<char> text) =>
        text.ContainsAny(Typographic)
            ? "These quotation marks are those of a word processor, which count as letters here. Write straight ones, \"."
            : null;

    /// <param name="line">That the parser stopped in.</param>
    public static (string Message, string Help) Of(string said, ReadOnlySpan<char> line)
    {
        if (Says("tab"))
            return ("A tab stands here where only spaces can.", "Put spaces in its place.");
        if (Says("quoted scalar") && Says("end of stream"))
            return (
                "A quotation mark opens here and nothing closes it.",
                "Put one at the end of the text, or take this one out."
            );
        if (OfQuotes(line) is { } quotes)
            return (Unreadable, quotes);
        return (
            Unreadable,
            "Look at this line and the one above it: a space missing after a colon, a text with a colon in it that needs "
                + "quotation marks, a quotation mark that is not closed, or spaces that do not line up."
        );

        bool Says(string words) => said.Contains(words, StringComparison.Ordinal);
    }
}
