namespace Gradus.Domain;

/// <summary>One joint movement, known by its name.</summary>
/// <param name="IsPaired">Whether the body has a left and a right one.</param>
/// <param name="Limb">What a side of it is called: left leg, left arm, left side.</param>
public sealed record Motion(string Name, bool IsPaired, Limb Limb);

public enum Limb
{
    Leg,
    Arm,
    Trunk,
}
