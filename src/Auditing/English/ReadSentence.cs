using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A sentence of a text, with what it asks of a reader.</summary>
/// <param name="Text">From its first word to its last, without the full stop.</param>
/// <param name="Words">At least 1. The parts of a hyphenated word are words, a number in figures is one, and so is a
/// placeholder.</param>
/// <param name="At">Of the paragraph or list item that it stands in.</param>
public sealed record ReadSentence(string Text, int Words, int Syllables, Location At)
{
    /// <summary>The sentences of one paragraph's text; a full stop ends none where a small letter follows.</summary>
    public static IEnumerable<ReadSentence> In(string text, Location at) =>
        from sentence in SpokenSentence.In(text)
        let words = Enumerable
            .Range(0, sentence.Count)
            .Select(i => sentence[i])
            .Where(t => t.Word.Any(char.IsLetterOrDigit))
            .ToArray()
        where words.Length > 0
        select new ReadSentence(
            text[words[0].Start..words[^1].End],
            words.Length,
            words.Sum(w => Gradus.Auditing.Syllables.Of(w.Word)),
            at
        );
}
