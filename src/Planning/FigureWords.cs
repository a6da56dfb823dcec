using Gradus.Domain;
using Gradus.Figures;

namespace Gradus.Planning;

/// <summary>How an exercise looks, on the client's own side: the drawing, and the same in words.</summary>
internal static class FigureWords
{
    private const string Start = "start",
        End = "end";

    /// <summary>The drawings of those exercises that have no picture of the coach's own.</summary>
    public static Series<PlannedFigure> Planned(IEnumerable<Exercise> exercises) =>
        exercises
            .Where(e => !e.Text.Pair.Any())
            .SelectMany(e => MovementOf(e) is { } movement ? Drawings(e.Id, movement.Figure) : [])
            .ToSeries();

    /// <summary>That text with start and end drawn, as far as somebody said how it looks.</summary>
    /// <param name="doses">On whose first side the figure is shown, where they have one in common.</param>
    public static ExerciseText WithFigures(ExerciseText text, Exercise exercise, IReadOnlyList<SettledDose> doses, Words words)
    {
        if (MovementOf(exercise) is not { } movement)
            return text;
        // Where the weeks begin with different sides, any letter would be wrong in some of them.
        var side = doses.Select(d => d.Sides.Begins).Distinct().ToArray() is [var same] ? same : null;
        return text with
        {
            Start = Shown(movement.Start, movement.Figure.Start, Start),
            End = movement.End is { } end && movement.Figure.End is { } drawn ? Shown(end, drawn, End) : null,
        };

        Inline.Drawn Shown(Posed posed, Drawing drawing, string moment)
        {
            var (paper, isLeft) = (movement.Figure.Bounds, side == Side.Left);
            var letter = side is { } one ? words.Say($"figure-{one.Word()}") : "";
            var x = isLeft ? paper.Left + paper.Right - drawing.Letter.X : drawing.Letter.X;
            return new(
                PageId.Figure(exercise.Id, moment),
                FigureSvg.ViewBox(paper),
                isLeft ? FigureSvg.Mirroring(paper) : "",
                letter,
                letter.Length > 0 ? FigureSvg.Tenths(x) : "",
                letter.Length > 0 ? FigureSvg.Tenths(drawing.Letter.Y + LetterDrop) : "",
                words.Say("figure-title", ("title", exercise.Title), ("moment", words.Say($"picture-{moment}"))),
                Said(posed.Pose, side, words)
            );
        }
    }

    /// <summary>Half of how tall a letter is, so that its middle stands where there is room.</summary>
    private const double LetterDrop = 6;

    private static Movement? MovementOf(Exercise exercise) =>
        exercise.Pose is { } pose ? Movement.Read(pose, exercise.Cue).Movement : null;

    private static IEnumerable<PlannedFigure> Drawings(ExerciseId id, Figure figure)
    {
        yield return Drawn(figure.Start, Start);
        if (figure.End is { } end)
            yield return Drawn(end, End);

        PlannedFigure Drawn(Drawing drawing, string moment) =>
            new(PageId.Figure(id, moment), id, FigureSvg.ViewBox(figure.Bounds), FigureSvg.Shapes(drawing));
    }

    /// <summary>"On one knee, seen from the side. Right leg: ankle dorsiflexion 25°."</summary>
    private static string Said(Pose pose, Side? side, Words words)
    {
        var seen = words.Say(
            "figure-seen-" + Kebab.Of(pose.View.ToString()),
            ("position", words.Say("position-" + Kebab.Of(pose.Base.Position.ToString())))
        );
        var angles = pose
            .Angles.GroupBy(a => (a.Of.Angle, a.Degrees))
            .Select(g => Angle(g.First(), isBoth: g.Count() > 1))
            .Where(said => said.Length > 0)
            .ToArray();
        return angles.Length == 0 ? seen : $"{seen} {words.Say("figure-angles", ("angles", string.Join("; ", angles)))}";

        string Angle(SaidAngle angle, bool isBoth)
        {
            var motion = words.SayOr("motion-" + Kebab.OfWords(SaidMotion.Of(angle)), "");
            if (motion.Length == 0)
                return "";
            var degrees = FormattableString.Invariant($"{Math.Abs(angle.Degrees)}");
            var limb = SaidMotion.IsOfLeg(angle) ? "leg" : "arm";
            return !angle.Of.IsPaired || isBoth || side is not { } working
                ? words.Say("figure-angle", ("motion", motion), ("degrees", degrees))
                : words.Say(
                    "figure-angle-on",
                    ("side", words.Say($"{(angle.Of.Side == BodySide.Working ? working : working.Other()).Word()}-{limb}")),
                    ("motion", motion),
                    ("degrees", degrees)
                );
        }
    }
}
