using System.Globalization;
using Gradus.Auditing.Sources;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class ReadingTooHard : IPracticeRule
{
    /// <summary>Of fewer words or sentences a grade says nothing; common practice, no source.</summary>
    private const int FewestWords = 30;

    private const int FewestSentences = 3;

    /// <summary>A sentence is quoted so far.</summary>
    private const int LongestQuote = 160;

    public IEnumerable<Finding> Check(Practice practice) =>
        from text in EnglishTexts.Of(practice)
        let read = Readability.Of(text.Parts)
        where read.Words >= FewestWords && read.Sentences.Count >= FewestSentences
        let grade = Math.Round(read.Grade ?? 0, 1, MidpointRounding.AwayFromZero)
        where grade > practice.Card.Settings.ReadingGrade
        let hardest = read.Hardest()
        where hardest is not null
        select this.Found(
            Level.Note,
            text.Client,
            hardest.At,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{text.What} reads at grade {grade:0.0}, and the limit is {practice.Card.Settings.ReadingGrade}; its "
                    + $"hardest sentence is \"{Quoted(hardest.Text)}\"."
            ),
            "Write shorter sentences and shorter words, that sentence first."
        );

    private static string Quoted(string sentence)
    {
        if (sentence.Length <= LongestQuote)
            return sentence;
        var end = sentence.LastIndexOf(' ', LongestQuote);
        return sentence[..(end > 0 ? end : LongestQuote)] + " …";
    }
}
