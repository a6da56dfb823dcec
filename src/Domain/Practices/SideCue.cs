namespace Gradus.Domain;

/// <summary>Where the working leg is, in a position in which its foot or knee stands in front of the other or behind it. Said
/// beside the side, for a side named by the sport may say the opposite: a rear leg can be the one in front.</summary>
public enum SideCue
{
    FootInFront,
    FootBehind,
    KneeDown,
}
