using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>How hard a text is to read in English, by the length of its sentences and words.</summary>
/// <param name="Sentences">In reading order; a list item or paragraph ends one even without a full stop. Headings are left
/// out.</param>
public sealed record Readability(Series<ReadSentence> Sentences)
{
    public int Words => Sentences.Sum(s => s.Words);

    public int Syllables => Sentences.Sum(s => s.Syllables);

    /// <summary>The Flesch-Kincaid grade; null where there is no word.</summary>
    public decimal? Grade => Words == 0 ? null : GradeOf(Words, Sentences.Count, Syllables);

    /// <summary>The sentence without which the text would be easiest; null where there are not two.</summary>
    public ReadSentence? Hardest()
    {
        var (words, sentences, syllables) = (Words, Sentences.Count, Syllables);
        return sentences < 2 ? null : Sentences.MinBy(s => GradeOf(words - s.Words, sentences - 1, syllables - s.Syllables));
    }

    /// <summary>The years of an American school after which a text can be followed: Kincaid JP et al. 1975, Research Branch
    /// Report 8-75.</summary>
    /// <param name="words">At least 1, as are the others.</param>
    public static decimal GradeOf(int words, int sentences, int syllables) =>
        (0.39m * words / sentences) + (11.8m * syllables / words) - 15.59m;

    /// <summary>One text that is read as a whole, in its parts.</summary>
    public static Readability Of(IEnumerable<Prose> parts) =>
        new(parts.SelectMany(p => p.Blocks).SelectMany(SentencesIn).ToSeries());

    private static IEnumerable<ReadSentence> SentencesIn(Block block) =>
        block switch
        {
            Block.Heading => [],
            Block.Paragraph paragraph => ReadSentence.In(Prose.PlainOf(paragraph.Text), paragraph.At),
            Block.Listing list => list.Items.SelectMany(item => item.Blocks).SelectMany(SentencesIn),
            _ => throw new NotSupportedException(block.GetType().Name),
        };
}
