using Gradus.Domain;

namespace Gradus.Reading;

internal static class Language
{
    /// <summary>A language that there is a catalogue for.</summary>
    public static Mention<string>? In(Fields fields, WordBook words)
    {
        if (fields.NeedMention("language") is not { } language) return null;
        if (words.In(language.Value) is not null) return language;
        fields.Sheet.Fault(
            Faults.ValueWrong, language.At, $"Gradus has no words for a site in the language {Quote.Of(language.Value)}.",
            $"Write one of: {string.Join(", ", words.Languages)}.", language.Value.Length);
        return null;
    }
}
