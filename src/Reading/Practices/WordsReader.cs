using System.Collections.Frozen;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A catalogue file → the words of its language. A phrase is a text, or a group with <c>one</c> and <c>other</c>.</summary>
internal static class WordsReader
{
    /// <param name="own">The practice's own words for that language, which replace those of the same key; null where it has none.</param>
    public static Words Read(string language, Sheet? own, Findings findings)
    {
        var phrases = In(Embedded.Sheet(language + ".yaml", findings)).ToDictionary(p => p.Key.Value, p => p.Phrase, StringComparer.Ordinal);
        foreach (var (key, phrase) in own is null ? [] : In(own))
        {
            if (own is null || !phrases.TryGetValue(key.Value, out var usual))
                own?.Fault(Faults.KeyUnknown, key.At, $"{Quote.Of(key.Value)} is no word of a site.", Nearest.Ask(key.Value, phrases.Keys, "Take it out; only words that are there can be replaced."), key.Value.Length);
            else if (Asked(usual).SetEquals(Asked(phrase)))
                phrases[key.Value] = phrase;
            else
                own.Fault(Faults.ValueWrong, key.At, $"{Quote.Of(key.Value)} must hold the same words in braces as before: {Quote.Of(usual.Other)}.", "Keep every word in braces; only the text around them can change.", key.Value.Length);
        }

        return new(language, phrases.ToFrozenDictionary(StringComparer.Ordinal));
    }

    private static IEnumerable<(Mention<string> Key, Phrase Phrase)> In(Sheet sheet)
    {
        foreach (var entry in Fields.Of(sheet, YamlReader.Read(sheet, sheet.Text, 1), "a catalogue")?.Entries ?? [])
            if (PhraseOf(sheet, entry) is { } phrase) yield return (new(entry.Key, entry.KeyAt), phrase);
    }

    /// <summary>What a phrase asks to be filled in. The number may be left out of the singular.</summary>
    private static HashSet<string> Asked(Phrase phrase) =>
        phrase.Other.Split('{').Skip(1).Select(part => part.Split('}')[0]).ToHashSet(StringComparer.Ordinal);

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
