using System.Buffers;
using System.Globalization;
using System.Net;
using System.Text;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The names of all clients, looked for together: with many clients, one after another would take hours.</summary>
internal sealed class ClientNames(IEnumerable<string> names)
{
    public static readonly ClientNames None = new([]);

    private readonly Search plain = new(names, Plain);
    private readonly Search bare = new(names, Bare);

    /// <summary>Whose names stand in a text as somebody might read it, entities and percent signs decoded; each once.</summary>
    public IEnumerable<string> In(string text)
    {
        var decoded = text.Contains('&', StringComparison.Ordinal) ? WebUtility.HtmlDecode(text) : text;
        var found = plain.In(Plain(decoded));
        return decoded.Contains('%', StringComparison.Ordinal)
            ? found.Concat(plain.In(Plain(Uri.UnescapeDataString(decoded)))).Distinct(StringComparer.Ordinal)
            : found;
    }

    /// <summary>Whose names the name of a file has, however it puts them together; each once.</summary>
    public IEnumerable<string> InFileName(string path) => bare.In(Bare(path));

    /// <summary>Composed letters, single spaces, and none of the marks that nobody sees.</summary>
    public static string Plain(string text) =>
        Spacing.Collapse(Ascii.IsValid(text) ? text : Seen(text).Normalize(NormalizationForm.FormC));

    /// <summary>The letters and digits alone, as the name of a file might put them together.</summary>
    private static string Bare(string text) => string.Concat(Plain(text).Where(char.IsLetterOrDigit));

    private static string Seen(string text)
    {
        foreach (var c in text)
            if (IsUnseen(c))
                return string.Concat(text.Where(other => !IsUnseen(other)));
        return text;
    }

    private static bool IsUnseen(char c) => !char.IsAscii(c) && char.GetUnicodeCategory(c) == UnicodeCategory.Format;

    private sealed class Search
    {
        private readonly Dictionary<string, Series<string>>.AlternateLookup<ReadOnlySpan<char>> named;
        private readonly int[] lengths;
        private readonly SearchValues<string> forms;

        public Search(IEnumerable<string> names, Func<string, string> form)
        {
            var byForm = names
                .GroupBy(form, StringComparer.OrdinalIgnoreCase)
                .Where(same => same.Key.Length > 0)
                .ToDictionary(same => same.Key, same => same.ToSeries(), StringComparer.OrdinalIgnoreCase);
            named = byForm.GetAlternateLookup<ReadOnlySpan<char>>();
            lengths = [.. byForm.Keys.Select(key => key.Length).Distinct()];
            forms = SearchValues.Create([.. byForm.Keys], StringComparison.OrdinalIgnoreCase);
        }

        /// <summary>In the order they are met.</summary>
        public IEnumerable<string> In(string text)
        {
            var found = new List<string>();
            for (var at = text.AsSpan().IndexOfAny(forms); at >= 0; at = After(text, at))
            {
                foreach (var length in lengths)
                    if (at + length <= text.Length && named.TryGetValue(text.AsSpan(at, length), out var same))
                        found.AddRange(same);
            }

            return found.Distinct(StringComparer.Ordinal);
        }

        private int After(string text, int at) => text.AsSpan(at + 1).IndexOfAny(forms) is >= 0 and var next ? at + 1 + next : -1;
    }
}
