using System.Reflection;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A language → the catalogue file that a coach begins with: its usual words as comments to take up, or, where Gradus
/// has none, every key with the English words above it.</summary>
public static partial class FreshWords
{
    /// <summary>A phrase with a number, which has a form for each kind.</summary>
    [GeneratedRegex(@"^(?<key>[a-z0-9-]+): \{.*\}$", RegexOptions.CultureInvariant)]
    private static partial Regex Counted();

    [GeneratedRegex("^(?<key>[a-z0-9-]+): ", RegexOptions.CultureInvariant)]
    private static partial Regex Keyed();

    public static bool IsBuiltIn(string language) => WordsReader.BuiltInLanguages.Contains(language);

    /// <param name="language">Two small letters.</param>
    public static string Text(string language)
    {
        var findings = new Findings();
        if (IsBuiltIn(language))
            return string.Concat(Lines(language).Select(line => Keyed().IsMatch(line) ? $"#{line}\n" : $"{line}\n"));
        var known = LanguagesReader.BuiltIn(findings).GetValueOrDefault(language);
        var forms = known?.Forms ?? ["one", Language.Other];
        var told = known is not null
            ? []
            : new[]
            {
                "# How the language is read (ltr or rtl), what stands before the tenths of a number, and the kinds of "
                    + "whole numbers that it tells apart, by the rules of the Unicode CLDR.",
                $"{CatalogueReader.LanguageKey}: {{ direction: ltr, decimal-mark: \".\", plural: {{ one: n = 1 }} }}",
                "",
            };
        return string.Concat(
            told.Concat(Lines(WordsReader.First).SelectMany(line => ToFillIn(line, forms))).Select(line => line + "\n")
        );
    }

    private static string[] Lines(string language) =>
        BuiltIn.Text(Assembly.GetExecutingAssembly(), language + WordsReader.Ending).TrimEnd('\n').Split('\n');

    private static IEnumerable<string> ToFillIn(string line, IEnumerable<string> forms) =>
        Counted().Match(line) is { Success: true } counted
            ? [$"# {line}", $"{counted.Groups["key"].Value}: {{ {string.Join(", ", forms.Select(f => $"{f}: \"\""))} }}"]
        : Keyed().Match(line) is { Success: true } keyed ? [$"# {line}", $"{keyed.Groups["key"].Value}: \"\""]
        : [line];
}
