using Gradus.Reading;

namespace Gradus.Tests.Reading;

/// <summary>Whom to call, as practice.md says it, and whose country decides.</summary>
public sealed class EmergencyNumberTests
{
    private const string Number = "IE: { call: \"112\", text: 999 works as well. }";

    [Theory]
    [InlineData("999", "999")]
    [InlineData("+353 112", "+353 112")]
    [InlineData("17", "17")]
    public void A_number_is_kept_as_it_is_dialled(string written, string kept) =>
        Assert.Equal(kept, Practice($"IE: {{ call: \"{written}\" }}").Read().Card.EmergencyIn("IE")?.Call);

    [Theory]
    [InlineData("IE: Call 112 or 999.", "A sentence stands here, so nobody can press the number to call in IE.")]
    [InlineData("IE: { call: \"1\" }", "'1' is no telephone number.")]
    [InlineData("IE: { call: 112 or 999 }", "'112 or 999' is no telephone number.")]
    [InlineData("IE: { call: \"112\", unsure: nobody }", "'nobody' is no telephone number.")]
    [InlineData("IE: { unsure: \"112\" }", "'call' is missing: a country needs it.")]
    [InlineData("IE: { call: \"112\", sure: \"999\" }", "'sure' is no key of a country.")]
    public void What_nobody_could_press_is_refused(string written, string message) =>
        Assert.Equal(message, Assert.Single(Practice(written).Findings()).Message);

    [Fact]
    public void A_sentence_from_before_is_refused_with_what_to_write() =>
        Assert.Equal(
            "Write IE: { call: \"999\" } with the number there; 'unsure' may be a number for whoever does not know how "
                + "urgent it is, and 'text' what you want to add.",
            Assert.Single(Practice("IE: Call 112.").Findings()).Help
        );

    [Fact]
    public void The_only_country_of_a_practice_is_everybodys() =>
        Assert.Equal(
            "IE",
            LittlePractice
                .Golden.Edit("practice.md", "  GB: { call: \"999\", unsure: \"111\" }\n", "")
                .Edit("clients/ansel/client.yaml", "country: IE\n", "")
                .Client("ansel")
                .Country.Value
        );

    [Fact]
    public void Where_there_are_several_the_client_has_to_say_which()
    {
        var finding = Assert.Single(LittlePractice.Golden.Edit("clients/ansel/client.yaml", "country: IE\n", "").Findings());
        Assert.Equal(Faults.KeyMissing, finding.Rule);
        Assert.Equal("'country' is missing, and practice.md has numbers for GB, IE.", finding.Message);
        Assert.StartsWith("Add a line 'country:'", finding.Help, StringComparison.Ordinal);
    }

    /// <summary>A client would read the braces.</summary>
    [Theory]
    [InlineData("{emergancy}")]
    [InlineData("{emergenc}")]
    public void A_slip_of_the_pen_is_not_handed_on(string slip) =>
        Assert.Equal(
            $"'{slip}' stands for nothing here.",
            Assert
                .Single(LittlePractice.Golden.Edit("cautions/sharp-stab.md", "End the exercise.", $"Call {slip}.").Findings())
                .Message
        );

    private static LittlePractice Practice(string written) => LittlePractice.Golden.Edit("practice.md", Number, written);
}
