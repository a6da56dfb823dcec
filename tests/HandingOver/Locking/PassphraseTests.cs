using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

public sealed class PassphraseTests
{
    [Fact]
    public void Six_words_of_two_thousand_and_forty_eight_are_made()
    {
        Assert.Equal(2048, Passphrase.List.Distinct(StringComparer.Ordinal).Count());
        Assert.True(Passphrase.Words * Math.Log2(Passphrase.List.Count) >= 66);
        var made = Enumerable.Range(0, 2_000).Select(_ => Passphrase.Made().Text.Split(' ')).ToArray();
        Assert.All(made, words => Assert.Equal(6, words.Length));
        // Of 12,000 draws from 2,048 words about six leave one out: e^(-12000/2048) of them.
        var drawn = made.SelectMany(words => words).ToHashSet(StringComparer.Ordinal);
        Assert.Empty(drawn.Except(Passphrase.List));
        Assert.InRange(drawn.Count, 2_015, 2_048);
        Assert.All(made, words => Assert.Equal(string.Join(' ', words), Passphrase.Typed(string.Join(' ', words)).Text));
    }

    [Theory]
    [InlineData("correct-Horse-42!", "correct-horse-42!")]
    [InlineData("  we  meet at the old weir on mondays  ", "we meet at the old weir on mondays")]
    [InlineData("abandon ability able about above absence", "abandon ability able about above absence")]
    [InlineData("ABANDON\u00A0ability able\tabout above absence", "abandon ability able about above absence")]
    public void A_coachs_own_is_taken(string written, string text) => Assert.Equal(text, Passphrase.Own(written).Text);

    [Theory]
    [InlineData("", "Nothing but blanks is no passphrase.")]
    [InlineData(" \t\u00A0\u3000 ", "Nothing but blanks is no passphrase.")]
    [InlineData("parade-5-weir", "The passphrase has 13 letters, 9 of them different.")]
    [InlineData("aaaaaaaaaaaaaaaaaaaaaa", "The passphrase has 22 letters, 1 of them different.")]
    [InlineData("abcabcabcabcabcabcabc", "The passphrase has 21 letters, 3 of them different.")]
    [InlineData(
        "abandon ability able about above",
        "The passphrase has 5 different words of the list; it takes 6 different ones."
    )]
    [InlineData("able able able able able able", "The passphrase has one different word of the list; it takes 6 different ones.")]
    public void One_that_is_easily_guessed_is_refused(string written, string sentence) =>
        Assert.Equal(sentence, Assert.Throws<HandOverException>(() => Passphrase.Own(written)).Sentence);

    [Theory]
    [InlineData("Die Straße am Wehr um acht")]
    [InlineData("клинок и маска на стене")]
    [InlineData("剣道剣道剣道剣道剣道剣道剣道")]
    public void One_that_not_every_keyboard_has_is_refused(string written) =>
        Assert.StartsWith(
            "The passphrase has letters that not every keyboard has",
            Assert.Throws<HandOverException>(() => Passphrase.Own(written)).Sentence,
            StringComparison.Ordinal
        );

    [Fact]
    public void One_of_a_thousand_letters_is_refused() =>
        Assert.Equal(
            "The passphrase is longer than 200 letters.",
            Assert.Throws<HandOverException>(() => Passphrase.Own(string.Concat(Enumerable.Repeat("abcdefghij", 100)))).Sentence
        );
}
