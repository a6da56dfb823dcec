namespace Gradus.Figures;

/// <summary>Where the middle of the mass is. Shares of the mass and places along each part: Winter DA, Biomechanics and Motor
/// Control of Human Movement, table 4.1 (after Dempster 1955), from memory.</summary>
public static class Balance
{
    /// <summary>How far beyond its edge a foot still carries, in heights of the body; drawn so, no source.</summary>
    private const double Margin = 0.01;

    public static Spot Middle(Skeleton body)
    {
        var sum = default(Spot);
        Add(0.497, body.Hips.Towards(body.Shoulders, 0.5));
        Add(0.081, body.Chin.Towards(body.Crown, 0.5));
        foreach (var side in Enum.GetValues<BodySide>())
        {
            var (arm, leg) = (body.ArmOf(side), body.LegOf(side));
            Add(0.028, arm.Root.Towards(arm.Middle, 0.436));
            Add(0.016, arm.Middle.Towards(arm.End, 0.430));
            Add(0.006, arm.End.Towards(arm.Tip, 0.506));
            Add(0.100, leg.Root.Towards(leg.Middle, 0.433));
            Add(0.0465, leg.Middle.Towards(leg.End, 0.433));
            Add(0.0145, leg.Heel.Towards(leg.Tip, 0.5));
        }

        return sum;

        void Add(double share, Spot at) => sum += at * share;
    }

    /// <summary>Whether it lies above what the body rests on. A wall or a bar holds too.</summary>
    internal static bool IsHeld(Posed posed)
    {
        if (StandsOn(posed.Pose) is not { } parts)
            return true;
        Spot[] places = [.. parts.SelectMany(p => BodyParts.Resting(posed.Body, p).Select(r => r.At))];
        var middle = Middle(posed.Body);
        // A foot is as wide as it is drawn: what counts is that the mass is not before, behind or beside all that rests.
        return middle.X >= places.Min(p => p.X) - Margin
            && middle.X <= places.Max(p => p.X) + Margin
            && middle.Y >= places.Min(p => p.Y) - Margin - 0.03
            && middle.Y <= places.Max(p => p.Y) + Margin + 0.03;
    }

    /// <summary>How far it lies ahead of the middle of what the body stands on, or, below 0, behind it; 0 where it is well above
    /// it.</summary>
    /// <param name="parts">What it stands on; null where something else holds it.</param>
    internal static double Falling(Skeleton body, SidedPart[]? parts)
    {
        if (parts is null)
            return 0;
        var (middle, least, most) = (Middle(body).X, double.MaxValue, double.MinValue);
        foreach (var part in parts)
        foreach (var place in BodyParts.Resting(body, part))
            (least, most) = (Math.Min(least, place.At.X), Math.Max(most, place.At.X));
        var room = (most - least) / 4;
        return Math.Max(0, middle - (most - room)) + Math.Min(0, middle - (least + room));
    }

    /// <summary>The parts that it stands on; null where something else holds it.</summary>
    internal static SidedPart[]? StandsOn(Pose pose)
    {
        var resting = pose.Contacts.OfType<Contact.On>().Where(c => c.Off == 0).ToArray();
        if (
            resting.Length == 0
            || resting.Any(c =>
                c.Part.IsOfArm || c.Surface is Surface.Wall or Surface.BackWall or Surface.SideWall or Surface.Bar
            )
            || resting.Any(c => !c.Part.IsPaired)
        )
            return null;
        return [.. resting.Select(c => c.Part)];
    }
}
