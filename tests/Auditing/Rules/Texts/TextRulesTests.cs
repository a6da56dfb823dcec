namespace Gradus.Tests.Auditing;

/// <summary>What the rules on texts and rounds say at their edges; the edges are those of their pages.</summary>
public sealed class TextRulesTests
{
    private const string Hard =
        "Subsequently accommodate progressively increasing dorsiflexion requirements throughout the contralateral extremity";

    /// <summary>Of fewer than three sentences, or thirty words, a grade says nothing.</summary>
    [Theory]
    [InlineData(3, 1)]
    [InlineData(2, 0)]
    public void Three_sentences_have_a_grade(int sentences, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "reading-too-hard",
                    "clients/bram/programme.md\n- Bram, give both ankles a few minutes after practice.\n+ "
                        + string.Join(' ', Enumerable.Repeat($"{Hard} {Hard}.", sentences))
                )
                .Length
        );

    /// <summary>The Flesch-Kincaid grade of 57 words and 88 syllables in three sentences: 0.39 · 57/3 + 11.8 · 88/57 − 15.59 is
    /// 10.0 (Kincaid 1975, Research Branch Report 8-75).</summary>
    [Theory]
    [InlineData(10, 0)]
    [InlineData(9, 1)]
    public void A_text_may_be_as_hard_as_the_limit(int limit, int found)
    {
        var letter = string.Join(' ', Sentence(10), Sentence(10), Sentence(11));
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "reading-too-hard",
                    $"practice.md\n- settings: {{ large-step: 500 % }}\n+ settings: {{ reading-grade: {limit} }}",
                    $"clients/bram/programme.md\n- Bram, give both ankles a few minutes after practice.\n+ {letter}"
                )
                .Length
        );

        static string Sentence(int ofTwo) =>
            $"Ankle {string.Join(' ', Enumerable.Repeat("ankle", ofTwo - 1).Concat(Enumerable.Repeat("leg", 19 - ofTwo)))}.";
    }

    /// <summary>One is told as one.</summary>
    [Theory]
    [InlineData("1 x hold 30-60 s, each side", "says 1 set.")]
    [InlineData("3 x hold 30-60 s, rest 20 s, each side", "says 3 sets.")]
    public void A_text_that_the_dose_does_not_say_is_told_with_the_number_of_the_dose(string dose, string told) =>
        Assert.Contains(
            OneRule.Says(
                "prose-against-dose",
                $"exercises/wall-calf-stretch.md\n- dose: 2-3 x hold 30-60 s, rest 20 s, each side\n+ dose: {dose}\n"
                    + "- 2. Stay there for {hold}.\n+ 2. Stay there for {hold}. Do two sets."
            ),
            f => f.Sentence.EndsWith(told, StringComparison.Ordinal)
        );

    /// <summary>However short a programme is, somebody who reads another language is to have its texts.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_programme_of_one_week_is_read_too(int weeks) =>
        Assert.Contains(
            OneRule.Says(
                "translation-missing",
                "clients/bram/client.yaml\n- language: en\n+ language: de",
                $"clients/bram/programme.md\n- weeks: 2\n+ weeks: {weeks}"
            ),
            f => f.Sentence.Contains("'Wall calf stretch' has no text in 'de'", StringComparison.Ordinal)
        );

    /// <summary>Rounds give each side the same: more sets for one are told, in the exercise or in a week.</summary>
    [Theory]
    [InlineData("2-3 x press 10-20 s at 40-60%, rest 30 s, each side", "press 10 s at 50%", 0)]
    [InlineData("2-3 x press 10-20 s at 40-60%, rest 30 s, each side, plus 1 x on left", "press 10 s at 50%", 1)]
    public void Rounds_give_each_side_the_same(string dose, string line, int found) =>
        Assert.Equal(
            found,
            OneRule
                .Says(
                    "rounds-against-dose",
                    "exercises/calf-press.md\n- dose: 2-3 x press 10-20 s at 40-60%, rest 30 s, each side\n+ dose: " + dose,
                    "clients/tess/programme.md\n- - use: calf-press\n- side: rear leg\n- by-week:\n- 1: 2 x press 10 s at 50%\n"
                        + "+ - rounds: 2\n+   rest: 60 s\n+   of:\n+     - use: wall-calf-stretch\n+       side: rear leg\n"
                        + "+       by-week: { 1: hold 30 s }\n+     - use: calf-press\n"
                        + $"+       by-week: {{ 1: {line} }}"
                )
                .Count(f => f.Sentence.Contains("more sets", StringComparison.Ordinal))
        );
}
