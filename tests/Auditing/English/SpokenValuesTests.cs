using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class SpokenValuesTests(ITestOutputHelper output)
{
    private static readonly string[] Verdicts = ["agrees", "disagrees", "not-a-dose"];

    [Fact]
    public void Every_sentence_of_the_corpus_is_read_as_somebody_reads_it_who_knows_the_dose()
    {
        var cases = SpokenCase.In("spoken.tsv");
        Assert.True(cases.Count >= 150);
        Assert.True(cases.Count(c => c.Verdict == "not-a-dose") * 3 >= cases.Count);
        Assert.Equal(0, Counted("corpus", cases));
    }

    /// <summary>Each turns on one word or sign, which another sentence beside it has not.</summary>
    [Fact]
    public void Every_word_that_decides_is_read() => Assert.Equal(0, Counted("words", SpokenCase.In("spoken-words.tsv")));

    /// <summary>What stands before a sentence, however long, does not change it.</summary>
    [Fact]
    public void A_sentence_far_down_in_a_text_is_read_whole() =>
        Assert.Equal(
            "agrees",
            SpokenCase
                .In("spoken-words.tsv")
                .First(c => c.Figures == "metres 30")
                .VerdictOf(string.Concat(Enumerable.Repeat("Go on. ", 70)) + "Walk for 30 metres.")
        );

    /// <summary>Written after the reader, and never used to better it: what it says here is what it says of a coach's own
    /// texts.</summary>
    [Fact]
    public void Sentences_that_were_held_out_are_mostly_read_right() =>
        Assert.True(Counted("held out", SpokenCase.In("spoken-held-out.tsv")) <= 6);

    [Fact]
    public void A_sentence_that_agrees_disagrees_with_another_number_in_it()
    {
        var planted = SpokenCase.In("spoken.tsv").Where(c => c.Verdict == "agrees").SelectMany(Planted).ToArray();
        Assert.True(planted.Length > 80);
        output.WriteLine($"{"planted", -14}{"faults", 10}{"found", 7}");
        foreach (var kind in planted.GroupBy(p => p.Kind).OrderBy(k => k.Key))
            output.WriteLine($"{kind.Key.ToString().ToLowerInvariant(), -14}{kind.Count(), 10}{kind.Count(IsFound), 7}");
        Assert.All(planted, p => Assert.True(IsFound(p), $"{p.Sentence}\n{p.Case.Line}: read {p.Case.VerdictOf(p.Sentence)}"));
    }

    [Fact]
    public void A_sentence_that_agrees_disagrees_with_a_dose_that_is_twice_as_much()
    {
        var cases = SpokenCase
            .In("spoken.tsv")
            .Where(c =>
                c.Verdict == "agrees"
                && c.Dose.Terms.Tempo is null
                && c.Judged(c.Sentence).All(j => j.Figure.Kind is SpokenKind.Time or SpokenKind.Rest)
            )
            .ToArray();
        Assert.True(cases.Length > 20);
        Assert.All(cases, c =>
            Assert.Equal("disagrees", new SpokenCase(c.Verdict, Doubled(c.Line), c.Figures, c.Sentence).Result())
        );
    }

    [Theory]
    [InlineData("30 to 30 to 30 to 30 to ")]
    [InlineData("a half a half of a half minute ")]
    [InlineData("between and between twenty-twenty-")]
    [InlineData("((((((((((((,,,,,,")]
    [InlineData("if 5 breaths when 5 times before the other side ")]
    [InlineData("slow, slow, slow, 3 x sets of sets of ")]
    [InlineData("999999999999 minutes {{{{ ’’’ ½½½ ")]
    public void A_text_of_any_shape_is_read_in_a_time_that_grows_with_its_length(string piece)
    {
        var text = string.Concat(Enumerable.Repeat(piece, 256 * 1024 / piece.Length));
        var clock = Stopwatch.StartNew();
        Assert.All(SpokenValues.In(text), f => Assert.InRange(f.Start + f.Length, 1, text.Length));
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(30), $"{clock.Elapsed}");
    }

    private static bool IsFound((SpokenKind Kind, SpokenCase Case, string Sentence) planted) =>
        planted.Case.VerdictOf(planted.Sentence) == "disagrees";

    /// <summary>The sentence with each of its numbers changed in turn.</summary>
    private static IEnumerable<(SpokenKind Kind, SpokenCase Case, string Sentence)> Planted(SpokenCase agreeing) =>
        from judged in agreeing.Judged(agreeing.Sentence)
        let figure = judged.Figure
        where figure.Kind != SpokenKind.Side
        let other = figure.Kind == SpokenKind.Felt ? figure.Number.High - 1 : figure.Number.High + 7
        select (
            figure.Kind,
            agreeing,
            agreeing.Sentence[..figure.Start] + Words(figure.Kind, other) + agreeing.Sentence[(figure.Start + figure.Length)..]
        );

    private static string Words(SpokenKind kind, int number) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} ")
        + kind switch
        {
            SpokenKind.Sets => "sets",
            SpokenKind.Repetitions or SpokenKind.Leave => "repetitions",
            SpokenKind.Efforts => "lifts",
            SpokenKind.Times => "times",
            SpokenKind.Breaths => "breaths",
            SpokenKind.Percent => "per cent of your strength",
            SpokenKind.Felt => "out of ten",
            SpokenKind.Metres => "metres",
            _ => "seconds",
        };

    private static string Doubled(string line) =>
        Regex.Replace(line, "[0-9]+(?=(-[0-9]+)? s)", n =>
            (2 * int.Parse(n.Value, CultureInfo.InvariantCulture)).ToString(CultureInfo.InvariantCulture)
        );

    /// <summary>Prints how the sentences are read. Right is every figure; in part, where the verdict is right and a figure is
    /// not; wrong, where something is said that is not so; missed, where something that should be said is not.</summary>
    /// <returns>How many are not right.</returns>
    private int Counted(string name, Series<SpokenCase> cases)
    {
        output.WriteLine($"{name, -14}{"sentences", 10}{"right", 7}{"in part", 9}{"wrong", 7}{"missed", 8}");
        foreach (var verdict in Verdicts)
        {
            var some = cases.Where(c => c.Verdict == verdict).ToArray();
            var (right, same) = (some.Count(IsRight), some.Count(c => c.Result() == verdict));
            var missed = some.Count(c => c.Result() != verdict && (verdict == "disagrees" || c.Result() == "not-a-dose"));
            output.WriteLine(
                $"{verdict, -14}{some.Length, 10}{right, 7}{same - right, 9}{some.Length - same - missed, 7}{missed, 8}"
            );
        }

        foreach (var wrong in cases.Where(c => !IsRight(c)))
            output.WriteLine(
                $"{wrong.Sentence}\n   {wrong.Line}\n   expected {wrong.Verdict} '{wrong.Figures}', read "
                    + $"{wrong.Result()} '{wrong.Read()}'"
            );
        return cases.Count(c => !IsRight(c));
    }

    private static bool IsRight(SpokenCase spoken) => spoken.Result() == spoken.Verdict && spoken.Read() == spoken.Figures;
}
