using System.Collections.Frozen;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A catalogue file → the words of its language. A phrase is a text, or a group with <c>one</c> and <c>other</c>.</summary>
internal static class WordsReader
{
    public static Words Read(string language, Findings findings)
    {
        var sheet = Embedded.Sheet(language + ".yaml", findings);
        var phrases = new Dictionary<string, Phrase>(StringComparer.Ordinal);
        foreach (var entry in Fields.Of(sheet, YamlReader.Read(sheet, sheet.Text, 1), "a catalogue")?.Entries ?? [])
            if (PhraseOf(sheet, entry) is { } phrase) phrases.Add(entry.Key, phrase);
        return new(language, phrases.ToFrozenDictionary(StringComparer.Ordinal));
    }

    private static Phrase? PhraseOf(Sheet sheet, YamlEntry entry)
    {
        if (entry.Value is not YamlNode.Map)
            return Values.Text(sheet, entry.Key, entry.Value) is { } text ? new(text.Value, text.Value) : null;
        if (Fields.Of(sheet, entry.Value, "a phrase with a number") is not { } fields) return null;
        var one = fields.NeedText("one");
        var other = fields.NeedText("other");
        fields.Done();
        return one is null || other is null ? null : new(one, other);
    }
}
