using Gradus.Domain;
using Gradus.Reading;
using Gradus.ThemeCheck;

namespace Gradus.Tests.Reading;

public sealed class CatalogueReaderTests
{
    private static readonly string Hebrew = MadeUpWords.In("he");

    [Fact]
    public void German_and_english_have_the_same_words_and_the_same_gaps_in_them()
    {
        Assert.Equal(["de", "en"], Words("de").Languages);
        Assert.Equal(Words("en").In("en")?.Keys, Words("en").In("de")?.Keys);

        // As a practice's own, each catalogue is held against the other, gap by gap.
        var german = File.ReadAllText(House.Repository.Path("src", "Reading", "Words", "de.yaml"));
        Assert.Empty(LittlePractice.Golden.With("words/en.yaml", german).Findings());
        Assert.NotEmpty(
            LittlePractice
                .Golden.With("words/en.yaml", german.Replace("{n} Sätze\"", "Sätze\"", StringComparison.Ordinal))
                .Findings()
        );
    }

    [Fact]
    public void A_practice_brings_all_words_of_another_language()
    {
        Assert.Empty(LittlePractice.Golden.With("words/he.yaml", Hebrew).Findings());
        var words = Words("he", Hebrew).In("he");
        Assert.NotNull(words);
        Assert.Equal("rtl", words.Direction);
        Assert.Equal(MadeUpWords.InOtherLetters("To the content"), words.Say("skip"));
    }

    [Fact]
    public void A_new_file_of_words_misses_every_one_with_its_place()
    {
        var fresh = FreshWords.Text("he");
        var findings = LittlePractice.Golden.With("words/he.yaml", fresh).Findings();
        Assert.All(findings, f =>
            Assert.Equal(("word-missing", Level.Error, "words/he.yaml"), (f.Rule.Text, f.Level, f.At.File))
        );
        var keys = Words("en").In("en")?.Keys.ToArray() ?? [];
        Assert.All(keys, key =>
            Assert.Contains(findings, f =>
                f.Message.StartsWith($"'{key}' ", StringComparison.Ordinal)
                || f.Message.StartsWith($"'{key}, ", StringComparison.Ordinal)
            )
        );
        var lines = fresh.Split('\n');
        Assert.All(findings, f => Assert.Contains("\"\"", lines[f.At.Line - 1], StringComparison.Ordinal));
    }

    [Fact]
    public void A_new_file_for_a_language_that_gradus_has_words_for_changes_nothing() =>
        Assert.Equal("Zum Inhalt", Words("de", FreshWords.Text("de")).In("de")?.Say("skip"));

    [Fact]
    public void A_language_that_gradus_does_not_know_says_itself_how_it_is_read_and_counted()
    {
        var basque = MadeUpWords.In("eu");
        Assert.Equal("ltr", Words("eu", basque).In("eu")?.Direction);
        var untold = Assert.Single(
            LittlePractice
                .Golden.With("words/eu.yaml", basque.Replace("\nlanguage:", "\n#language:", StringComparison.Ordinal))
                .Findings()
        );
        Assert.Equal("Gradus does not know how 'eu' is read and counted, and this file does not say it.", untold.Message);
    }

    [Theory]
    [InlineData("skip: ", "#skip: ", 0, "There is no word 'skip' here.")]
    [InlineData("two: \"{n} דדבצצג\", ", "", 1, "'x' has no form 'two', which 'he' has for some numbers.")]
    public void A_word_or_a_form_that_is_missing_is_named(string said, string instead, int column, string message)
    {
        var key = message.Contains("'x'", StringComparison.Ordinal) ? "metres" : "skip";
        var line = Hebrew.Split('\n').Single(l => l.StartsWith(key + ": ", StringComparison.Ordinal));
        var shorter =
            key == "metres"
                ? line[..line.IndexOf("two:", StringComparison.Ordinal)]
                    + line[line.IndexOf("other:", StringComparison.Ordinal)..]
                : line.Replace(said, instead, StringComparison.Ordinal);
        var finding = Assert.Single(
            LittlePractice.Golden.With("words/he.yaml", Hebrew.Replace(line, shorter, StringComparison.Ordinal)).Findings()
        );
        Assert.Equal(
            ("word-missing", column, message.Replace("'x'", "'metres'", StringComparison.Ordinal)),
            (finding.Rule.Text, finding.At.Column, finding.Message)
        );
    }

    [Theory]
    [InlineData(
        "words/en.yaml",
        "metres: { one: \"{n} metre\", few: \"{n} metres\", other: \"{n} metres\" }\n",
        "key-unknown",
        "'few' is no form of a phrase in 'en'."
    )]
    [InlineData(
        "words/en.yaml",
        "metres: { one: \"{number} metre\", other: \"{n} metres\" }\n",
        "value-wrong",
        "'metres' must hold the same words in braces as before: '{n} metres'."
    )]
    [InlineData("words/english.yaml", "skip: Down\n", "file-name-wrong", "'english' is no language.")]
    [InlineData("words/eu.yaml", "language: { direction: up, decimal-mark: \",\" }\n", "value-wrong", "'up' is not a direction.")]
    [InlineData(
        "words/eu.yaml",
        "language: { direction: ltr, decimal-mark: \",\", plural: { one: n is 1 } }\n",
        "value-wrong",
        "'n is 1' is no rule for a number."
    )]
    [InlineData(
        "words/eu.yaml",
        "language: { direction: ltr, decimal-mark: \",\", plural: { other: n = 1 } }\n",
        "key-unknown",
        "'other' is no kind of number that needs a rule."
    )]
    public void What_cannot_be_a_word_is_refused(string path, string text, string rule, string message)
    {
        var finding = Assert.Single(LittlePractice.Golden.With(path, text).Findings());
        Assert.Equal((rule, message), (finding.Rule.Text, finding.Message));
    }

    [Fact]
    public void A_client_whose_language_has_no_words_is_told_of_with_what_to_do()
    {
        var finding = Assert.Single(
            LittlePractice.Golden.Edit("clients/ansel/client.yaml", "language: en", "language: fr").Findings()
        );
        Assert.Equal(
            (
                "There are no words for a site in the language 'fr'.",
                "Write one of: de, en. Or bring its words: 'gradus new words fr' writes words/fr.yaml to fill in."
            ),
            (finding.Message, finding.Help)
        );
    }

    [Fact]
    public void A_word_that_is_missing_blocks_those_who_read_that_language_and_nobody_else()
    {
        var practice = LittlePractice
            .Golden.With("words/he.yaml", Hebrew)
            .Edit("clients/ansel/client.yaml", "language: en", "language: he")
            .Read();
        var reach = Reach.Of(practice);
        Assert.True(reach.Touches("words/he.yaml", new("ansel")));
        Assert.False(reach.Touches("words/en.yaml", new("ansel")));
    }

    [Fact]
    public void What_everybody_is_asked_is_asked_in_the_language_of_the_practice_and_read_in_that_of_the_client()
    {
        var practice = LittlePractice.Golden.Edit("practice.md", "language: en", "language: de").Read();
        Assert.Equal("hoher Blutdruck", NameIn(practice));
        Assert.Equal("raised blood pressure", NameIn(practice.In("en")));
        Assert.Equal(
            "an entry of the practice",
            NameIn(
                LittlePractice
                    .Golden.Edit("practice.md", "language: en", "language: de")
                    .With(
                        "conditions.yaml",
                        LittlePractice.Golden["conditions.yaml"]
                            + "- id: raised-blood-pressure\n  name: an entry of the practice\n  question: Is it?\n  "
                            + "where: whole body\n"
                    )
                    .Read()
                    .In("en")
            )
        );

        static string? NameIn(Practice practice) => practice.Find(new ConditionId("raised-blood-pressure"))?.Name;
    }

    private static WordBook Words(string language, string? text = null) =>
        (text is null ? LittlePractice.Golden : LittlePractice.Golden.With($"words/{language}.yaml", text)).Read().Words;
}
