namespace Gradus.Figures;

/// <summary>What cannot be, in the words of a pose.</summary>
internal static class PoseSentences
{
    public static string OutOfReach(Contact contact) =>
        contact switch
        {
            Contact.OnBody(var hand, var under) => $"the {Named(hand)} does not reach the {Named(under)}",
            Contact.On { Off: > 0 } on => $"the {Named(on.Part)} cannot be so far off {Named(on.Surface)}",
            Contact.On on => $"the {Named(on.Part)} does not reach {Named(on.Surface)}",
            _ => throw new NotSupportedException(),
        };

    public static string Through(SidedPart part, Surface surface) =>
        surface == Surface.Floor ? $"the {Named(part)} is below the floor" : $"the {Named(part)} goes through {Named(surface)}";

    /// <summary>Of an angle that nobody said, and that all the rest would take.</summary>
    public static string TooFar(SidedAngle angle, double degrees)
    {
        var sign = degrees < 0 ? -1 : 1;
        var motion = PoseWords.Motions.FirstOrDefault(m => m.Value == (angle.Angle, sign)).Key
            ?? PoseWords.Motions.First(m => m.Value.Angle == angle.Angle).Key;
        var range = JointRange.Of(angle.Angle);
        var most = Math.Abs(sign > 0 ? range.Most : range.Least);
        return FormattableString.Invariant(
            $"it takes {motion} {Math.Abs(degrees):0}, and the most that a figure shows is {most}"
        );
    }

    private static string Named(SidedPart part)
    {
        var word = PoseWords.Parts.First(p => p.Value == part.Part).Key;
        return part.IsPaired ? (part.Side == BodySide.Working ? "working " : "other ") + word : word;
    }

    private static string Named(Surface surface) => "the " + PoseWords.Surfaces.First(s => s.Value == surface).Key;
}
