using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>ID.LANG.md</c>: the title and the text of a caution or an exercise in another language. It is no second id.</summary>
internal static class TranslationReader
{
    private const int LanguageLength = 2;

    /// <summary>Whether a file's name, without its ending, is that of a translation.</summary>
    public static bool IsOne(string name) =>
        name.Length > LanguageLength + 1 && name[^(LanguageLength + 1)] == '.' && name[^LanguageLength..].All(char.IsAsciiLetterLower);

    /// <param name="part">exercises or cautions.</param>
    public static Translation? Read(Sheet sheet, string part, string name, KnownIds known)
    {
        var (id, language) = (name[..^(LanguageLength + 1)], name[^LanguageLength..]);
        var ids = part == "exercises" ? known.Exercises : known.Cautions;
        if (!ids.Contains(id))
        {
            sheet.Fault(
                Faults.FileNameWrong, sheet.Whole, $"This would be the translation of {part}/{id}.md, which there is not.",
                Nearest.Ask(id, ids.Order(StringComparer.Ordinal), "Give it the name of the file that it translates, with the language before .md."));
            return null;
        }

        if (Headed.Read(sheet) is not { } headed || Fields.OfHeader(sheet, headed, "a translation") is not { } fields) return null;
        var title = fields.NeedText("title");
        fields.Done();
        var body = ProseReader.Read(sheet, headed.Body, headed.BodyLine, new(Placeholders: part == "exercises", known.Exercises, known.Pictures));
        return title is null ? null : new($"{part}/{id}.md", language, title, body, sheet.Whole);
    }
}
