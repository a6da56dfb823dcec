using System.Text.RegularExpressions;
using Gradus.Figures;

namespace Gradus.Tests.Figures;

/// <summary>A body as its drawing tells it, in the space that it was worked out in, and what is wrong with it.</summary>
internal sealed partial class DrawnBody
{
    /// <summary>What rounding to a tenth may add to a place, in heights of the body: half a tenth on each of three axes, along
    /// the foot with what its direction is off, of a body of 200.</summary>
    private const double Rounding = 0.0012;

    private readonly FigureReading reading;
    private readonly Posed posed;

    private DrawnBody(FigureReading reading, Posed posed) => (this.reading, this.posed) = (reading, posed);

    [GeneratedRegex(
        """<path data-part="([^"]*)" data-near="([^"]*)"(?: fill="currentColor")? stroke-width="[^"]*" d="([^"]*)"/>""",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex PartPath();

    /// <param name="posed">What was to be drawn.</param>
    /// <param name="shapes">The inside of the <c>svg</c>.</param>
    /// <param name="worst">Filled with the largest miss of each kind, among the misses that are none.</param>
    public static IEnumerable<string> Faults(Posed posed, string shapes, Worst? worst = null)
    {
        var paths = PartPath().Matches(shapes).Select(m => (m.Groups[1].Value, m.Groups[3].Value, m.Groups[2].Value));
        if (FigureReading.Of(paths) is not { } reading)
            return ["It cannot be read."];
        var drawn = new DrawnBody(reading, posed);
        return [.. drawn.OfLengths(worst), .. drawn.OfAngles(worst), .. drawn.OfContacts(worst), .. drawn.OfFloor(worst)];
    }

    private IEnumerable<string> OfLengths(Worst? worst)
    {
        foreach (var (segment, length, published) in reading.Lengths())
            if (worst.Exceeds("length", Math.Abs(length - published), 0.0011))
                yield return $"length of {segment}: {length:0.0000}";
    }

    private IEnumerable<string> OfAngles(Worst? worst)
    {
        if (reading.HasSidesSwapped)
            yield return "sides swapped";
        foreach (var (of, degrees) in posed.Pose.Angles)
            if (reading.Angle(of, posed.Angles) is not { } told)
                worst?.Untold(of.Angle);
            else if (worst.Exceeds("angle", Math.Abs(told - degrees), 1))
                yield return $"angle {of.Angle} {of.Side}: {told:0.0} for {degrees}";
        if (posed.Pose.Lean is { } lean)
        {
            var trunk = In(reading.Places("spine")[3]) - In(reading.Places("spine")[0]);
            var told = double.RadiansToDegrees(Math.Atan2(trunk.X, trunk.Z));
            if (worst.Exceeds("lean", Math.Abs(told - lean), 1.2))
                yield return $"lean: {told:0.0} for {lean}";
        }
    }

    private IEnumerable<string> OfContacts(Worst? worst)
    {
        foreach (var contact in posed.Pose.Contacts.OfType<Contact.On>())
        foreach (var (at, radius) in Resting(contact.Part))
            if (worst.Exceeds("contact", Math.Abs(From(contact.Surface, at, contact.Part.Side) - radius - contact.Off), Most))
                yield return $"contact of {contact.Part} on {contact.Surface}";
    }

    private IEnumerable<string> OfFloor(Worst? worst)
    {
        foreach (var side in Enum.GetValues<BodySide>())
        foreach (var part in new[] { BodyPart.Foot, BodyPart.Ball, BodyPart.Knee, BodyPart.Hand, BodyPart.Elbow, BodyPart.Head })
        foreach (var (at, radius) in Resting(new(part, side)))
            if (worst.Exceeds("below the floor", radius - at.Z, Most))
                yield return $"{part} below the floor";
    }

    private static double Most => 0.005 + Rounding;

    /// <summary>X ahead, Y to the side that does not work, Z up from the floor.</summary>
    private Spot In(Spot drawn) =>
        posed.Pose switch
        {
            { View: View.Above } => drawn,
            { View: View.Front, Base.IsSideLying: false } => new(drawn.Z, drawn.X, drawn.Y),
            _ => new(drawn.X, -drawn.Z, drawn.Y),
        };

    private double From(Surface surface, Spot at, BodySide side) =>
        surface switch
        {
            Surface.Floor => at.Z,
            // A step of 15 cm, a chair of 40 and a table of 72 for somebody of 170 cm, and a bar out of reach; common practice,
            // no source.
            Surface.Step => at.Z - 0.09,
            Surface.Chair => at.Z - 0.238,
            Surface.Table => at.Z - 0.425,
            Surface.Bar => at.Z - 1.25,
            Surface.Wall => posed.Walls.Ahead - at.X,
            Surface.BackWall => at.X - posed.Walls.Behind,
            Surface.SideWall => posed.Walls.Beside - (side == BodySide.Other ? at.Y : -at.Y),
        };

    /// <summary>Where the part lies on what it rests on, from what is drawn of it, and how thick it is there.</summary>
    private (Spot At, double Radius)[] Resting(SidedPart part)
    {
        Spot Place(string name, int index) =>
            In(reading.Places((part.Side == BodySide.Working ? "working-" : "other-") + name)[index]);
        Spot Spine(int index) => In(reading.Places("spine")[index]);
        var (ankle, heel, ball, toes) = (Place("foot", 0), Place("foot", 1), Place("foot", 2), Place("foot", 3));
        var along = (ball - heel).Unit;
        var up = ankle - heel - (along * (ankle - heel).Dot(along));
        // The line along the sole lies as high above it as half of what is drawn is thick: 4 of 200.
        var sole = up.Unit * 0.02;
        var (heelEnd, ballEnd, toeEnd) = (heel - (along * 0.012) - sole, ball - sole, toes - sole);
        var wrist = Place("hand", 0);
        var fingers = wrist + ((Place("hand", 1) - wrist) * (1 / 0.8));
        var chin = In(reading.Places("neck")[1]);
        var head = chin + ((In(reading.Places("head")[1]) - chin).Unit * 0.065);
        return part.Part switch
        {
            BodyPart.Head => [(head, BodyParts.HeadRadius)],
            BodyPart.Chest => [(Spine(2), BodyParts.TrunkRadius), (Spine(3), BodyParts.TrunkRadius)],
            BodyPart.Back => [.. new[] { 0, 2, 3 }.Select(i => (Spine(i), BodyParts.TrunkRadius))],
            BodyPart.Belly => [(Spine(0), BodyParts.TrunkRadius), (Spine(1), BodyParts.TrunkRadius)],
            BodyPart.Seat => [(Spine(0), BodyParts.SeatRadius)],
            BodyPart.Flank => [(Place("thigh", 0), BodyParts.HipRadius), (Place("upper-arm", 0), BodyParts.ShoulderRadius)],
            BodyPart.Shoulder => [(Place("upper-arm", 0), BodyParts.ShoulderRadius)],
            BodyPart.Elbow => [(Place("forearm", 0), BodyParts.ElbowRadius)],
            BodyPart.Forearm => [(Place("forearm", 0), BodyParts.ElbowRadius), (wrist, BodyParts.WristRadius)],
            BodyPart.Hand => [(wrist, BodyParts.WristRadius), (fingers, BodyParts.FingerRadius)],
            BodyPart.Hip => [(Place("thigh", 0), BodyParts.HipRadius)],
            BodyPart.Thigh => [(Place("thigh", 0).Towards(Place("thigh", 1), 0.5), BodyParts.HipRadius)],
            BodyPart.Knee => [(Place("shank", 0), BodyParts.KneeRadius)],
            BodyPart.Foot => [(heelEnd, 0), (ballEnd, 0)],
            BodyPart.Heel => [(heelEnd, 0)],
            BodyPart.Ball => [(ballEnd, 0), (toeEnd, 0)],
            BodyPart.Instep => [(ankle, BodyParts.InstepRadius), (toeEnd, BodyParts.FingerRadius)],
        };
    }
}

/// <summary>The largest miss of each kind.</summary>
internal sealed class Worst
{
    private readonly SortedDictionary<string, double> most = new(StringComparer.Ordinal);
    private readonly SortedDictionary<JointAngle, int> untold = [];

    public int Told { get; set; }

    public void Note(string kind, double miss)
    {
        Told++;
        most[kind] = Math.Max(most.GetValueOrDefault(kind), miss);
    }

    public void Untold(JointAngle angle) => untold[angle] = untold.GetValueOrDefault(angle) + 1;

    public override string ToString() =>
        string.Join(", ", most.Select(m => FormattableString.Invariant($"worst {m.Key} {m.Value:0.00000}")))
        + $"; of {Told}; not told: {string.Join(", ", untold.Select(u => $"{u.Key} {u.Value}"))}";
}

internal static class WorstNotes
{
    /// <summary>Whether it is more than may be; noted where somebody keeps the worst.</summary>
    public static bool Exceeds(this Worst? worst, string kind, double miss, double most)
    {
        worst?.Note(kind, miss);
        return !(miss <= most);
    }
}
