namespace Gradus.Figures;

/// <summary>How far a joint of a supple person goes, in degrees, both ends included: what a figure may be asked to show. Wider
/// than the normal values of the American Academy of Orthopaedic Surgeons (Joint Motion, 1965), which are averages; the
/// widening is common practice, no source.</summary>
public readonly record struct JointRange(double Least, double Most)
{
    public static JointRange Of(JointAngle angle) =>
        angle switch
        {
            JointAngle.TrunkFlexion => new(-50, 95),
            JointAngle.TrunkSideBending => new(-50, 50),
            JointAngle.TrunkRotation => new(-70, 70),
            JointAngle.NeckFlexion => new(-70, 60),
            JointAngle.NeckRotation => new(-85, 85),
            JointAngle.ShoulderFlexion => new(-70, 185),
            JointAngle.ShoulderAbduction => new(-60, 185),
            JointAngle.ShoulderRotation => new(-110, 100),
            JointAngle.ElbowFlexion => new(-10, 155),
            JointAngle.ForearmPronation => new(-95, 95),
            JointAngle.WristExtension => new(-90, 95),
            JointAngle.HipFlexion => new(-35, 140),
            JointAngle.HipAbduction => new(-35, 65),
            JointAngle.HipRotation => new(-70, 60),
            JointAngle.KneeFlexion => new(-10, 165),
            JointAngle.AnkleDorsiflexion => new(-65, 50),
            JointAngle.ToeExtension => new(-45, 90),
        };

    public bool Holds(double degrees) => degrees >= Least && degrees <= Most;

    /// <summary>How many degrees it is outside; 0 inside.</summary>
    public double Beyond(double degrees) => Math.Max(0, Math.Max(Least - degrees, degrees - Most));
}
