using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>Kincaid JP et al. 1975, Research Branch Report 8-75; the counts are those of reference-values.md,
/// Reading.</summary>
public sealed class ReadabilityTests
{
    private static readonly Location At = new("exercises/sway.md", 12, 1);

    [Theory]
    [InlineData(6, 1, 6, "-1.45")]
    [InlineData(13, 1, 26, "13.08")]
    [InlineData(12, 1, 23, "11.7067")]
    [InlineData(100, 5, 150, "9.91")]
    [InlineData(100, 8, 140, "5.805")]
    public void The_grade_follows_from_three_counts(int words, int sentences, int syllables, string grade) =>
        Assert.Equal(
            decimal.Parse(grade, System.Globalization.CultureInfo.InvariantCulture),
            Math.Round(Readability.GradeOf(words, sentences, syllables), 4)
        );

    [Theory]
    [InlineData("The cat sat on the mat.", 6, 1, 6)]
    [InlineData("Stay there. Breathe out!", 4, 2, 4)]
    [InlineData("Keep the front knee still, e.g. with a hand", 10, 1, 10)]
    [InlineData("A half-kneeling rest", 4, 1, 5)]
    [InlineData("Stay for {hold}, not for 2.5 minutes.", 7, 1, 8)]
    [InlineData("Don’t push.", 2, 1, 2)]
    [InlineData(" … ", 0, 0, 0)]
    public void Words_sentences_and_syllables_are_counted(string text, int words, int sentences, int syllables)
    {
        var read = Readability.Of([new([new Block.Paragraph([new Inline.Plain(text)], At)])]);
        Assert.Equal((words, sentences, syllables), (read.Words, read.Sentences.Count, read.Syllables));
    }

    [Fact]
    public void A_list_item_ends_a_sentence_and_a_heading_is_none()
    {
        var list = new Block.Listing(true, [Paragraph("Kneel down", 14), Paragraph("Lean in. Wait", 15)], At);
        var read = Readability.Of([new([new Block.Heading(2, [new Inline.Plain("What to do")], At), list])]);
        Assert.Equal(["Kneel down 14", "Lean in 15", "Wait 15"], read.Sentences.Select(s => $"{s.Text} {s.At.Line}"));
    }

    [Fact]
    public void The_hardest_sentence_is_the_one_without_which_the_text_is_easiest()
    {
        var read = Readability.Of([
            Paragraph(
                "Unhurried. Keep the heel on the floor. Considerable limitations of movement necessitate compensation in "
                    + "every repetition. Rest a while.",
                3
            ),
        ]);
        Assert.Equal("Considerable limitations of movement necessitate compensation in every repetition", read.Hardest()?.Text);
    }

    /// <summary>By hand: alone the first, 20 words and 20 syllables, is 0.39 x 20 + 11.8 x 1 - 15.59 = 4.01, the second, 10 words
    /// and 12 syllables, 0.39 x 10 + 11.8 x 1.2 - 15.59 = 2.47.</summary>
    [Fact]
    public void Of_two_sentences_the_one_is_hardest_without_which_the_other_stays()
    {
        const string Long = "We go on and on and we do not stop till the sun is down and the day is done";
        var read = Readability.Of([Paragraph(Long + ". Sit on a chair and keep one ankle quite steady.", 3)]);
        Assert.Equal([(20, 20), (10, 12)], read.Sentences.Select(s => (s.Words, s.Syllables)));
        Assert.Equal(Long, read.Hardest()?.Text);
    }

    [Fact]
    public void Nothing_has_no_grade_and_one_sentence_is_not_harder_than_others()
    {
        Assert.Null(Readability.Of([]).Grade);
        Assert.Null(Readability.Of([Paragraph("Go on.", 3)]).Hardest());
    }

    [Fact]
    public void A_text_as_long_as_a_file_may_be_is_judged_at_once()
    {
        var read = Readability.Of([Paragraph(string.Concat(Enumerable.Repeat("Go on. ", 256 * 1024 / 7)), 3)]);
        Assert.Equal(256 * 1024 / 7, read.Sentences.Count);
        Assert.NotNull(read.Hardest());
    }

    private static Gradus.Domain.Prose Paragraph(string text, int line) =>
        new([new Block.Paragraph([new Inline.Plain(text)], At with { Line = line })]);
}
