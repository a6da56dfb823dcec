using System.Globalization;
using System.Text;

namespace Gradus.Figures;

/// <summary>Writes a drawing as the inside of an <c>svg</c>: coordinates to a tenth, the same bytes everywhere.</summary>
public static class FigureSvg
{
    /// <summary>How much wider than a limb is what sets it off from others behind it.</summary>
    private const double Halo = 3;

    public static string ViewBox(Bounds bounds) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Tenths(bounds.Left)} {Tenths(bounds.Top)} {Tenths(bounds.Width)} {Tenths(bounds.Height)}"
        );

    public static string Shapes(Drawing drawing)
    {
        var text = new StringBuilder();
        foreach (var group in drawing.Groups)
        {
            if (group[0].Tone is Tone.Far or Tone.Near or Tone.Work or Tone.Thing)
                Write(text, "halo", group.Select(s => s with { Part = "", Width = s.Width + Halo }));
            Write(text, ClassOf(group[0].Tone), group);
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, string name, IEnumerable<Shape> shapes)
    {
        text.Append(CultureInfo.InvariantCulture, $"<g class=\"figure-{name}\">");
        foreach (var shape in shapes)
        {
            text.Append("<path");
            if (shape.Part.Length > 0)
                text.Append(
                    CultureInfo.InvariantCulture,
                    $" data-part=\"{shape.Part}\" data-near=\"{string.Join(' ', shape.Points.Select(p => Tenths(p.Near)))}\""
                );
            if (shape.IsFilled)
                text.Append(" fill=\"currentColor\"");
            text.Append(CultureInfo.InvariantCulture, $" stroke-width=\"{Tenths(shape.Width)}\" d=\"{PathOf(shape)}\"/>");
        }

        text.Append("</g>");
    }

    /// <summary>Rounded half away from zero, so that what is mirrored is rounded likewise.</summary>
    internal static string Tenths(double value)
    {
        var rounded = Math.Round(value, 1, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.#", CultureInfo.InvariantCulture);
    }

    private static string PathOf(Shape shape) =>
        "M" + string.Join('L', shape.Points.Select(p => $"{Tenths(p.X)} {Tenths(p.Y)}")) + (shape.IsFilled ? "Z" : "");

    private static string ClassOf(Tone tone) =>
        tone switch
        {
            Tone.Place => "place",
            Tone.Far => "far",
            Tone.Near => "near",
            Tone.Work => "work",
            Tone.Thing => "thing",
            Tone.Feel => "feel",
            Tone.Arrow => "arrow",
        };
}
