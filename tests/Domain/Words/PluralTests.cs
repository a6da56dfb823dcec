using System.Collections.Frozen;
using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>Forms by number; tests/Browser/LanguagesTests.cs holds the built-in languages against the CLDR.</summary>
public sealed class PluralTests
{
    /// <summary>Three forms, and no language: from right to left, with a comma before the tenths.</summary>
    private static readonly Words Made = new(
        new(
            "zz",
            IsRightToLeft: true,
            ",",
            [
                new("one", Rule("n % 10 = 1 and n % 100 != 11")),
                new("few", Rule("n % 10 = 2..4 and n % 100 != 12..14 or n = 100,7")),
            ]
        ),
        new Dictionary<string, Phrase>
        {
            ["sets"] = new(
                "{n} many",
                new Dictionary<string, string> { ["one"] = "{n} one", ["few"] = "{n} few" }.ToFrozenDictionary()
            ),
            ["range"] = new(
                "{low} to {high} many",
                new Dictionary<string, string>
                {
                    ["one"] = "{low} to {high} one",
                    ["few"] = "{low} to {high} few",
                }.ToFrozenDictionary()
            ),
            ["plain"] = new("<{said}>"),
        }.ToFrozenDictionary()
    );

    [Theory]
    [InlineData(0, "0 many")]
    [InlineData(1, "1 one")]
    [InlineData(2, "2 few")]
    [InlineData(4, "4 few")]
    [InlineData(5, "5 many")]
    [InlineData(7, "7 few")]
    [InlineData(11, "11 many")]
    [InlineData(12, "12 many")]
    [InlineData(21, "21 one")]
    [InlineData(100, "100 few")]
    [InlineData(112, "112 many")]
    public void A_number_chooses_its_form(int n, string said) => Assert.Equal(said, Made.Say("sets", ("n", n)));

    [Fact]
    public void A_range_takes_the_form_of_its_end_and_a_number_in_words_the_last()
    {
        Assert.Equal("1 to 3 few", Made.Say("range", ("low", 1), ("high", 3)));
        Assert.Equal("3 to 5 many", Made.Say("range", ("low", 3), ("high", 5)));
        Assert.Equal("2–3 many", Made.Say("sets", ("n", "2–3")));
        Assert.Equal("2–3 few", Made.Say("sets", ("n", "2–3"), ("high", 3)));
    }

    [Fact]
    public void In_a_language_from_right_to_left_what_reads_from_left_to_right_is_set_apart()
    {
        Assert.Equal("<\u2068Ankle rock (left)\u2069>", Made.Say("plain", ("said", "Ankle rock (left)")));
        Assert.Equal("<אבג 12>", Made.Say("plain", ("said", "אבג 12")));
        Assert.Equal("<12,5>", Made.Say("plain", ("said", 12.5m)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("n")]
    [InlineData("n == 1")]
    [InlineData("n = 1..")]
    [InlineData("i = 1")]
    [InlineData("n % 0 = 1")]
    [InlineData("n = 1 and")]
    [InlineData("n = 1  or n = 2")]
    [InlineData("n = 1\n")]
    [InlineData("n = 9999999999")]
    public void What_is_no_rule_is_not_read(string text) => Assert.Null(PluralRule.Read(text));

    private static PluralRule Rule(string text) => PluralRule.Read(text) ?? throw new ArgumentException(text, nameof(text));
}
