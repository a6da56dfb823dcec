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
