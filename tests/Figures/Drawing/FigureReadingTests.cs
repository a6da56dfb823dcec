using System.Text.RegularExpressions;
using Gradus.Figures;

namespace Gradus.Tests.Figures.Drawing;

/// <summary>What is read back from a drawing: each angle, set by hand and drawn from all three sides.</summary>
public sealed class FigureReadingTests
{
    private static readonly JointAngle[] Hinges =
    [
        JointAngle.TrunkFlexion,
        JointAngle.TrunkSideBending,
        JointAngle.TrunkRotation,
        JointAngle.NeckFlexion,
        JointAngle.ShoulderFlexion,
        JointAngle.ShoulderAbduction,
        JointAngle.ShoulderRotation,
        JointAngle.ElbowFlexion,
        JointAngle.ForearmPronation,
        JointAngle.WristExtension,
        JointAngle.HipFlexion,
        JointAngle.HipAbduction,
        JointAngle.HipRotation,
        JointAngle.KneeFlexion,
        JointAngle.AnkleDorsiflexion,
    ];

    public static MatrixTheoryData<JointAngle, View> Cases => new(Hinges, Enum.GetValues<View>());

    [Theory, MemberData(nameof(Cases))]
    public void An_angle_is_read_to_a_degree_from_every_side(JointAngle angle, View view)
    {
        var range = JointRange.Of(angle);
        // A shoulder's abduction beyond 90 turns the whole frame of the arm; it is read where the arm is not straight out.
        foreach (var share in new[] { 0.05, 0.3, 0.62, 0.95 })
        foreach (var side in Enum.GetValues<BodySide>())
        {
            var of = new SidedAngle(angle, side);
            if (side == BodySide.Other && !of.IsPaired)
                continue;
            var angles = Bent();
            angles[of] = Math.Round(range.Least + (share * (range.Most - range.Least)));
            if (Reading(angles, view).Angle(of, angles) is { } told)
                Assert.Equal(angles[of], told, 1.0);
            else
                Assert.Equal(JointAngle.ForearmPronation, angle);
        }
    }

    [Fact]
    public void What_cannot_be_told_is_not_told()
    {
        var straight = new JointAngles();
        var reading = Reading(straight, View.Side);
        Assert.Null(reading.Angle(new(JointAngle.NeckRotation, BodySide.Working), straight));
        Assert.Null(reading.Angle(new(JointAngle.ToeExtension, BodySide.Other), straight));
        Assert.Null(reading.Angle(new(JointAngle.ShoulderRotation, BodySide.Other), straight));
        straight[new SidedAngle(JointAngle.ShoulderAbduction, BodySide.Other)] = 90;
        Assert.Null(Reading(straight, View.Side).Angle(new(JointAngle.ShoulderFlexion, BodySide.Other), straight));
    }

    [Fact]
    public void Swapped_names_are_seen()
    {
        var shapes = Shapes(Bent(), View.Side);
        Assert.False(FigureReading.Of(shapes)?.HasSidesSwapped);
        var swapped = shapes.Select(s =>
            s.Part.StartsWith("working-", StringComparison.Ordinal) ? s with { Part = "other-" + s.Part["working-".Length..] }
            : s.Part.StartsWith("other-", StringComparison.Ordinal) ? s with { Part = "working-" + s.Part["other-".Length..] }
            : s
        );
        Assert.True(FigureReading.Of(swapped)?.HasSidesSwapped);
    }

    [Fact]
    public void A_drawing_that_lacks_a_part_or_has_it_twice_is_not_read()
    {
        var shapes = Shapes(Bent(), View.Front);
        Assert.NotNull(FigureReading.Of(shapes));
        Assert.Null(FigureReading.Of(shapes.Skip(1)));
        Assert.Null(FigureReading.Of(shapes.Append(shapes[0])));
        Assert.Null(FigureReading.Of(shapes.Select(s => s with { Near = "" })));
        Assert.Null(FigureReading.Of([("spine", "M", "NaN")]));
    }

    /// <summary>Each joint somewhat bent, so that the next one tells of its rotation.</summary>
    private static JointAngles Bent()
    {
        var angles = new JointAngles();
        foreach (var side in Enum.GetValues<BodySide>())
        {
            angles[new SidedAngle(JointAngle.ElbowFlexion, side)] = 70;
            angles[new SidedAngle(JointAngle.WristExtension, side)] = 60;
            angles[new SidedAngle(JointAngle.KneeFlexion, side)] = 40;
            angles[new SidedAngle(JointAngle.HipAbduction, side)] = 12;
        }

        return angles;
    }

    private static FigureReading Reading(JointAngles angles, View view)
    {
        var reading = FigureReading.Of(Shapes(angles, view));
        Assert.NotNull(reading);
        return reading;
    }

    private static (string Part, string Path, string Near)[] Shapes(JointAngles angles, View view)
    {
        var pose = new Pose(PoseBase.All[0], [], [], view);
        var root = new Standing(new(0, 0, Proportions.HipHeight), Frame.Upright.Turned(0.3));
        var posed = new Posed(pose, new(root.Hips, root.Frame, angles), angles, root, Walls.Usual, []);
        return
        [
            .. Regex
                .Matches(
                    FigureSvg.Shapes(FigureDrawer.Draw(posed, null).Start),
                    "data-part=\"([^\"]*)\" data-near=\"([^\"]*)\"[^>]* d=\"([^\"]*)\""
                )
                .Select(m => (m.Groups[1].Value, m.Groups[3].Value, m.Groups[2].Value)),
        ];
    }
}
