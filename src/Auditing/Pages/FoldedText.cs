using System.Buffers;
using System.Collections.Frozen;
using System.Globalization;
using System.Net;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A text as a reader takes it in who looks at nothing closely: words in small letters without marks, with one blank
/// between, whatever parts them.</summary>
internal static class FoldedText
{
    /// <summary>Letters with marks, and letters of other scripts that look like Latin ones (from memory, after the look of common
    /// typefaces), each with the letter it is read as. The table is our own because the program runs without the data of
    /// cultures, and takes no letter apart by itself.</summary>
    private const string Foreign =
        "àáâãäåāăąçćĉċčďđèéêëēĕėęěĝğġģĥħìíîïĩīĭįıĵķĺļľŀłñńņňòóôõöøōŏőŕŗřśŝşšţťŧțùúûüũūŭůűųŵýÿŷźżž"
        + "авгдеіјкмнопрстухѕһԁԛԝαβεικνορτυχ";
    private const string Latin =
        "aaaaaaaaacccccddeeeeeeeeegggghhiiiiiiiiijklllllnnnnooooooooorrrssssttttuuuuuuuuuuwyyyzzz"
        + "abrgeijkmhonpctyxshdqwabeikvoptux";

    /// <summary>Letters as wide as a Chinese one.</summary>
    private const char FirstWide = '\uff01',
        LastWide = '\uff5e';

    private const char Unseen = '\0';

    private static readonly FrozenDictionary<char, char> LookAlikes = Foreign
        .Zip(Latin)
        .ToFrozenDictionary(pair => pair.First, pair => pair.Second);

    /// <summary>What each ASCII letter is read as, a blank for whatever parts words: nearly all letters of a page are
    /// these.</summary>
    private static readonly char[] Ascii =
    [
        .. Enumerable.Range(0, 128).Select(c => (char)c).Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '),
    ];

    public static string Of(string text) => Ask(text, isHtml: false, folded => folded.ToString());

    /// <summary>Asks something of a text that is read so, which is nowhere kept: a page is long.</summary>
    /// <param name="isHtml">Whether references in it are read as letters.</param>
    public static T Ask<T>(string text, bool isHtml, Func<ReadOnlySpan<char>, T> question)
    {
        var buffer = ArrayPool<char>.Shared.Rent(text.Length);
        var read = isHtml && text.Contains('&', StringComparison.Ordinal) ? Decode(text, buffer) : text.AsSpan();
        var length = Fold(read, buffer, isParted: true);
        var answer = question(buffer.AsSpan(0, length > 0 && buffer[length - 1] == ' ' ? length - 1 : length));
        ArrayPool<char>.Shared.Return(buffer);
        return answer;
    }

    /// <summary>The same of several texts one after another, with the place where each begins; a place between two belongs to
    /// the one before it.</summary>
    public static (T Answer, List<int> Starts) AskJoined<T>(Series<TextLine> lines, Func<ReadOnlySpan<char>, T> question)
    {
        var starts = new List<int>(lines.Count);
        var most = 0;
        foreach (var line in lines)
            most += line.Text.Length + 1;
        var buffer = ArrayPool<char>.Shared.Rent(most);
        var length = 0;
        foreach (var line in lines)
        {
            if (length > 0 && buffer[length - 1] != ' ')
                buffer[length++] = ' ';
            starts.Add(length);
            length += Fold(line.Text, buffer.AsSpan(length), isParted: length == 0 || buffer[length - 1] == ' ');
        }

        var answer = question(buffer.AsSpan(0, length));
        ArrayPool<char>.Shared.Return(buffer);
        return (answer, starts);
    }

    /// <summary>Reads the references of a text, which become shorter by it.</summary>
    private static Span<char> Decode(string text, Span<char> buffer)
    {
        var (length, from) = (0, 0);
        for (var at = text.IndexOf('&', StringComparison.Ordinal); at >= 0; at = text.IndexOf('&', from))
        {
            var end = text.AsSpan(at + 1).IndexOfAny('&', ';') is >= 0 and var inside ? at + 1 + inside : text.Length;
            var behind = end < text.Length && text[end] == ';' ? end + 1 : end;
            text.AsSpan(from, at - from).CopyTo(buffer[length..]);
            length += at - from;
            var letters = text.AsSpan(at, behind - at) is "&#39;" ? "'" : WebUtility.HtmlDecode(text[at..behind]);
            letters.CopyTo(buffer[length..]);
            (length, from) = (length + letters.Length, behind);
        }

        text.AsSpan(from).CopyTo(buffer[length..]);
        return buffer[..(length + text.Length - from)];
    }

    /// <summary>A blank is never the first, nor the second in a row.</summary>
    /// <param name="isParted">Whether a blank stands before it, or nothing.</param>
    /// <returns>How many letters it has.</returns>
    private static int Fold(ReadOnlySpan<char> text, Span<char> buffer, bool isParted)
    {
        var length = 0;
        foreach (var c in text)
        {
            var read = c < Ascii.Length ? Ascii[c] : Read(c);
            if (read == Unseen)
                continue;
            // Written whether or not it stays: a jump at the end of every word would cost more.
            buffer[length] = read;
            length += read == ' ' && isParted ? 0 : 1;
            isParted = read == ' ';
        }

        return length;
    }

    /// <summary>The letter that another than ASCII is read as, a blank where it parts words, or <see cref="Unseen"/>.</summary>
    private static char Read(char c)
    {
        if (!char.IsLetterOrDigit(c))
            return IsUnseen(c) ? Unseen : ' ';
        var small = char.ToLowerInvariant(c is >= FirstWide and <= LastWide ? (char)(c - FirstWide + '!') : c);
        return LookAlikes.GetValueOrDefault(small, small);
    }

    /// <summary>Marks on letters, and what nobody sees: soft hyphens, joiners, direction marks.</summary>
    private static bool IsUnseen(char c) =>
        char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;
}
