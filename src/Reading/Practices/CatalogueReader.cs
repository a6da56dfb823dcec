using System.Collections.Frozen;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>One catalogue file → its phrases. A phrase is a text, or a group with a text for each kind of number that the
/// language tells apart.</summary>
internal sealed class CatalogueReader
{
    /// <summary>The one key of a catalogue that is no phrase: what Gradus must be told of a language that it does not
    /// know.</summary>
    public const string LanguageKey = "language";

    private readonly SourceFile sheet;
    private readonly Language language;
    private readonly IReadOnlyDictionary<string, Phrase>? known;

    /// <param name="known">The phrases that there are, by their usual words; null for a catalogue that comes with Gradus.</param>
    private CatalogueReader(SourceFile sheet, Language language, IReadOnlyDictionary<string, Phrase>? known) =>
        (this.sheet, this.language, this.known) = (sheet, language, known);

    /// <summary>A catalogue that comes with Gradus.</summary>
    public static Dictionary<string, Phrase> Whole(SourceFile sheet, Language language) =>
        new CatalogueReader(sheet, language, null).Phrases();

    /// <summary>A catalogue of the practice: every known phrase, in the practice's own words where it has some.</summary>
    /// <param name="isWhole">Whether the practice must have words for all of them.</param>
    public static Dictionary<string, Phrase> Own(
        SourceFile sheet,
        Language language,
        IReadOnlyDictionary<string, Phrase> known,
        bool isWhole
    )
    {
        var own = new CatalogueReader(sheet, language, known).Phrases();
        if (isWhole)
        {
            var begun = EntriesOf(sheet).Select(e => e.Key).ToHashSet(StringComparer.Ordinal);
            foreach (var (key, usual) in known.Where(k => !begun.Contains(k.Key)).OrderBy(k => k.Key, StringComparer.Ordinal))
                sheet.Fault(
                    Faults.WordMissing,
                    sheet.Whole,
                    $"There is no word {Quote.Of(key)} here.",
                    $"Add a line '{key}:' with what it is in '{language.Code}'; elsewhere it is {Quote.Of(usual.Other)}."
                );
        }

        foreach (var (key, usual) in known)
            own.TryAdd(key, usual);
        return own;
    }

    /// <summary>What the catalogue says of its language; null where it says nothing.</summary>
    public static YamlNode? LanguageIn(SourceFile sheet) => EntriesOf(sheet).FirstOrDefault(e => e.Key == LanguageKey)?.Value;

    private Dictionary<string, Phrase> Phrases()
    {
        var phrases = new Dictionary<string, Phrase>(StringComparer.Ordinal);
        foreach (var entry in EntriesOf(sheet).Where(e => e.Key != LanguageKey))
        {
            if (known is not null)
                sheet.Note(entry.Name, ValueKind.Of(known.Keys.Order(StringComparer.Ordinal)));
            if (known is not null && !known.ContainsKey(entry.Key))
                sheet.Fault(
                    Faults.KeyUnknown,
                    entry.KeyAt,
                    $"{Quote.Of(entry.Key)} is no word of a site.",
                    Nearest.Ask(entry.Key, known.Keys, "Take it out; only words that are there can be replaced."),
                    entry.Key.Length
                );
            else if (PhraseOf(entry) is { } phrase && HoldsWhatItMust(entry, phrase))
                phrases[entry.Key] = phrase;
        }

        return phrases;
    }

    private bool HoldsWhatItMust(YamlEntry entry, Phrase phrase)
    {
        if (known is null)
            return true;
        var usual = known[entry.Key];
        var asked = Asked(usual.Other);

        // A form for certain numbers may say them in words, and of one there may be less to say: "Once through."
        if (Asked(phrase.Other).SetEquals(asked) && phrase.Forms.Values.All(form => Asked(form).IsSubsetOf(asked)))
            return true;
        sheet.Fault(
            Faults.ValueWrong,
            entry.KeyAt,
            $"{Quote.Of(entry.Key)} must hold the same words in braces as before: {Quote.Of(usual.Other)}.",
            "Keep every word in braces; only the text around them can change.",
            entry.Key.Length
        );
        return false;
    }

    /// <summary>What a text asks to be filled in.</summary>
    private static HashSet<string> Asked(string text) =>
        text.Split('{').Skip(1).Select(part => part.Split('}')[0]).ToHashSet(StringComparer.Ordinal);

    private Phrase? PhraseOf(YamlEntry entry)
    {
        if (entry.Value is not YamlNode.Map map)
            return TextOf(entry, entry.Key) is { } text ? new(text) : null;
        var forms = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var form in Fields.Of(sheet, map, "a phrase")?.OwnEntries ?? [])
        {
            sheet.Note(form.Name, ValueKind.Of(Language.AllForms));
            if (!language.Forms.Contains(form.Key))
                sheet.Fault(
                    Faults.KeyUnknown,
                    form.KeyAt,
                    $"{Quote.Of(form.Key)} is no form of a phrase in '{language.Code}'.",
                    $"The forms are: {string.Join(", ", language.Forms)}.",
                    Math.Max(1, form.Key.Length)
                );
            else if (TextOf(form, entry.Key) is { } said)
                forms[form.Key] = said;
        }

        foreach (var form in language.Forms.Where(f => map.Entries.All(e => e.Key != f)))
        {
            sheet.Fault(
                Faults.WordMissing,
                entry.KeyAt,
                $"{Quote.Of(entry.Key)} has no form '{form}', which '{language.Code}' has for some numbers.",
                $"Write in its braces: {string.Join(", ", language.Forms)}.",
                entry.Key.Length
            );
        }

        return forms.Count < language.Forms.Count()
            ? null
            : new(forms[Language.Other], forms.Where(f => f.Key != Language.Other).ToFrozenDictionary(StringComparer.Ordinal));
    }

    /// <param name="key">The phrase that the text belongs to.</param>
    private string? TextOf(YamlEntry entry, string key)
    {
        if (entry.Value is not YamlNode.Text { Value: var value } || Spacing.Collapse(value).Length > 0)
            return Values.Text(sheet, entry.Key, entry.Value)?.Value;
        var usual = known?.GetValueOrDefault(key)?.In(entry.Key) ?? "";
        sheet.Fault(
            Faults.WordMissing,
            entry.KeyAt,
            $"{Quote.Of(entry.Key == key ? key : $"{key}, {entry.Key}")} has no words yet.",
            $"Write what it is in '{language.Code}'; elsewhere it is {Quote.Of(usual)}.",
            entry.Key.Length
        );
        return null;
    }

    /// <summary>None where all of the file is a comment.</summary>
    private static IEnumerable<YamlEntry> EntriesOf(SourceFile sheet)
    {
        if (
            sheet.Text.Split('\n').All(line => line.Trim() is "" or ['#', ..])
            || Fields.Of(sheet, YamlReader.Read(sheet, sheet.Text, 1), "a catalogue") is not { } fields
        )
            return [];
        fields.Take(LanguageKey);
        return fields.OwnEntries;
    }
}
