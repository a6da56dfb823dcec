using System.Text;
using Gradus.Domain;
using Gradus.Figures;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Where a page shows a figure.</summary>
/// <param name="Figure">The address of what it shows, "#figure-calf-lean-start".</param>
/// <param name="Paper">What part of it is seen, and where it is put: view box, x, y, width and height.</param>
/// <param name="Mirrored">The transform of what it shows; empty where there is none.</param>
/// <param name="Letter">The letter in it with its place; empty where there is none.</param>
/// <param name="Letters">Those of left and right, which a script puts in; empty where there are none.</param>
/// <param name="IsPlain">Whether nothing else is drawn into it.</param>
public sealed record FigureSeen(
    string Figure,
    string Paper,
    string Mirrored,
    string Letter,
    string Letters,
    bool IsPlain,
    Location At
);

/// <summary>The drawing of a figure, which stands once.</summary>
/// <param name="Shapes">Its markup, as Gradus writes it.</param>
/// <param name="Parts">The joints in it: of each part that has a name its path and how near each place of that is.</param>
public sealed record DrawingSeen(
    string Id,
    string Paper,
    string Shapes,
    Series<(string Part, string Path, string Near)> Parts,
    Location At
);

/// <summary>Figures of one page.</summary>
internal static class FigureParser
{
    public static IEnumerable<FigureSeen> Shown(PageMarkup page, Func<PageElement?, Location> at) =>
        from drawing in page.Named("svg")
        let use = drawing.Children.FirstOrDefault(c => c.LocalName == "use")
        let texts = drawing.Children.Where(c => c.LocalName == "text").ToArray()
        // Without a place on its paper neither is on the list of what may stand in a page.
        where use?.Has("width") == true || texts.Any(t => t.Has("x"))
        select new FigureSeen(
            use?.Value("href") ?? "",
            string.Join(
                ' ',
                new[] { drawing.Value("viewBox") }.Concat(Frame.Select(name => use?.Value(name))).Select(v => v ?? "")
            ),
            use?.Value("transform") ?? "",
            string.Join(' ', texts.Select(t => $"{Spacing.Collapse(t.TextContent)} {t.Value("x")} {t.Value("y")}")),
            drawing.Value(PageData.Letters) ?? "",
            drawing.Children.All(c => c.LocalName is "title" or "desc" or "use" or "text")
                && drawing.Children.Count(c => c.LocalName == "use") == 1,
            at(drawing)
        );

    public static IEnumerable<DrawingSeen> Drawn(PageMarkup page, Func<PageElement?, Location> at) =>
        page.Named("symbol")
            .Select(symbol => new DrawingSeen(
                symbol.Value("id") ?? "",
                symbol.Value("viewBox") ?? "",
                string.Concat(symbol.Children.Select(Written)),
                symbol
                    .Within()
                    .Where(e => e.Has(FigureSvg.Part))
                    .Select(e => (e.Value(FigureSvg.Part) ?? "", e.Value("d") ?? "", e.Value(FigureSvg.Near) ?? ""))
                    .ToSeries(),
                at(symbol)
            ));

    private static readonly string[] Frame = ["x", "y", "width", "height"];

    /// <summary>As Gradus writes it: what has nothing in it closes itself.</summary>
    private static string Written(PageElement element)
    {
        var text = new StringBuilder("<").Append(element.LocalName);
        foreach (var attribute in element.Attributes)
            text.Append(' ').Append(attribute.Name).Append("=\"").Append(attribute.Value).Append('"');
        var inside = string.Concat(element.Children.Select(Written));
        return inside.Length == 0
            ? text.Append("/>").ToString()
            : text.Append('>').Append(inside).Append("</").Append(element.LocalName).Append('>').ToString();
    }
}
