using System.Globalization;
using System.Text;
using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>Writes a drawing as the inside of an <c>svg</c>: coordinates to a tenth, the same bytes everywhere.</summary>
public static class FigureSvg
{
    /// <summary>How much wider than a limb is what sets it off from others behind it.</summary>
    private const double Halo = 3;

    /// <summary>The attribute that names a part of the body, and the one with how near each of its places is.</summary>
    public const string Part = "data-part",
        Near = "data-near";

    public static string ViewBox(Bounds bounds) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Tenths(bounds.Left)} {Tenths(bounds.Top)} {Tenths(bounds.Width)} {Tenths(bounds.Height)}"
        );

    /// <summary>What makes the mirror image on the same piece of paper: a transform.</summary>
    public static string Mirroring(Bounds bounds) => $"matrix(-1 0 0 1 {Tenths(bounds.Left + bounds.Right)} 0)";

    public static string Shapes(Drawing drawing)
    {
        var text = new StringBuilder();
        foreach (var group in drawing.Groups)
        {
            if (group[0].Tone is Tone.Far or Tone.Near or Tone.Work or Tone.Thing)
                Write(text, "class=\"figure-halo\" color=\"var(--ground)\"", Around(group));
            Write(text, "class=\"figure-ink\" " + ColourOf(group[0].Tone), group);
        }

        return text.ToString();
    }

    /// <summary>What sets a group off from what is behind it: a limb in one line, as wide as it is at its widest.</summary>
    private static IEnumerable<Shape> Around(Series<Shape> group)
    {
        Shape? limb = null;
        foreach (var shape in group.Where(s => !s.IsInside))
        {
            if (limb is not null && !shape.IsFilled && limb.Points[^1] == shape.Points[0])
            {
                limb = limb with { Points = [.. limb.Points, .. shape.Points.Skip(1)] };
                continue;
            }

            if (limb is not null)
                yield return limb;
            limb = shape with { Part = "", Width = shape.Width + Halo };
            if (!shape.IsFilled)
                continue;
            yield return limb;
            limb = null;
        }

        if (limb is not null)
            yield return limb;
    }

    private static void Write(StringBuilder text, string colour, IEnumerable<Shape> shapes)
    {
        text.Append(CultureInfo.InvariantCulture, $"<g {colour}>");
        foreach (var shape in shapes)
        {
            text.Append("<path");
            if (shape.Part.Length > 0)
                text.Append(
                    CultureInfo.InvariantCulture,
                    $" {Part}=\"{shape.Part}\" {Near}=\"{string.Join(' ', shape.Points.Select(p => Tenths(p.Near)))}\""
                );
            if (shape.IsFilled)
                text.Append(" fill=\"currentColor\"");
            text.Append(CultureInfo.InvariantCulture, $" stroke-width=\"{Tenths(shape.Width)}\" d=\"{PathOf(shape)}\"/>");
        }

        text.Append("</g>");
    }

    /// <summary>Rounded half away from zero, so that what is mirrored is rounded likewise.</summary>
    public static string Tenths(double value)
    {
        var rounded = Math.Round(value, 1, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.#", CultureInfo.InvariantCulture);
    }

    private static string PathOf(Shape shape) =>
        "M" + string.Join('L', shape.Points.Select(p => $"{Tenths(p.X)} {Tenths(p.Y)}")) + (shape.IsFilled ? "Z" : "");

    /// <summary>A role of the page's colours, so that a theme need say nothing of figures.</summary>
    private static string ColourOf(Tone tone) =>
        tone switch
        {
            Tone.Place => "color=\"var(--line)\"",
            Tone.Far => "color=\"var(--soft)\" opacity=\".45\"",
            Tone.Near => "color=\"var(--soft)\"",
            Tone.Work => "color=\"var(--link)\"",
            Tone.Feel => "color=\"var(--feel)\" opacity=\".5\"",
            Tone.Thing or Tone.Arrow => "color=\"var(--ink)\"",
        };
}
