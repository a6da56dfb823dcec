using System.Globalization;
using System.Text;

namespace Gradus.Figures;

/// <summary>A figure as a file of its own, or inside a page of a coach's: start and end beside each other.</summary>
public static class FigureFile
{
    private const double Gap = 14;

    /// <summary>The colours of a page, light and dark, under the names that pages give them.</summary>
    public const string Style =
        ".figure{--ground:#fff;--ink:#16202b;--soft:#2f4356;--line:#9aa5b1;--link:#b84a00;--feel:#c2185b;"
        + "fill:none;stroke:currentColor;stroke-linecap:round;stroke-linejoin:round}"
        + ".figure text{fill:var(--ink);stroke:none;font:bold 18px sans-serif;text-anchor:middle}"
        + "@media(prefers-color-scheme:dark){.figure{--ground:#14181d;--ink:#f2f2ee;--soft:#b9c8d6;--line:#667380;--link:#ff9d52;"
        + "--feel:#ff6fa3}}";

    /// <summary>A whole SVG document.</summary>
    /// <param name="title">What it is called to whoever cannot see it.</param>
    /// <param name="letter">L or R where a side is said; empty where none is.</param>
    public static string Document(Figure figure, string title, string letter) =>
        Element(figure, title, letter, $" xmlns=\"http://www.w3.org/2000/svg\"", $"<style>{Style}</style>") + "\n";

    /// <summary>The element alone.</summary>
    public static string Element(Figure figure, string title, string letter) => Element(figure, title, letter, "", "");

    private static string Element(Figure figure, string title, string letter, string attributes, string style)
    {
        var (bounds, both) = (figure.Bounds, figure.End is not null);
        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"<svg{attributes} viewBox=\"0 0 {FigureSvg.Tenths((bounds.Width * (both ? 2 : 1)) + (both ? Gap : 0))} "
                + $"{FigureSvg.Tenths(bounds.Height)}\" role=\"img\">{style}<title>{Escape(title)}</title>"
        );
        Append(figure.Start, 0);
        if (figure.End is { } end)
            Append(end, bounds.Width + Gap);
        return text.Append("</svg>").ToString();

        void Append(Drawing drawing, double right)
        {
            // Whoever works with the left is the mirror image, and the letter stands upright in it.
            var mirrored = letter == "L";
            var shift = mirrored
                ? $"matrix(-1 0 0 1 {FigureSvg.Tenths(right + bounds.Right)} {FigureSvg.Tenths(-bounds.Top)})"
                : $"translate({FigureSvg.Tenths(right - bounds.Left)} {FigureSvg.Tenths(-bounds.Top)})";
            text.Append(
                CultureInfo.InvariantCulture,
                $"<g class=\"figure\"><g transform=\"{shift}\">{FigureSvg.Shapes(drawing)}</g>"
            );
            if (letter.Length > 0)
            {
                var x = mirrored ? right + bounds.Right - drawing.Letter.X : right + drawing.Letter.X - bounds.Left;
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"<text x=\"{FigureSvg.Tenths(x)}\" y=\"{FigureSvg.Tenths(drawing.Letter.Y - bounds.Top + 6)}\">"
                        + $"{letter}</text>"
                );
            }

            text.Append("</g>");
        }
    }

    private static string Escape(string text) =>
        text.Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace(">", "&gt;", StringComparison.Ordinal);
}
