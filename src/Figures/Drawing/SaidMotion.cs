namespace Gradus.Figures;

/// <summary>What a said angle is called.</summary>
public static class SaidMotion
{
    /// <summary>The motion that goes that way: "hip extension" of a hip whose flexion is below 0.</summary>
    public static string Of(SaidAngle angle) =>
        PoseWords
            .Motions.First(m =>
                m.Value.Angle == angle.Of.Angle && (m.Value.Sign < 0) == (angle.Degrees < 0 && !PoseWords.ToASide.Contains(m.Key))
            )
            .Key;

    public static bool IsOfLeg(SaidAngle angle) => angle.Of.Angle >= JointAngle.HipFlexion;
}
