using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class ContrastTooLow : ISiteRule
{
    private const string Help =
        "Make one of the two darker or lighter in the theme's style: WCAG 2.2 asks 4.5 of text, and 3 where it has 24 "
        + "px, or 18.66 px in bold.";

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        from page in site.Pages
        from found in page
            .Texts.SelectMany(text => text.Shades.Select(shade => Judged(text, shade)).OfType<Fault>())
            .DistinctBy(f => f.Same)
        select this.Found(
            found.Level,
            plan.Client,
            found.At,
            found.Said,
            found.Level == Level.Error ? Help : "Give text and ground plain colours, so that somebody can say how they differ."
        );

    /// <param name="Same">What is said once a page, wherever else it is so.</param>
    private sealed record Fault(Level Level, Location At, string Said, string Same);

    private static Fault? Judged(TextLook text, Shade shade)
    {
        if (shade.Open is { } open)
            return new(
                Level.Warning,
                text.At,
                $"Nobody can say how well '{text.Sample}' can be read on a {shade.Screen} screen: '{open}' cannot be worked out.",
                open
            );
        var asked = shade.IsLarge ? 3 : 4.5;
        var contrast = Colour.Contrast(shade.Text, shade.Ground);
        if (contrast >= asked)
            return null;
        var pair = $"{shade.Text} on {shade.Ground} on a {shade.Screen} screen";
        return new(
            Level.Error,
            text.At,
            string.Create(
                CultureInfo.InvariantCulture,
                $"'{text.Sample}' is {pair}: a contrast of {Math.Floor(contrast * 100) / 100:0.00}, where {asked:0.#} is asked."
            ),
            $"{shade.Text} {shade.Ground} {asked}"
        );
    }
}
