using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class FigureToldWrong : ISiteRule
{
    private const string Remedy =
        "Show each figure as the theme is given it, beside its exercise, and each drawing once on its page, to the letter.";

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var drawings = site.Pages.SelectMany(p => p.Drawings).ToArray();
        return site.Pages.SelectMany(page =>
            Page(plan, page, site.IsInOne ? drawings : [.. page.Drawings], site.IsInOne).OncePerCause(f => f.Message)
        );
    }

    private IEnumerable<Finding> Page(Plan plan, PageSeen page, DrawingSeen[] drawings, bool inOne)
    {
        var planned = Planned(plan, page.Path, inOne).ToArray();
        // A theme may do without figures; a page that shows some shows all.
        if (page.Figures.Count == 0)
            yield break;
        if (page.Figures.Count != planned.Length)
            yield return Wrong(page.At, $"The page shows {page.Figures.Count} figures, and the plan has {planned.Length} for it");
        foreach (var (seen, drawn) in page.Figures.Zip(planned))
        {
            if (Fault(seen, drawn, plan.Words) is { } fault)
                yield return Wrong(seen.At, $"In the figure '{drawn.Title}' {fault}");
            else if (drawings.FirstOrDefault(d => d.Id == drawn.Id) is not { } drawing)
                yield return Wrong(seen.At, $"The figure '{drawn.Title}' is drawn nowhere on the page");
            else if (plan.Figures.First(f => f.Id == drawn.Id) is var meant && Fault(drawing, meant) is { } other)
                yield return Wrong(drawing.At, $"In the drawing '{drawn.Title}' {other}");
        }

        Finding Wrong(Location at, string sentence) => this.Wrong(plan, at, sentence + ".", Remedy);
    }

    /// <summary>Beside the sessions, in one file, an exercise shows none.</summary>
    private static IEnumerable<Inline.Drawn> Planned(Plan plan, string path, bool inOne) =>
        plan
            .Sessions.Where(s => s.Path == path)
            .SelectMany(s => s.Uses)
            .Select(u => u.Text)
            .Concat(plan.Exercises.Where(e => e.Path == path && !inOne).Select(e => e.Text))
            .SelectMany(t => t.Pair)
            .OfType<Inline.Drawn>();

    private static string? Fault(FigureSeen seen, Inline.Drawn drawn, Words words) =>
        seen.Figure != "#" + drawn.Id ? $"another stands, '{seen.Figure}'"
        : seen.Mirrored != drawn.Mirrored ? "the sides are the wrong way round"
        : seen.Letter.Split(' ')[0] != drawn.Letter
            ? $"the side has the letter '{seen.Letter.Split(' ')[0]}', not '{drawn.Letter}'"
        : seen.Letter != $"{drawn.Letter} {drawn.LetterX} {drawn.LetterY}".Trim() ? "the letter stands elsewhere"
        : seen.Letters != (drawn.Letter.Length == 0 ? "" : $"{words.Say("figure-left")} {words.Say("figure-right")}")
            ? "a script would put in other letters"
        : seen.Paper != $"{drawn.Paper} {drawn.Paper}" ? "another part of it is seen"
        : seen.IsPlain ? null
        : "something is drawn beside it";

    private static string? Fault(DrawingSeen seen, PlannedFigure planned) =>
        seen.Shapes == FigureMarkup.Of(planned) && seen.Paper == planned.Paper ? null
        : Turned(seen, planned) is { } turned ? turned
        : "something is drawn otherwise than the pose says";

    /// <summary>The part of the body that lies most away from its place, by its angle in space.</summary>
    private static string? Turned(DrawingSeen seen, PlannedFigure planned)
    {
        var meant = FigureMarkup.PartsOf(planned).ToDictionary(p => p.Part, StringComparer.Ordinal);
        var worst = seen
            .Parts.Where(p => meant.ContainsKey(p.Part))
            .Select(p => (p.Part, Degrees: Between(Direction(p), Direction(meant[p.Part]))))
            .MaxBy(p => p.Degrees);
        return worst.Degrees > 1
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"the {worst.Part.Replace('-', ' ')} is {worst.Degrees:0}° away from where the pose has it"
            )
            : null;
    }

    private static double[] Direction((string Part, string Path, string Near) part)
    {
        var places = part.Path.Trim('M', 'Z').Split('L').Select(Numbers).ToArray();
        var near = Numbers(part.Near);
        return places is [[var x, var y], .., [var toX, var toY]] && near.Length > 1
            ? [toX - x, toY - y, near[^1] - near[0]]
            : [0, 0, 0];
    }

    private static double[] Numbers(string text) =>
        [.. text.Split(' ').Select(n => double.TryParse(n, CultureInfo.InvariantCulture, out var number) ? number : double.NaN)];

    private static double Between(double[] a, double[] b)
    {
        var dot = a.Zip(b, (x, y) => x * y).Sum();
        var lengths = Math.Sqrt(a.Sum(x => x * x)) * Math.Sqrt(b.Sum(x => x * x));
        return lengths > 0 ? double.RadiansToDegrees(Math.Acos(Math.Clamp(dot / lengths, -1, 1))) : 180;
    }
}
