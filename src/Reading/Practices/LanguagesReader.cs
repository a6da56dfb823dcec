using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What must be known of a language to write in it: of those that come with Gradus from <c>Languages/languages.yaml</c>,
/// of any other from the practice's own catalogue.</summary>
internal static class LanguagesReader
{
    private static readonly (string, bool)[] Directions = [("ltr", false), ("rtl", true)];

    /// <summary>By code.</summary>
    public static IReadOnlyDictionary<string, Language> BuiltIn(Findings findings)
    {
        var sheet = Embedded.SourceFile("languages.yaml", findings);
        var entries = Fields.Of(sheet, YamlReader.Read(sheet, sheet.Text, 1), "languages")?.Entries ?? [];
        return entries
            .Select(entry => In(sheet, entry.Key, entry.Value))
            .OfType<Language>()
            .ToDictionary(l => l.Code, StringComparer.Ordinal);
    }

    public static Language? In(SourceFile sheet, string code, YamlNode node)
    {
        if (Fields.Of(sheet, node, "a language") is not { } fields)
            return null;
        var isRightToLeft = fields.NeedChoice("direction", Directions);
        var mark = fields.NeedText("decimal-mark");
        var plurals = fields.Group("plural", "plural")?.OwnEntries.Select(entry => FormIn(sheet, entry)).ToArray() ?? [];
        fields.Done();
        return isRightToLeft is null || mark is null || plurals.Contains(null)
            ? null
            : new(code, isRightToLeft.Value, mark, plurals.OfType<PluralForm>().ToSeries());
    }

    private static PluralForm? FormIn(SourceFile sheet, YamlEntry entry)
    {
        if (entry.Key == Language.Other || !Language.AllForms.Contains(entry.Key))
        {
            sheet.Fault(
                Faults.KeyUnknown,
                entry.KeyAt,
                $"{Quote.Of(entry.Key)} is no kind of number that needs a rule.",
                $"Write one of: {string.Join(", ", Language.AllForms.Where(f => f != Language.Other))}. What falls under "
                    + $"none is '{Language.Other}'.",
                Math.Max(1, entry.Key.Length)
            );
            return null;
        }

        if (Values.Text(sheet, entry.Key, entry.Value) is not { } text)
            return null;
        if (PluralRule.Read(text.Value) is { } rule)
            return new(entry.Key, rule);
        sheet.Fault(
            Faults.ValueWrong,
            text.At,
            $"{Quote.Of(text.Value)} is no rule for a number.",
            "Write it as the Unicode CLDR does, with n alone, as n = 1, or n % 10 = 2..4 and n % 100 != 12..14.",
            text.Value.Length
        );
        return null;
    }
}
