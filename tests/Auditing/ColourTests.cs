using Gradus.Auditing;

namespace Gradus.Tests.Auditing;

/// <summary>The formula of WCAG 2.2. tests/Browser holds thousands of pairs against npm wcag-contrast.</summary>
public sealed class ColourTests
{
    /// <summary>Computed with the published formula; #777777 on white must not be rounded up to 4.5.</summary>
    [Theory]
    [InlineData("#767676", "#ffffff", 4.5422)]
    [InlineData("#777777", "#ffffff", 4.4781)]
    [InlineData("#595959", "#ffffff", 7.0047)]
    [InlineData("#949494", "#ffffff", 3.0335)]
    [InlineData("#959595", "#ffffff", 2.9953)]
    [InlineData("#0000ff", "#ffffff", 8.5925)]
    [InlineData("#ff0000", "#ffffff", 3.9985)]
    [InlineData("#0000ff", "#ff0000", 2.1489)]
    [InlineData("#000000", "#ffffff", 21)]
    [InlineData("#123456", "#123456", 1)]
    public void Two_colours_have_the_contrast_of_the_published_formula(string one, string other, double contrast)
    {
        Assert.Equal(contrast, Colour.Contrast(Of(one), Of(other)), 4);
        Assert.Equal(contrast, Colour.Contrast(Of(other), Of(one)), 4);
    }

    [Theory]
    [InlineData("#1b2430", "#1b2430")]
    [InlineData("#FFF", "#ffffff")]
    [InlineData("#a0c", "#aa00cc")]
    [InlineData("#12345", "")]
    [InlineData("#1234567", "")]
    [InlineData("#12345678", "")]
    [InlineData("#1234", "")]
    [InlineData("#+12345", "")]
    [InlineData("1b2430", "")]
    [InlineData("red", "")]
    [InlineData("#", "")]
    [InlineData("", "")]
    public void A_colour_is_read_from_three_or_six_figures(string text, string colour) =>
        Assert.Equal(colour, Colour.OfHex(text)?.ToString() ?? "");

    private static Colour Of(string hex) => new(Part(hex[1..3]), Part(hex[3..5]), Part(hex[5..7]));

    private static double Part(string hex) =>
        int.Parse(hex, System.Globalization.NumberStyles.HexNumber, System.Globalization.CultureInfo.InvariantCulture) / 255.0;
}
