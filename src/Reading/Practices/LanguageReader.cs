using Gradus.Domain;

namespace Gradus.Reading;

internal static class LanguageReader
{
    private static readonly ValueKind Kind = new ValueKind.Pattern("^[a-z]{2}$", IsOfDigits: false);

    /// <summary>The language that a coach writes in, whether or not there is a catalogue for it.</summary>
    public static Mention<string>? In(Fields fields)
    {
        if (fields.NeedMention("language") is not { } language)
            return null;
        fields.SourceFile.Note(language, Kind);
        if (Translation.IsLanguage(language.Value))
            return language;
        fields.SourceFile.Fault(
            Faults.ValueWrong,
            language.At,
            $"{Quote.Of(language.Value)} is no language.",
            "Write the two small letters of the language that the texts are written in, as en or de.",
            language.Value.Length
        );
        return null;
    }

    /// <summary>A language that there is a catalogue for, so that a site can be made in it.</summary>
    public static Mention<string>? In(Fields fields, WordBook words)
    {
        if (fields.NeedMention("language") is not { } language)
            return null;
        fields.SourceFile.Note(language, Kind);
        if (words.In(language.Value) is not null)
            return language;
        var bring = Translation.IsLanguage(language.Value)
            ? $" Or bring its words: 'gradus new words {language.Value}' writes words/{language.Value}.yaml to fill in."
            : "";
        fields.SourceFile.Fault(
            Faults.ValueWrong,
            language.At,
            $"There are no words for a site in the language {Quote.Of(language.Value)}.",
            $"Write one of: {string.Join(", ", words.Languages)}.{bring}",
            language.Value.Length
        );
        return null;
    }
}
