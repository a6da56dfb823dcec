using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace Gradus.Auditing;

/// <summary>A text as a reader takes it in who looks at nothing closely: words in small letters without marks, with one blank
/// between, whatever parts them.</summary>
internal static class FoldedText
{
    /// <summary>Letters of other scripts that look like Latin ones, and those (from memory, after the look of common
    /// typefaces).</summary>
    private const string Foreign = "авгдеіјкмнопрстухѕһԁԛԝαβεικνορτυχ";
    private const string Latin = "abrgeijkmhonpctyxshdqwabeikvoptux";

    /// <summary>Letters with a mark and the same without: with invariant globalisation .NET takes no letter apart.</summary>
    private const string Marked = "àáâãäåāăąçćĉċčďđèéêëēĕėęěĝğġģĥħìíîïĩīĭįıĵķĺļľŀłñńņňòóôõöøōŏőŕŗřśŝşšţťŧțùúûüũūŭůűųŵýÿŷźżž";
    private const string Bare = "aaaaaaaaacccccddeeeeeeeeegggghhiiiiiiiiijklllllnnnnooooooooorrrssssttttuuuuuuuuuuwyyyzzz";

    private static readonly FrozenDictionary<char, char> LookAlikes = Foreign
        .Zip(Latin)
        .Concat(Marked.Zip(Bare))
        .DistinctBy(pair => pair.First)
        .ToFrozenDictionary(pair => pair.First, pair => pair.Second);

    public static string Of(string text)
    {
        var folded = new StringBuilder(text.Length);
        Append(folded, text);
        return folded.Length > 0 && folded[^1] == ' ' ? folded.ToString(0, folded.Length - 1) : folded.ToString();
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
        foreach (var c in Ascii.IsValid(text) ? text : text.Normalize(NormalizationForm.FormKD))
        {
            if (char.IsLetterOrDigit(c))
            {
                var small = char.ToLowerInvariant(c);
                folded.Append(LookAlikes.GetValueOrDefault(small, small));
            }
            else if (!IsUnseen(c) && folded.Length > 0 && folded[^1] != ' ')
                folded.Append(' ');
        }
    }

    /// <summary>Marks on letters, and what nobody sees: soft hyphens, joiners, direction marks.</summary>
    private static bool IsUnseen(char c) =>
        !char.IsAscii(c)
        && char.GetUnicodeCategory(c)
            is UnicodeCategory.Format
                or UnicodeCategory.NonSpacingMark
                or UnicodeCategory.EnclosingMark;
}
