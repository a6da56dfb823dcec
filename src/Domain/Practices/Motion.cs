namespace Gradus.Domain;

/// <summary>One joint movement, known by its name.</summary>
/// <param name="IsPaired">Whether the body has a left and a right one.</param>
/// <param name="Limb">What a side of it is called: left leg, left arm, left side.</param>
/// <param name="How">How it is measured; null where nobody has written it down.</param>
/// <param name="Errors">Published errors of measuring it. Where there is none, none is borrowed.</param>
/// <param name="References">Published values, each of its own set; sets are never mixed, and a mean is never a limit for a
/// person.</param>
public sealed record Motion(
    string Name,
    bool IsPaired,
    Limb Limb,
    MotionUnit Unit,
    string? How,
    Series<MeasuringError> Errors,
    Series<ReferenceValue> References
)
{
    public Motion(string name, bool isPaired, Limb limb)
        : this(name, isPaired, limb, MotionUnit.Degrees, null, [], []) { }

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

/// <param name="Value">The smallest change that is more than the error of measuring (MDC95 unless <paramref name="Of"/> says
/// otherwise), in the motion's unit.</param>
/// <param name="Of">What exactly was found: between raters, one rater, which instrument.</param>
/// <param name="Mark">How far the value is confirmed: seen, second-hand, memory, computed.</param>
public sealed record MeasuringError(decimal Value, string Of, string Source, string Mark);

/// <param name="Set">The name of the set: AAOS, AMA, 38 CFR 4.71a.</param>
/// <param name="Mark">How far the value is confirmed: seen, second-hand, memory, computed.</param>
public sealed record ReferenceValue(decimal Value, string Set, string Source, string Mark);
