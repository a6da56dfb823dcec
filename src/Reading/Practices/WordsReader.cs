using System.Collections.Frozen;
using System.Reflection;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Catalogue files → the words of each language: of those that come with Gradus, with the practice's own words in them,
/// and of those that the practice brings whole.</summary>
internal static class WordsReader
{
    /// <summary>The language whose catalogue says which words there are.</summary>
    public const string First = "en";

    public const string Ending = ".yaml";

    /// <summary>Those that Gradus has a catalogue for.</summary>
    public static Series<string> BuiltInLanguages =>
        BuiltIn
            .Names(Assembly.GetExecutingAssembly())
            .Select(name => name[..name.LastIndexOf('.')])
            .Where(Translation.IsLanguage)
            .ToSeries();

    public static WordBook Read(SourceFolder folder, Findings findings)
    {
        var languages = LanguagesReader.BuiltIn(findings);
        var usual = BuiltInLanguages.ToDictionary(
            code => code,
            code => CatalogueReader.Whole(Embedded.SourceFile(code + Ending, findings), languages[code]),
            StringComparer.Ordinal
        );
        var book = usual.ToDictionary(c => c.Key, c => Of(languages[c.Key], c.Value), StringComparer.Ordinal);
        foreach (var code in folder.Names("words", Ending))
        {
            if (
                SourceFile.Of(folder, $"words/{code}{Ending}", findings) is not { } own
                || LanguageOf(own, code, languages) is not { } language
            )
                continue;
            var known = usual.GetValueOrDefault(code);
            book[code] = Of(language, CatalogueReader.Own(own, language, known ?? usual[First], isWhole: known is null));
        }

        return new(book.Values);
    }

    private static Words Of(Language language, Dictionary<string, Phrase> phrases) =>
        new(language, phrases.ToFrozenDictionary(StringComparer.Ordinal));

    /// <summary>What is known of a language; null (and a finding) where nothing is.</summary>
    private static Language? LanguageOf(SourceFile own, string code, IReadOnlyDictionary<string, Language> known)
    {
        if (!Translation.IsLanguage(code))
            own.Fault(
                Faults.FileNameWrong,
                own.Whole,
                $"{Quote.Of(code)} is no language.",
                "Name the file by the two small letters of its language, as words/fr.yaml."
            );
        else if (known.TryGetValue(code, out var language))
            return language;
        else if (CatalogueReader.LanguageIn(own) is { } said)
            return LanguagesReader.In(own, code, said);
        else
        {
            own.Fault(
                Faults.KeyMissing,
                own.Whole,
                $"Gradus does not know how {Quote.Of(code)} is read and counted, and this file does not say it.",
                $"Write it first: {CatalogueReader.LanguageKey}: {{ direction: ltr, decimal-mark: \".\", plural: {{ one: "
                    + "n = 1 } }."
            );
        }

        return null;
    }
}
