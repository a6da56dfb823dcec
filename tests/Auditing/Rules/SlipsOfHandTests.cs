using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What a hurried coach leaves wrong, at its limits.</summary>
public sealed class SlipsOfHandTests
{
    [Theory]
    [InlineData("Push through the pain.", true)]
    [InlineData("Breathe through any pain that comes", true)]
    [InlineData("Go on even if it hurts", true)]
    [InlineData("Ignore your pain", true)]
    [InlineData("Sink until it hurts", true)]
    [InlineData("No pain, no gain", true)]
    [InlineData("A little pain is good", true)]
    [InlineData("It should hurt", true)]
    [InlineData("Never push through the pain", false)]
    [InlineData("Stop even if it hurts only a little", false)]
    [InlineData("Come back before it hurts", false)]
    [InlineData("Walk through the hall without pain", false)]
    [InlineData("It should not hurt", false)]
    public void A_text_that_asks_for_pain(string sentence, bool isFound) =>
        Assert.Equal(
            isFound ? 1 : 0,
            Of(
                "text-asks-for-pain",
                "exercises/wall-calf-stretch.md",
                "- 2. Stay there for {hold}.",
                $"+ 2. Stay for {{hold}}. {sentence}"
            ).Length
        );

    [Theory]
    [InlineData("Dear Bram, the ankle holds you back.", true)]
    [InlineData("Bram", true)]
    [InlineData("A very good morning Bram! On we go.", true)]
    [InlineData("A very good evening to Bram, the ankle holds you back.", false)]
    [InlineData("Dear Tess and Bram, go on.", false)]
    [InlineData("Dear Tess, train with Bram.", false)]
    [InlineData("Dear bram, go on.", false)]
    [InlineData("Dear Ullyett, go on.", false)]
    [InlineData("# Bram", false)]
    public void A_letter_that_greets_somebody_else(string letter, bool isFound) =>
        Assert.Equal(
            isFound ? 1 : 0,
            Of(
                "letter-greets-another",
                "clients/tess/programme.md",
                "- Tess, the rear ankle holds your lunge back. Two short sessions a week will help.",
                $"+ {letter}"
            ).Length
        );

    [Theory]
    [InlineData("999", false)]
    [InlineData("1 1 2", false)]
    [InlineData("+44 999", true)]
    [InlineData("99", true)]
    [InlineData("111", true)]
    public void An_emergency_number_that_is_another(string call, bool isFound) =>
        Assert.Equal(
            isFound ? 1 : 0,
            Of("emergency-number-unusual", "practice.md", "- GB: { call: \"999\" }", $"+ GB: {{ call: \"{call}\" }}").Length
        );

    /// <summary>The numbers for an ambulance: 112 in the European Union by Directive (EU) 2018/1972, article 109; the others from
    /// memory.</summary>
    [Theory]
    [InlineData("AT", "112 144")]
    [InlineData("AU", "000 112")]
    [InlineData("BE", "112")]
    [InlineData("CA", "911")]
    [InlineData("CH", "112 144")]
    [InlineData("DE", "112")]
    [InlineData("DK", "112")]
    [InlineData("ES", "112 061")]
    [InlineData("FI", "112")]
    [InlineData("FR", "112 15")]
    [InlineData("GB", "999 112")]
    [InlineData("IE", "112 999")]
    [InlineData("IT", "112 118")]
    [InlineData("NL", "112")]
    [InlineData("NO", "112 113")]
    [InlineData("NZ", "111")]
    [InlineData("PL", "112 999")]
    [InlineData("PT", "112")]
    [InlineData("SE", "112")]
    [InlineData("US", "911")]
    public void The_numbers_of_each_country_and_no_other(string country, string numbers)
    {
        foreach (var number in numbers.Split(' '))
            Assert.Empty(With(number));
        Assert.EndsWith($" is {numbers.Replace(" ", " or ", StringComparison.Ordinal)}.", Assert.Single(With("12345")).Message);

        Finding[] With(string number) =>
            Of("emergency-number-unusual", "practice.md", "- GB: { call: \"999\" }", $"+ {country}: {{ call: \"{number}\" }}");
    }

    [Theory]
    [InlineData("right", "right", "right", 1)]
    [InlineData("left", "right", "right", 1)]
    [InlineData("right", "right", "left", 0)]
    [InlineData("left", "left", "left", 1)]
    public void Roles_of_one_limb_on_one_side(string arm, string front, string rear, int found) =>
        Assert.Equal(
            found,
            Of(
                "roles-on-one-side",
                "sports/epee.yaml",
                "- weapon arm: right",
                "- front leg: right",
                "- rear leg: left",
                $"+ weapon arm: {arm}",
                $"+ front leg: {front}",
                $"+ rear leg: {rear}"
            ).Length
        );

    /// <summary>Tess does it on her left, which is her rear leg, whatever sides it has.</summary>
    [Theory]
    [InlineData("right leg", "on rear leg", 1)]
    [InlineData("left leg", "on rear leg", 0)]
    [InlineData("right leg", "each side", 1)]
    [InlineData("right leg", "on left", 0)]
    public void A_side_by_hand_that_is_not_the_clients(string words, string side, int errors) =>
        Assert.Equal(
            errors,
            Of(
                    "prose-against-dose",
                    "exercises/wall-calf-stretch.md",
                    "- dose: 2-3 x hold 30-60 s, rest 20 s, each side",
                    $"+ dose: 2-3 x hold 30-60 s, rest 20 s, {side}",
                    "- 1. Sink forward until the calf is tight.",
                    $"+ 1. Sink forward over the {words} until the calf is tight."
                )
                .Count(f => f.Level == Level.Error && f.Client == new ClientId("tess"))
        );

    private static Finding[] Of(string rule, string file, params string[] lines) =>
        [.. Trial.Of([Edit.Of(file, lines)]).Where(f => f.Rule.Text == rule)];
}
