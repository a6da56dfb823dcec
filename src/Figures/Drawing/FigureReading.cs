using System.Globalization;
using System.Text.RegularExpressions;

namespace Gradus.Figures;

/// <summary>A drawn body read back: joint places, lengths and angles from the paths of its SVG and from nothing else, so that a
/// fault of whoever worked it out or drew it is seen.</summary>
public sealed partial class FigureReading
{
    /// <summary>Where a limb lies so near to the axis of a joint, an angle about that axis cannot be told to a degree from
    /// coordinates that are rounded to a tenth.</summary>
    private const double TooNear = 0.45;

    /// <summary>Likewise of what is as short as a hand.</summary>
    private const double MuchTooNear = 0.75;

    /// <summary>A hand is drawn to here, and the line along the sole begins so far before the heel's end.</summary>
    private const double HandShown = 0.8,
        HeelInside = 0.012;

    private readonly Dictionary<string, Spot[]> places;

    private FigureReading(Dictionary<string, Spot[]> places) => this.places = places;

    /// <summary>Parts that must be there, and how many places each has.</summary>
    private static readonly (string Part, int Places)[] Parts =
    [
        ("spine", 4),
        ("neck", 2),
        ("head", 2),
        .. new[] { "working", "other" }.SelectMany(side =>
            new[]
            {
                (side + "-thigh", 2),
                (side + "-shank", 2),
                (side + "-foot", 4),
                (side + "-upper-arm", 2),
                (side + "-forearm", 2),
                (side + "-hand", 2),
            }
        ),
    ];

    [GeneratedRegex("-?[0-9]+(?:[.][0-9]+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    /// <param name="shapes">Of each path that is a part of the body: <c>data-part</c>, <c>d</c> and <c>data-near</c>.</param>
    /// <returns>Null where a part is missing, is there twice, or cannot be read.</returns>
    public static FigureReading? Of(IEnumerable<(string Part, string Path, string Near)> shapes)
    {
        var places = new Dictionary<string, Spot[]>(StringComparer.Ordinal);
        foreach (var (part, path, near) in shapes)
        {
            var (drawn, depths) = (Numbers(path), Numbers(near));
            if (drawn.Length != 2 * depths.Length)
                return null;
            var own = depths.Select((depth, i) => new Spot(drawn[2 * i], -drawn[(2 * i) + 1], depth) * (1 / Camera.Scale));
            if (!places.TryAdd(part, [.. own]))
                return null;
        }

        return Parts.All(p => places.TryGetValue(p.Part, out var own) && own.Length == p.Places) ? new(places) : null;
    }

    /// <summary>The places along a part, in heights of the body: X to the right, Y up and Z towards whoever looks.</summary>
    /// <param name="part">As <c>data-part</c> has it.</param>
    public IReadOnlyList<Spot> Places(string part) => places[part];

    /// <summary>From the working side to the other, at the hips.</summary>
    private Spot HipLine => places["other-thigh"][0] - places["working-thigh"][0];

    private Spot ShoulderLine => places["other-upper-arm"][0] - places["working-upper-arm"][0];

    private Frame Pelvis => FrameOf(HipLine, places["spine"][1] - places["spine"][0]);

    private Frame Chest => FrameOf(ShoulderLine, places["spine"][3] - places["spine"][2]);

    /// <summary>How long each segment is, beside how long it should be, in heights of the body.</summary>
    public IEnumerable<(string Segment, double Drawn, double Published)> Lengths()
    {
        yield return ("hip width", HipLine.Length, Proportions.HipWidth);
        yield return ("shoulder width", ShoulderLine.Length, Proportions.ShoulderWidth);
        for (var i = 0; i < 3; i++)
            yield return ("spine", (places["spine"][i + 1] - places["spine"][i]).Length, Proportions.Trunk / 3);
        yield return ("neck", (places["neck"][1] - places["neck"][0]).Length, Proportions.Neck);
        foreach (var side in new[] { "working", "other" })
        {
            yield return (side + " thigh", Length(side + "-thigh"), Proportions.Thigh);
            yield return (side + " shank", Length(side + "-shank"), Proportions.Shank);
            yield return (side + " upper arm", Length(side + "-upper-arm"), Proportions.UpperArm);
            yield return (side + " forearm", Length(side + "-forearm"), Proportions.Forearm);
            yield return (side + " hand", Length(side + "-hand") / HandShown, Proportions.Hand);
            var foot = places[side + "-foot"];
            var sole = Proportions.HeelBehind + Proportions.BallAhead - HeelInside;
            yield return (side + " foot", (foot[2] - foot[1]).Length, sole);
            yield return (side + " toes", (foot[3] - foot[2]).Length, Proportions.Toes);
        }
    }

    /// <summary>Whether what is called working is drawn where the other should be: then the feet look behind the body.</summary>
    public bool HasSidesSwapped =>
        Enum.GetValues<BodySide>()
            .All(side => Leg(side, new()) is var leg && Math.Abs(Math.IEEERemainder(leg.Rotation, 360)) > 90);

    /// <summary>In degrees, with the sign of <see cref="JointAngle"/>.</summary>
    /// <param name="expected">What the drawing should show: of two ways to name one place of a limb, (flexion, abduction,
    /// rotation) and (180 + flexion, 180 - abduction, 180 + rotation), the nearer is taken, and an elbow or a wrist takes its
    /// sign from it.</param>
    /// <returns>Null where it cannot be told to a degree: of the neck's rotation and the toes never; of a rotation where the next
    /// joint is straight; of a flexion where the limb points out to the side.</returns>
    public double? Angle(SidedAngle angle, JointAngles expected)
    {
        var (side, near) = (angle.Side, expected[angle]);
        return angle.Angle switch
        {
            JointAngle.TrunkFlexion => Trunk().Flexion,
            JointAngle.TrunkSideBending => Trunk().Bending,
            JointAngle.TrunkRotation => Trunk().Rotation,
            JointAngle.NeckFlexion => NeckFlexion(),
            JointAngle.NeckRotation or JointAngle.ToeExtension => null,
            JointAngle.ShoulderFlexion => Arm(side, expected) is { IsOut: false } arm ? Nearest(arm.Flexion, near) : null,
            JointAngle.ShoulderAbduction => Arm(side, expected).Abduction,
            JointAngle.ShoulderRotation => Arm(side, expected) is { IsBent: true } arm ? Nearest(arm.Rotation, near) : null,
            JointAngle.ElbowFlexion => Arm(side, expected).Hinge,
            JointAngle.ForearmPronation => Wrist(side, expected).Pronation is { } told ? Nearest(told, near) : null,
            JointAngle.WristExtension => Wrist(side, expected).Extension,
            JointAngle.HipFlexion => Leg(side, expected) is { IsOut: false } leg ? Nearest(leg.Flexion, near) : null,
            JointAngle.HipAbduction => Leg(side, expected).Abduction,
            JointAngle.HipRotation => Nearest(Leg(side, expected).Rotation, near),
            JointAngle.KneeFlexion => Leg(side, expected).Hinge,
            JointAngle.AnkleDorsiflexion => FootLine(side).AngleTo(Along(side, "shank")) - 90,
        };
    }

    /// <summary>Half of what the trunk does is done at each of its two places: the half of the turn between pelvis and
    /// chest.</summary>
    private (double Flexion, double Bending, double Rotation) Trunk()
    {
        var (pelvis, chest) = (Pelvis, Chest);
        var turn = new Frame(pelvis.In(chest.Ahead), pelvis.In(chest.Aside), pelvis.In(chest.Up));
        var axis = new Spot(turn.Aside.Z - turn.Up.Y, turn.Up.X - turn.Ahead.Z, turn.Ahead.Y - turn.Aside.X);
        var half = Math.Atan2(axis.Length, turn.Ahead.X + turn.Aside.Y + turn.Up.Z - 1) / 2;
        axis = axis.Length < 1e-12 ? new(0, 0, 1) : axis.Unit;
        var (ahead, up) = (Turned(new(1, 0, 0), axis, half), Turned(new(0, 0, 1), axis, half));
        var (flexion, bending) = (Math.Atan2(up.X, up.Z), Math.Atan2(-up.Y, Math.Sqrt((up.X * up.X) + (up.Z * up.Z))));
        var bent = Frame.Upright.Bowed(flexion).Rolled(bending);
        var rotation = Math.Atan2(-ahead.Dot(bent.Aside), ahead.Dot(bent.Ahead));
        return (Degrees(2 * flexion), Degrees(2 * bending), Degrees(2 * rotation));
    }

    private double NeckFlexion()
    {
        var inside = Chest.In(places["head"][1] - places["spine"][3]);
        return Degrees(Math.Atan2(inside.X, inside.Z));
    }

    private ReadLimb Leg(BodySide side, JointAngles expected)
    {
        var (thigh, shank, foot) = (Along(side, "thigh"), Along(side, "shank"), FootLine(side));
        // The foot tells in front of what the shank is: a knee that bends takes it behind.
        var across = foot - (shank * foot.Dot(shank));
        var knee = thigh.AngleTo(shank) * (thigh.Dot(across) >= 0 ? 1 : -1);
        var ankle = foot.AngleTo(shank) - 90;
        var (byShank, byFoot) = (-Sin(knee), Cos(knee - ankle));
        var (line, share) = Math.Abs(byShank) > Math.Abs(byFoot) ? (shank, byShank) : (foot, byFoot);
        return Limb(Pelvis.In(thigh), Pelvis.In(line) * (1 / share), knee, expected[new(JointAngle.HipAbduction, side)], side);
    }

    private ReadLimb Arm(BodySide side, JointAngles expected)
    {
        var (upper, lower) = (Along(side, "upper-arm"), Along(side, "forearm"));
        var sign = expected[new(JointAngle.ElbowFlexion, side)] < 0 ? -1 : 1;
        var elbow = upper.AngleTo(lower) * sign;
        return Limb(Chest.In(upper), Chest.In(lower) * sign, elbow, expected[new(JointAngle.ShoulderAbduction, side)], side);
    }

    /// <param name="limb">Which way it points, in the frame that its joint is of; of length 1.</param>
    /// <param name="front">Some way that lies, across the limb, to its front.</param>
    private static ReadLimb Limb(Spot limb, Spot front, double hinge, double expectedAbduction, BodySide side)
    {
        var sign = Skeleton.Sign(side);
        var out1 = Math.Sqrt((limb.X * limb.X) + (limb.Z * limb.Z));
        var (flexion, abduction) = (Math.Atan2(limb.X, -limb.Z), Math.Atan2(sign * limb.Y, out1));
        if (Math.Abs(Degrees(Math.PI - abduction) - expectedAbduction) < Math.Abs(Degrees(abduction) - expectedAbduction))
            (flexion, abduction) = (flexion + Math.PI, Math.PI - abduction);
        var unturned = Frame.Upright.Bowed(-flexion).Rolled(sign * abduction);
        var rotation = -sign * Math.Atan2(front.Dot(unturned.Aside), front.Dot(unturned.Ahead));
        return new(Degrees(flexion), Degrees(abduction), Degrees(rotation), hinge, out1 < TooNear);
    }

    private (double Extension, double? Pronation) Wrist(BodySide side, JointAngles expected)
    {
        var (upper, lower, hand) = (Along(side, "upper-arm"), Along(side, "forearm"), Along(side, "hand"));
        var bent = lower.AngleTo(hand) * (expected[new(JointAngle.WristExtension, side)] < 0 ? -1 : 1);
        var elbow = Arm(side, expected);
        if (!elbow.IsBent || Math.Abs(Sin(bent)) < MuchTooNear)
            return (bent, null);
        // The elbow's axis, to the other side, and what is ahead of the forearm across it.
        var aside = Cross(lower, upper).Unit * Math.Sign(elbow.Hinge);
        var ahead = Cross(aside, lower * -1);
        var across = (hand - (lower * hand.Dot(lower))) * Math.Sign(bent);
        var sign = Skeleton.Sign(side);
        return (bent, Degrees(Math.Atan2(across.Dot(ahead), sign * across.Dot(aside))));
    }

    private Spot FootLine(BodySide side)
    {
        var foot = places[Named(side, "foot")];
        return (foot[2] - foot[1]).Unit;
    }

    private Spot Along(BodySide side, string part)
    {
        var own = places[Named(side, part)];
        return (own[1] - own[0]).Unit;
    }

    private double Length(string part) => (places[part][1] - places[part][0]).Length;

    private static string Named(BodySide side, string part) => (side == BodySide.Working ? "working-" : "other-") + part;

    private static Frame FrameOf(Spot aside, Spot up)
    {
        var (level, upright) = (aside.Unit, up.Unit);
        // Both are rounded; the longer of them, from side to side, is the truer.
        upright = (upright - (level * upright.Dot(level))).Unit;
        return new(Cross(level, upright), level, upright);
    }

    private static Spot Cross(Spot a, Spot b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    /// <summary>Turned about an axis (Rodrigues).</summary>
    private static Spot Turned(Spot spot, Spot axis, double by)
    {
        var (sin, cos) = Math.SinCos(by);
        return (spot * cos) + (Cross(axis, spot) * sin) + (axis * (axis.Dot(spot) * (1 - cos)));
    }

    /// <summary>The same direction, by whole turns the nearest.</summary>
    private static double Nearest(double degrees, double expected) => expected + Math.IEEERemainder(degrees - expected, 360);

    private static double Degrees(double radians) => double.RadiansToDegrees(radians);

    private static double Sin(double degrees) => Math.Sin(double.DegreesToRadians(degrees));

    private static double Cos(double degrees) => Math.Cos(double.DegreesToRadians(degrees));

    private static double[] Numbers(string text) =>
        [.. Number().Matches(text).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];

    /// <param name="IsOut">Whether it points out to the side, where its flexion cannot be told.</param>
    private sealed record ReadLimb(double Flexion, double Abduction, double Rotation, double Hinge, bool IsOut)
    {
        /// <summary>Whether the hinge is bent enough to tell the rotation of the limb above it.</summary>
        public bool IsBent => Math.Abs(Sin(Hinge)) >= TooNear;
    }
}
