using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Gradus.Auditing;

/// <summary>How many syllables an English word has, told from its spelling: one for each run of vowels, without an e that is not
/// heard, and one more where two vowels of a run are heard apart. A few common words are known by heart.</summary>
public static partial class Syllables
{
    private const string Vowel = "[aeiouyàâäáæèéêëíîïóôöœùúûü]";

    private const string Consonant = "[^aeiouyàâäáæèéêëíîïóôöœùúûü]";

    private static readonly FrozenDictionary<string, int> Known = new (int Syllables, string Words)[]
    {
        (1, "does eye fuel goes once shoe"),
        (2, "being business chaos evening every lion poem poet quiet rhythm science wednesday"),
        (3, "area element idea media radio recipe"),
    }
        .SelectMany(known => known.Words.Split(' ').Select(word => (Word: word, known.Syllables)))
        .ToFrozenDictionary(k => k.Word, k => k.Syllables, StringComparer.Ordinal);

    /// <summary>A word that others begin with, and whose last e is not heard there either: some-one, side-ways.</summary>
    [GeneratedRegex(
        "^(?:base|close|every|face|fire|fore|grace|here|home|life|like|make|middle|more|name|note|one|"
            + "safe|side|some|space|table|take|there|time|where|white|wide)(?=[a-z]{3})"
    )]
    private static partial Regex Beginning();

    /// <summary>What is added behind an e that is not heard: care-ful, move-ment.</summary>
    [GeneratedRegex(
        $"(?<={Vowel}.*[^aeiouy]e)"
            + "(?:body|ful|fully|less|lessly|lessness|like|ly|ment|ments|ness|some|thing|times?|wards?|where|work)$"
    )]
    private static partial Regex Ending();

    [GeneratedRegex("(?:s|x|z|ch|sh|c|g)es$")]
    private static partial Regex HissThenEs();

    [GeneratedRegex("(?<=..)(?<![ius])s$")]
    private static partial Regex PlainS();

    [GeneratedRegex($"(?<={Vowel}.*)(?<!e)ed$")]
    private static partial Regex Past();

    [GeneratedRegex($"(?<={Vowel}.*{Consonant})e$|(?<={Vowel}.*[gq])ue$")]
    private static partial Regex LastE();

    /// <summary>ankle, metre: the e is not heard, and there is a syllable none the less.</summary>
    [GeneratedRegex("(?:[^aeiouylrw]l|[tb]r)e$|ttle$")]
    private static partial Regex LastLe();

    [GeneratedRegex($"^y(?={Vowel})|(?<={Vowel})y(?={Vowel})")]
    private static partial Regex YAsConsonant();

    [GeneratedRegex($"{Vowel}+")]
    private static partial Regex Run();

    /// <summary>The first of two vowels that are heard apart: di-al, peri-od, go-ing, us-u-al, vide-o, di-et, eas-i-er,
    /// stud-y-ing, muse-um, cre-ate, ru-in.</summary>
    [GeneratedRegex(
        "(?<![ctsgx])ia|(?<=[ct])ia(?=t)|(?<![ctsgxnl])io|(?<=[aeiou])ing|iu|ii|(?<![gq])ua|ue(?=[lnt])"
            + "|(?<!q)uo(?!r)|(?<![pg])eo|geo(?=[gml])|ie(?=t)|(?<![ct])ie(?=n[ct])"
            + "|(?<=[^aeioug])ie(?=r$|st$)|(?<=[^aeiou])y[aeio]|eu(?=m)|oe[mt]"
            + "|(?<=c)rea(?=t)|rea(?=ct)|lui(?=d)|(?<![qg])ui(?=n|t[yoi])"
    )]
    private static partial Regex Apart();

    /// <param name="word">One word; what is no letter in it is passed over. A number in figures counts as one syllable, because
    /// it is read at a glance.</param>
    /// <returns>At least 1.</returns>
    public static int Of(string word) => Math.Max(1, OfLetters(string.Concat(word.Where(char.IsLetter)).ToLowerInvariant()));

    private static int OfLetters(string word)
    {
        if (Known.TryGetValue(word, out var known))
            return known;
        if (Beginning().Match(word) is { Success: true } begins)
            return OfLetters(begins.Value) + OfLetters(word[begins.Length..]);
        if (Ending().Match(word) is { Success: true } ends)
            return OfLetters(word[..ends.Index]) + OfLetters(ends.Value);
        if (HissThenEs().IsMatch(word))
            return 1 + Runs(word[..^2]);
        if (PlainS().IsMatch(word))
            return OfLetters(word[..^1]);
        if (Past().IsMatch(word))
            return OfPast(word[..^2]);
        return Runs(LastLe().IsMatch(word) ? word : LastE().Replace(word, ""));
    }

    /// <param name="stem">The word without its last two letters, ed.</param>
    private static int OfPast(string stem)
    {
        if (stem[^1] is 't' or 'd')
            return 1 + Runs(stem);
        if (stem[^1] == 'i')
            return OfLetters(stem[..^1] + "y");
        return Runs(LastLe().IsMatch(stem + "e") ? stem + "e" : stem);
    }

    /// <summary>Vowels that are heard; -sm and -thm have one that is not written.</summary>
    private static int Runs(string letters)
    {
        var heard = YAsConsonant().Replace(letters, "j");
        return Run().Count(heard)
            + Apart().Count(heard)
            + (letters.EndsWith("sm", StringComparison.Ordinal) || letters.EndsWith("thm", StringComparison.Ordinal) ? 1 : 0);
    }
}
