using System.Buffers;
using System.Net;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The names of all clients, looked for together: with many clients, one after another would take hours. A name is found
/// as whole words, in either order, however it is cased, joined or spelt with letters that look alike.</summary>
internal sealed partial class ClientNames
{
    public static readonly ClientNames None = new([]);

    private readonly Dictionary<string, Series<string>> byForm;
    private readonly Dictionary<string, Series<string>>.AlternateLookup<ReadOnlySpan<char>> named;
    private readonly int[] lengths;
    private readonly SearchValues<string> forms;

    /// <summary>A text in a page that is longer is mostly one that all sites have.</summary>
    private const int Shared = 1000;

    /// <summary>Each site has a few of its own beside them.</summary>
    private readonly Remembered<string, bool> inTexts = new(100, StringComparer.Ordinal);

    private readonly ConditionalWeakTable<TextFile, Series<string>> inFiles = [];

    /// <summary>Names of several words with nothing between them.</summary>
    private readonly SearchValues<string> joined;

    public ClientNames(IEnumerable<string> names)
    {
        byForm = names
            .SelectMany(name => FormsOf(name).Select(form => (form, name)))
            .GroupBy(n => n.form, n => n.name, StringComparer.Ordinal)
            .ToDictionary(same => same.Key, same => same.ToSeries(), StringComparer.Ordinal);
        named = byForm.GetAlternateLookup<ReadOnlySpan<char>>();
        lengths = [.. byForm.Keys.Select(key => key.Length).Distinct()];
        forms = SearchValues.Create([.. byForm.Keys], StringComparison.Ordinal);
        joined = SearchValues.Create([.. byForm.Keys.Where(IsSeveral).Select(Joined)], StringComparison.Ordinal);
    }

    /// <summary>Whether a name is one word, which may be a word of any text as well.</summary>
    public static bool IsOneWord(string name) => !IsSeveral(FoldedText.Of(name));

    /// <summary>Whose names stand in a text as somebody might read it, entities and percent signs decoded; each once.</summary>
    public IEnumerable<string> In(string text)
    {
        var found = FoldedText.Ask(text, isHtml: true, Found);
        if (PercentLetter().IsMatch(text))
        {
            var decoded = WebUtility.HtmlDecode(text);
            if (
                decoded.Contains('%', StringComparison.Ordinal)
                && Uri.UnescapeDataString(decoded) is var plain
                && plain != decoded
            )
                found = [.. found, .. FoldedText.Ask(plain, isHtml: false, Found)];
        }

        return found.Count == 0 ? [] : found.Select(f => f.Name).Distinct(StringComparer.Ordinal);
    }

    /// <summary>A letter written with a percent sign, as in an address: "%20". The sign and its digits may be written as
    /// references, nearly all of which are apostrophes.</summary>
    [GeneratedRegex("%[0-9A-Fa-f]{2}|&#(?!39;)", RegexOptions.CultureInvariant)]
    private static partial Regex PercentLetter();

    /// <summary>The same for a page. The styles and scripts in it, most of a page that holds all others, are those of other sites
    /// too and are looked through once; where they name somebody, the page is looked through with them, as it stands.</summary>
    public IEnumerable<string> In(PageSeen page)
    {
        var (rest, done) = (new StringBuilder(), 0);
        foreach (var part in page.Policy.Inline.Where(p => p.Text.Length > Shared))
            if (
                page.Html.IndexOf(part.Text, done, StringComparison.Ordinal) is >= 0 and var at
                && !inTexts.Of(part.Text, t => In(t).Any())
            )
            {
                rest.Append(page.Html, done, at - done);
                done = at + part.Text.Length;
            }

        return In(done == 0 ? page.Html : rest.Append(page.Html, done, page.Html.Length - done).ToString());
    }

    /// <summary>The same for a file that most sites have, which is looked through once.</summary>
    public IEnumerable<string> In(TextFile file) => inFiles.GetOrAdd(file, f => In(f.Text).ToSeries());

    /// <summary>Every place where a name stands in lines that are read one after another, with the number of the line that it
    /// begins in.</summary>
    public IEnumerable<(string Name, int Line)> InLines(Series<TextLine> lines)
    {
        var (found, starts) = FoldedText.AskJoined(lines, Found);
        foreach (var (name, at) in found)
        {
            var line = starts.BinarySearch(at);
            yield return (name, line >= 0 ? line : ~line - 1);
        }
    }

    /// <summary>Whose names the name of a file has; of several words also where nothing parts them.</summary>
    public IEnumerable<string> InFileName(string path)
    {
        var bare = Joined(FoldedText.Of(path));
        return bare.AsSpan().ContainsAny(joined)
            ? In(path)
                .Concat(
                    byForm
                        .Where(f => IsSeveral(f.Key) && bare.Contains(Joined(f.Key), StringComparison.Ordinal))
                        .SelectMany(f => f.Value)
                )
                .Distinct(StringComparer.Ordinal)
            : In(path);
    }

    /// <summary>As it is written, and with the surname first.</summary>
    private static IEnumerable<string> FormsOf(string name)
    {
        var words = FoldedText.Of(name).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
            yield break;
        yield return string.Join(' ', words);
        if (words.Length > 1)
            yield return string.Join(' ', words[1..].Append(words[0]));
        if (words.Length > 2)
            yield return string.Join(' ', words[..^1].Prepend(words[^1]));
    }

    private static bool IsSeveral(string form) => form.Contains(' ', StringComparison.Ordinal);

    private static string Joined(string form) => form.Replace(" ", "", StringComparison.Ordinal);

    private List<(string Name, int At)> Found(ReadOnlySpan<char> text)
    {
        var found = new List<(string, int)>();
        for (var at = text.IndexOfAny(forms); at >= 0; at = After(text, at))
        {
            if (at > 0 && text[at - 1] != ' ')
                continue;
            foreach (var length in lengths)
                if (IsWhole(text, at + length) && named.TryGetValue(text.Slice(at, length), out var same))
                    foreach (var name in same)
                        found.Add((name, at));
        }

        return found;
    }

    private static bool IsWhole(ReadOnlySpan<char> text, int end) =>
        end == text.Length || (end < text.Length && text[end] == ' ');

    private int After(ReadOnlySpan<char> text, int at) =>
        text[(at + 1)..].IndexOfAny(forms) is >= 0 and var next ? at + 1 + next : -1;
}
