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

    private static string Named(SidedPart part)
    {
        var word = PoseWords.Parts.First(p => p.Value == part.Part).Key;
        return part.IsPaired ? (part.Side == BodySide.Working ? "working " : "other ") + word : word;
    }

    private static string Named(Surface surface) => "the " + PoseWords.Surfaces.First(s => s.Value == surface).Key;
}
