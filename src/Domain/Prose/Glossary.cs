using System.Text.RegularExpressions;

namespace Gradus.Domain;

/// <summary>The words that a practice explains, looked for in its texts: whole words, in small or capital letters, also with a
/// plural s. Where two begin at one place the longer one counts.</summary>
public sealed class Glossary
{
    private readonly Series<GlossaryEntry> entries;
    private readonly Dictionary<string, int> numbers = new(StringComparer.OrdinalIgnoreCase);
    private readonly Regex words;

    public Glossary(Series<GlossaryEntry> entries)
    {
        this.entries = entries;
        foreach (var (index, entry) in entries.Index())
            if (entry.Word.Any(char.IsLetterOrDigit))
                numbers.TryAdd(Spacing.Collapse(entry.Word), index + 1);
        var longestFirst = numbers
            .Keys.OrderByDescending(word => word.Length)
            .ThenBy(word => word, StringComparer.Ordinal)
            .Select(word => Regex.Escape(word).Replace(@"\ ", @"\s+", StringComparison.Ordinal));
        words = new(
            numbers.Count == 0
                ? "(?!)"
                : $@"(?<![\p{{L}}\p{{Nd}}]|[\p{{L}}\p{{Nd}}]-)(?:{string.Join('|', longestFirst)})s?(?!-?[\p{{L}}\p{{Nd}}])",
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
        );
    }

    /// <summary>The text with each word of the glossary marked where it first stands, in headings and links nowhere.</summary>
    /// <param name="met">The numbers of the words that are not marked again; those that are marked now come in.</param>
    public Prose Mark(Prose prose, ISet<int> met) =>
        prose with
        {
            Blocks = prose.Blocks.Select(block => Mark(block, met)).ToSeries(),
        };

    private Block Mark(Block block, ISet<int> met) =>
        block switch
        {
            Block.Heading => block,
            Block.Paragraph paragraph => paragraph with { Text = Mark(paragraph.Text, met) },
            Block.Listing list => list with { Items = list.Items.Select(item => Mark(item, met)).ToSeries() },
            _ => throw new NotSupportedException(block.GetType().Name),
        };

    private Series<Inline> Mark(Series<Inline> text, ISet<int> met) =>
        Joined(text)
            .SelectMany(inline =>
                inline switch
                {
                    Inline.Plain plain => Mark(plain.Words, met),
                    Inline.Emphasis emphasis => [emphasis with { Text = Mark(emphasis.Text, met) }],
                    _ => [inline],
                }
            )
            .ToSeries();

    private IEnumerable<Inline> Mark(string text, ISet<int> met)
    {
        var at = 0;
        foreach (Match match in words.Matches(text))
        {
            if (NumberOf(match.Value) is not { } number || !met.Add(number))
                continue;
            if (match.Index > at)
                yield return new Inline.Plain(text[at..match.Index]);
            yield return new Inline.Term(number, match.Value, entries[number - 1].Word, entries[number - 1].Explanation);
            at = match.Index + match.Length;
        }

        if (at < text.Length)
            yield return new Inline.Plain(text[at..]);
    }

    private int? NumberOf(string written)
    {
        var word = Spacing.Collapse(written);
        return numbers.TryGetValue(word, out var number) || numbers.TryGetValue(word[..^1], out number) ? number : null;
    }

    /// <summary>A word may stand across the end of a line, where the text is in pieces.</summary>
    private static List<Inline> Joined(Series<Inline> text)
    {
        var joined = new List<Inline>();
        foreach (var inline in text)
        {
            if (inline is Inline.Plain next && joined is [.., Inline.Plain last])
                joined[^1] = new Inline.Plain(last.Words + next.Words);
            else
                joined.Add(inline);
        }

        return joined;
    }
}
