using System.Collections.Frozen;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>What opens a locked site. It is said to whoever needs it and kept in no file.</summary>
public sealed record Passphrase
{
    /// <summary>How many words Gradus takes: 6 × 11 bits, because the list has 2^11 words.</summary>
    public const int Words = 6;

    private const int Most = 200,
        FewestLetters = 14,
        FewestDifferent = 8;

    /// <summary>2,048 plain words, in alphabetical order; by which rule they are chosen, and whose they are, stands in
    /// locked-file.md.</summary>
    internal static readonly Series<string> List = BuiltIn
        .Text(Assembly.GetExecutingAssembly(), "words.txt")
        .Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)
        .ToSeries();

    private static readonly FrozenSet<string> Known = List.ToFrozenSet(StringComparer.Ordinal);

    private Passphrase(string text) => Text = text;

    /// <summary>As the key is made from it.</summary>
    public string Text { get; }

    /// <summary>A new one, from the system's generator.</summary>
    public static Passphrase Made() => new(string.Join(' ', RandomNumberGenerator.GetItems<string>(List.ToArray(), Words)));

    /// <summary>One that somebody typed to open what is locked already, whatever it is worth.</summary>
    public static Passphrase Typed(string written) => new(AsLocked(written));

    /// <summary>A coach's own one, for a new file.</summary>
    /// <exception cref="HandOverException">It is too easily guessed, or a phone could not type it the same.</exception>
    public static Passphrase Own(string written)
    {
        var text = AsLocked(written);
        if (text.Length == 0)
            throw Refused("Nothing but blanks is no passphrase.");
        if (text.Length > Most)
            throw Refused($"The passphrase is longer than {Most} letters.");
        if (!text.All(letter => letter is >= ' ' and <= '~'))
            throw Refused(
                "The passphrase has letters that not every keyboard has: only a to z, digits and plain signs are typed the same "
                    + "everywhere."
            );
        var words = text.Split(' ').ToHashSet(StringComparer.Ordinal);
        if (words.All(Known.Contains))
            return words.Count >= Words
                ? new(text)
                : throw Refused($"The passphrase has {Counted(words.Count)} of the list; it takes {Words} different ones.");
        var letters = text.Count(letter => letter != ' ');
        var different = text.Where(letter => letter != ' ').Distinct().Count();
        return letters >= FewestLetters && different >= FewestDifferent
            ? new(text)
            : throw Refused($"The passphrase has {letters} letters, {different} of them different.");
    }

    /// <summary>What a phone's keyboard does to words by itself is taken back: capital letters, and blanks of any kind. The page
    /// that opens the file does the same (<c>lock.js</c>).</summary>
    private static string AsLocked(string written) =>
        string.Concat(
            string.Join(
                    ' ',
                    written.Normalize(NormalizationForm.FormKC).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
                )
                .Select(letter => letter is >= 'A' and <= 'Z' ? char.ToLowerInvariant(letter) : letter)
        );

    private static string Counted(int words) => words == 1 ? "one different word" : $"{words} different words";

    private static HandOverException Refused(string why) =>
        new(
            why,
            $"Take {FewestLetters} letters, digits or signs, {FewestDifferent} of them different, or {Words} different words of "
                + "those that Gradus makes passphrases from; or let Gradus make one."
        );
}
