using System.Buffers;
using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace Gradus.Auditing;

/// <summary>A text as a reader takes it in who looks at nothing closely: words in small letters without marks, with one blank
/// between, whatever parts them.</summary>
internal static class FoldedText
{
    /// <summary>Letters with marks, and letters of other scripts that look like Latin ones (from memory, after the look of common
    /// typefaces), each with the letter it is read as. The table is our own because the program runs without the data of
    /// cultures, and takes no letter apart by itself.</summary>
    private const string Foreign =
        "àáâãäåāăąçćĉċčďđèéêëēĕėęěĝğġģĥħìíîïĩīĭįıĵķĺļľŀłñńņňòóôõöøōŏőŕŗřśŝşšţťŧùúûüũūŭůűųŵýÿŷźżž"
        + "авгдеіјкмнопрстухѕһԁԛԝαβεικνορτυχ";
    private const string Latin =
        "aaaaaaaaacccccddeeeeeeeeegggghhiiiiiiiiijklllllnnnnooooooooorrrsssstttuuuuuuuuuuwyyyzzz"
        + "abrgeijkmhonpctyxshdqwabeikvoptux";

    /// <summary>Letters as wide as a Chinese one.</summary>
    private const char FirstWide = '\uff01',
        LastWide = '\uff5e';

    /// <summary>Letters with a mark and the same without: with invariant globalisation .NET takes no letter apart.</summary>
    private const string Marked = "àáâãäåāăąçćĉċčďđèéêëēĕėęěĝğġģĥħìíîïĩīĭįıĵķĺļľŀłñńņňòóôõöøōŏőŕŗřśŝşšţťŧțùúûüũūŭůűųŵýÿŷźżž";
    private const string Bare = "aaaaaaaaacccccddeeeeeeeeegggghhiiiiiiiiijklllllnnnnooooooooorrrssssttttuuuuuuuuuuwyyyzzz";

    private const char Unseen = '\0';

    private static readonly FrozenDictionary<char, char> LookAlikes = Foreign
        .Zip(Latin)
        .Concat(Marked.Zip(Bare))
        .DistinctBy(pair => pair.First)
        .ToFrozenDictionary(pair => pair.First, pair => pair.Second);

    /// <summary>What each ASCII letter is read as, a blank for whatever parts words: nearly all letters of a page are
    /// these.</summary>
    private static readonly char[] Ascii =
    [
        .. Enumerable.Range(0, 128).Select(c => (char)c).Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '),
    ];

    public static string Of(string text)
    {
        var buffer = ArrayPool<char>.Shared.Rent(text.Length);
        var length = Fold(text, buffer, isParted: true);
        var folded = new string(buffer, 0, length > 0 && buffer[length - 1] == ' ' ? length - 1 : length);
        ArrayPool<char>.Shared.Return(buffer);
        return folded;
    }

    /// <summary>Several texts one after another, with the place where each begins; a place between two belongs to the one before
    /// it.</summary>
    public static (string Text, List<int> Starts) Joined(IEnumerable<string> texts)
    {
        var (folded, starts) = (new StringBuilder(), new List<int>());
        foreach (var text in texts)
        {
            if (folded.Length > 0 && folded[^1] != ' ')
                folded.Append(' ');
            starts.Add(folded.Length);
            Append(folded, text);
        }

        return (folded.ToString(), starts);
    }

    private static void Append(StringBuilder folded, string text)
    {
        var buffer = ArrayPool<char>.Shared.Rent(text.Length);
        folded.Append(buffer, 0, Fold(text, buffer, isParted: folded.Length == 0 || folded[^1] == ' '));
        ArrayPool<char>.Shared.Return(buffer);
    }

    /// <summary>A blank is never the first, nor the second in a row.</summary>
    /// <param name="isParted">Whether a blank stands before it, or nothing.</param>
    /// <returns>How many letters it has.</returns>
    private static int Fold(string text, Span<char> buffer, bool isParted)
    {
        var length = 0;
        foreach (var c in text)
        {
            var read = Read(c);
            if (read == Unseen || (read == ' ' && isParted))
                continue;
            buffer[length++] = read;
            isParted = read == ' ';
        }

        return length;
    }

    /// <summary>The letter that it is read as, a blank where it parts words, or <see cref="Unseen"/>.</summary>
    private static char Read(char c)
    {
        if (c < Ascii.Length)
            return Ascii[c];
        if (!char.IsLetterOrDigit(c))
            return IsUnseen(c) ? Unseen : ' ';
        var small = char.ToLowerInvariant(c is >= FirstWide and <= LastWide ? (char)(c - FirstWide + '!') : c);
        return LookAlikes.GetValueOrDefault(small, small);
    }

    /// <summary>Marks on letters, and what nobody sees: soft hyphens, joiners, direction marks.</summary>
    private static bool IsUnseen(char c) =>
        char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;
}
