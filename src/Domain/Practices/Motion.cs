namespace Gradus.Domain;

/// <summary>One joint movement, known by its name.</summary>
/// <param name="IsPaired">Whether the body has a left and a right one.</param>
/// <param name="Limb">What a side of it is called: left leg, left arm, left side.</param>
public sealed record Motion(string Name, bool IsPaired, Limb Limb, MotionUnit Unit = MotionUnit.Degrees)
{
    /// <summary>The region of the body that moves, by the word that the name begins with; null where that says nothing.</summary>
    public Region? Region =>
        Name.Split(' ')[0] switch
        {
            "cervical" => Domain.Region.Find("neck"),
            "thoracic" => Domain.Region.Find("upper-back"),
            "thoracolumbar" => Domain.Region.Find("lower-back"),
            "forearm" => Domain.Region.Find("elbow"),
            "radial" or "ulnar" => Domain.Region.Find("wrist"),
            "inversion" or "eversion" => Domain.Region.Find("ankle"),
            var joint => Domain.Region.Find(joint),
        };
}

public enum Limb
{
    Leg,
    Arm,
    Trunk,
}

public enum MotionUnit
{
    Degrees,
    Centimetres,

    /// <summary>Nothing is measured.</summary>
    None,
}
