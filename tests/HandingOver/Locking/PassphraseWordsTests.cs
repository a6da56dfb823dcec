using System.Security.Cryptography;
using System.Text;
using Gradus.HandingOver;
using Gradus.Tests.House;

namespace Gradus.Tests.HandingOver;

/// <summary>The list of words, made again by the rule of <c>locked-file.md</c> from the files of the Debian package
/// <c>scowl</c>.</summary>
public sealed class PassphraseWordsTests
{
    private const string Folder = "/usr/share/dict/scowl";

    /// <summary>An ending, and what the word may have had in its place.</summary>
    private static readonly (string Ending, string[] Before)[] Endings =
    [
        ("s", [""]),
        ("es", [""]),
        ("ies", ["y"]),
        ("ed", ["", "e"]),
        ("ied", ["y"]),
        ("ing", ["", "e"]),
        ("er", ["", "e"]),
        ("ier", ["y"]),
        ("est", ["", "e"]),
        ("iest", ["y"]),
        ("ly", [""]),
        ("ily", ["y"]),
        ("d", [""]),
    ];

    private static readonly string[] Doubling = ["ed", "ing", "er", "est"];

    [Fact]
    public void The_list_is_what_its_rule_makes()
    {
        Assert.SkipUnless(Directory.Exists(Folder), "The Debian package scowl is not there.");
        string[][] levels = [.. ((string[])["10", "20", "35"]).Select(Level)];
        var known = levels.SelectMany(level => level).ToHashSet(StringComparer.Ordinal);
        var leftOut = File.ReadAllText(Repository.Path("tests/HandingOver/Locking/words-left-out.txt"))
            .Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)
            .ToHashSet(StringComparer.Ordinal);
        var taken = new List<string>();
        foreach (var word in levels.Take(2).SelectMany(level => level))
            if (
                word.Length is >= 4 and <= 8
                && word.All(char.IsAsciiLetterLower)
                && !leftOut.Contains(word)
                && !IsForm(word, known)
                && taken.All(other => !IsNear(word, other))
            )
                taken.Add(word);
        Assert.Equal(
            taken
                .OrderBy(w => Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(w))), StringComparer.Ordinal)
                .Take(2048)
                .Order(StringComparer.Ordinal),
            Passphrase.List
        );
    }

    [Fact]
    public void A_slip_of_the_finger_gives_no_other_word_of_the_list()
    {
        var words = Passphrase.List.ToHashSet(StringComparer.Ordinal);
        foreach (var word in words)
        foreach (var slip in Slips(word))
            Assert.False(words.Contains(slip), $"{word}, {slip}");
    }

    private static IEnumerable<string> Slips(string word)
    {
        for (var at = 0; at < word.Length; at++)
        {
            yield return word.Remove(at, 1);
            if (at > 0 && word[at] != word[at - 1])
                yield return word[..(at - 1)] + word[at] + word[at - 1] + word[(at + 1)..];
            for (var letter = 'a'; letter <= 'z'; letter++)
                if (letter != word[at])
                    yield return word[..at] + letter + word[(at + 1)..];
        }
    }

    private static string[] Level(string level) =>
        [.. File.ReadAllLines($"{Folder}/english-words.{level}", Encoding.Latin1).Order(StringComparer.Ordinal)];

    private static bool IsForm(string word, HashSet<string> known) =>
        Endings.Any(e =>
            word.EndsWith(e.Ending, StringComparison.Ordinal)
            && word[..^e.Ending.Length] is var stem
            && (
                e.Before.Any(before => stem.Length + before.Length >= 2 && known.Contains(stem + before))
                || (Doubling.Contains(e.Ending) && stem.Length > 2 && stem[^1] == stem[^2] && known.Contains(stem[..^1]))
            )
        );

    private static bool IsNear(string one, string other)
    {
        if (one.StartsWith(other, StringComparison.Ordinal) || other.StartsWith(one, StringComparison.Ordinal))
            return true;
        if (one.Length == other.Length)
        {
            int[] differ = [.. Enumerable.Range(0, one.Length).Where(at => one[at] != other[at])];
            return differ.Length <= 1
                || (
                    differ is [var first, var next] && next == first + 1 && one[first] == other[next] && one[next] == other[first]
                );
        }

        var (shorter, longer) = one.Length < other.Length ? (one, other) : (other, one);
        return longer.Length == shorter.Length + 1
            && Enumerable.Range(0, longer.Length).Any(at => longer.Remove(at, 1) == shorter);
    }
}
