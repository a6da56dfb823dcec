using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What an author wrote, inside a sentence: in quotation marks, on one line, and only its beginning where it is
/// long.</summary>
internal static class Quote
{
    private const int LengthLimit = 60;

    public static string Of(string? written)
    {
        var text = Spacing.Collapse(written ?? "");
        return text.Length <= LengthLimit
            ? $"'{text}'"
            : $"'{text[..(char.IsHighSurrogate(text[LengthLimit - 1]) ? LengthLimit - 1 : LengthLimit)]}…'";
    }
}
