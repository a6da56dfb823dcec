using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class TargetTooSmall : ISiteRule
{
    /// <summary>CSS pixels (WCAG 2.2, 2.5.8).</summary>
    private const double Least = 24;

    /// <summary>What a button of ours has: it is pressed from the floor (WCAG 2.2, 2.5.5).</summary>
    private const double LeastOfButton = 44;

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        from page in site.Pages
        from target in page.Targets
        let fault = target.IsInSentence
            ? null
            : target.Sizes.Select(size => Fault(target.IsButton ? LeastOfButton : Least, size)).FirstOrDefault(f => f is not null)
        where fault is not null
        select this.Found(
            Level.Error,
            plan.Client,
            target.At,
            $"{char.ToUpperInvariant(target.What[0])}{target.What[1..]} {fault}.",
            "Give it a 'min-block-size', or more 'padding-block', in the theme's style."
        );

    private static string? Fault(double least, TargetSize size) =>
        size.Height < least ? Said("high", size.Height.Value, least, size.Screen)
        : size.Width < least ? Said("wide", size.Width.Value, least, size.Screen)
        : null;

    private static string Said(string which, double pixels, double least, string screen) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"is {Math.Floor(pixels * 10) / 10:0.#} px {which} on a {screen} screen, where {least:0} is the least"
        );
}
