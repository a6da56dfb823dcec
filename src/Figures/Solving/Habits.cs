namespace Gradus.Figures;

/// <summary>What a body does where nobody says anything: how an arm reaches, and which joints give way first.</summary>
internal static class Habits
{
    /// <summary>What a joint is there to bring to its place.</summary>
    public static SidedPart Reaches(SidedAngle angle) =>
        angle.Angle switch
        {
            >= JointAngle.HipFlexion => new(BodyPart.Foot, angle.Side),
            >= JointAngle.ShoulderFlexion => new(BodyPart.Hand, angle.Side),
            JointAngle.NeckFlexion or JointAngle.NeckRotation => new(BodyPart.Head, angle.Side),
            _ => new(BodyPart.Chest, angle.Side),
        };

    /// <summary>How an arm is usually held whose hand rests there, in degrees; drawn so, no source.</summary>
    public static (JointAngle Angle, double Degrees)[] Reaching(Contact contact) =>
        contact switch
        {
            Contact.OnBody { Under.Part: BodyPart.Chest or BodyPart.Belly } =>
            [
                (JointAngle.ShoulderFlexion, 35),
                (JointAngle.ShoulderRotation, 55),
                (JointAngle.ElbowFlexion, 110),
            ],
            Contact.On { Surface: Surface.Wall } =>
            [
                (JointAngle.ShoulderFlexion, 75),
                (JointAngle.ElbowFlexion, 25),
                (JointAngle.ForearmPronation, 90),
                (JointAngle.WristExtension, 70),
            ],
            _ => [],
        };

    /// <summary>How little a joint gives way to what was not said of it; drawn so, no source.</summary>
    public static double Stiffness(JointAngle angle) =>
        angle switch
        {
            JointAngle.TrunkFlexion or JointAngle.NeckFlexion => 2.5,
            JointAngle.TrunkSideBending or JointAngle.TrunkRotation or JointAngle.NeckRotation => 4,
            JointAngle.HipAbduction or JointAngle.HipRotation => 2,
            JointAngle.ShoulderAbduction or JointAngle.ShoulderRotation => 1.2,
            JointAngle.ForearmPronation or JointAngle.ToeExtension => 0.5,
            _ => 1,
        };
}
