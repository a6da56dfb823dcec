using Gradus.Figures;
using static Gradus.Figures.BodySide;
using static Gradus.Figures.JointAngle;

namespace Gradus.Tests.Figures.Body;

/// <summary>The sign of each motion, by where it takes the limb: American Academy of Orthopaedic Surgeons, Joint Motion (1965),
/// the neutral-zero method; from memory. X runs ahead, Y to the side that does not work, Z up.</summary>
public sealed class SkeletonTests
{
    private const double Thigh = 0.245,
        Near = 1e-9;

    [Fact]
    public void At_zero_the_limbs_hang_down_and_the_palms_look_at_the_body()
    {
        var body = Of([]);
        foreach (var side in Enum.GetValues<BodySide>())
        {
            var (arm, leg) = (body.ArmOf(side), body.LegOf(side));
            Is((0, 0, -1), (arm.Tip - arm.Root).Unit);
            Is((0, 0, -1), (leg.End - leg.Root).Unit);
            Is((1, 0, 0), leg.Last.Ahead);
            Is((1, 0, 0), Thumb(arm));
        }
    }

    [Fact]
    public void The_working_side_is_the_right_of_whoever_looks_ahead() =>
        Assert.True(Of([]).ArmOf(Working).Root.Y < 0 && Of([]).LegOf(Other).Root.Y > 0);

    [Theory]
    [InlineData(HipFlexion, 90, 1, 0, 0)]
    [InlineData(HipFlexion, -20, -0.3420, 0, -0.9397)]
    [InlineData(HipAbduction, 30, 0, -0.5, -0.8660)]
    [InlineData(HipAbduction, -30, 0, 0.5, -0.8660)]
    public void The_hip_takes_the_thigh_there(JointAngle angle, double degrees, double x, double y, double z)
    {
        var leg = Of([(angle, degrees)]).LegOf(Working);
        Is((x * Thigh, y * Thigh, z * Thigh), leg.Middle - leg.Root, 1e-4);
        Assert.Equal(degrees, Off(leg.Root, leg.Middle) * Math.Sign(degrees), 1e-9);
    }

    [Theory]
    [InlineData(ShoulderFlexion, 90, 1, 0, 0)]
    [InlineData(ShoulderFlexion, 180, 0, 0, 1)]
    [InlineData(ShoulderFlexion, -30, -0.5, 0, -0.8660)]
    [InlineData(ShoulderAbduction, 90, 0, -1, 0)]
    [InlineData(ShoulderAbduction, -30, 0, 0.5, -0.8660)]
    public void The_shoulder_takes_the_arm_there(JointAngle angle, double degrees, double x, double y, double z)
    {
        var arm = Of([(angle, degrees)]).ArmOf(Working);
        Is((x, y, z), (arm.Middle - arm.Root).Unit, 1e-4);
    }

    [Theory]
    [InlineData(ShoulderAbduction, 90)]
    [InlineData(HipAbduction, 40)]
    [InlineData(HipRotation, 30)]
    [InlineData(ForearmPronation, 70)]
    [InlineData(WristExtension, 60)]
    public void The_other_side_is_the_mirror_image(JointAngle angle, double degrees)
    {
        var angles = new JointAngles();
        foreach (var side in Enum.GetValues<BodySide>())
        {
            angles[new SidedAngle(angle, side)] = degrees;
            angles[new SidedAngle(KneeFlexion, side)] = 80;
            angles[new SidedAngle(ElbowFlexion, side)] = 80;
        }

        var body = new Skeleton(default, Frame.Upright, angles);
        foreach (var limb in new[] { body.ArmOf, (Func<BodySide, Limb>)body.LegOf })
            Is((limb(Working).Tip.X, -limb(Working).Tip.Y, limb(Working).Tip.Z), limb(Other).Tip);
    }

    [Fact]
    public void A_knee_that_bends_takes_the_ankle_behind()
    {
        var leg = Of([(KneeFlexion, 90)]).LegOf(Working);
        Is((-1, 0, 0), (leg.End - leg.Middle).Unit);
    }

    [Fact]
    public void An_elbow_that_bends_takes_the_wrist_ahead()
    {
        var arm = Of([(ElbowFlexion, 90)]).ArmOf(Working);
        Is((1, 0, 0), (arm.End - arm.Middle).Unit);
    }

    [Fact]
    public void Internal_rotation_of_the_hip_takes_the_foot_of_a_bent_knee_out()
    {
        var leg = Of([(HipFlexion, 90), (KneeFlexion, 90), (HipRotation, 30)]).LegOf(Working);
        Is((0, -0.5, -0.8660), (leg.End - leg.Middle).Unit, 1e-4);
    }

    [Fact]
    public void Internal_rotation_of_the_shoulder_takes_the_hand_of_a_bent_elbow_to_the_belly()
    {
        var arm = Of([(ElbowFlexion, 90), (ShoulderRotation, 90)]).ArmOf(Working);
        Is((0, 1, 0), (arm.End - arm.Middle).Unit);
    }

    [Fact]
    public void External_rotation_with_the_arm_out_raises_the_hand()
    {
        var arm = Of([(ShoulderAbduction, 90), (ElbowFlexion, 90), (ShoulderRotation, -90)]).ArmOf(Working);
        Is((0, 0, 1), (arm.End - arm.Middle).Unit);
    }

    [Fact]
    public void Pronation_turns_the_palm_back_and_the_thumb_to_the_body()
    {
        var arm = Of([(ForearmPronation, 90)]).ArmOf(Working);
        Is((0, 1, 0), Thumb(arm));
        Is((-1, 0, 0), Palm(arm));
    }

    [Fact]
    public void Extension_of_the_wrist_lifts_the_back_of_the_hand()
    {
        var arm = Of([(ElbowFlexion, 90), (ForearmPronation, 90), (WristExtension, 60)]).ArmOf(Working);
        Is((0.5, 0, 0.8660), (arm.Tip - arm.End).Unit, 1e-4);
    }

    [Theory]
    [InlineData(30, 1)]
    [InlineData(-30, -1)]
    public void Dorsiflexion_brings_the_toes_up(double degrees, int up)
    {
        var leg = Of([(AnkleDorsiflexion, degrees)]).LegOf(Working);
        Assert.Equal(up, Math.Sign(leg.Ball.Z - leg.Heel.Z));
        Assert.Equal(90 + degrees, (leg.Ball - leg.Heel).AngleTo(leg.End - leg.Middle), 1e-9);
    }

    [Fact]
    public void Extension_of_the_toes_takes_them_up()
    {
        var leg = Of([(ToeExtension, 60)]).LegOf(Working);
        Assert.True(leg.Tip.Z > leg.Ball.Z);
    }

    [Fact]
    public void Flexion_of_the_trunk_takes_the_shoulders_ahead() => Assert.True(Of([(TrunkFlexion, 40)]).Shoulders.X > 0.05);

    [Fact]
    public void Bending_and_turning_go_to_the_working_side()
    {
        Assert.True(Of([(TrunkSideBending, 30)]).Shoulders.Y < -0.03);
        Is((0.7071, -0.7071, 0), Of([(TrunkRotation, 45)]).Chest.Ahead, 1e-4);
        Is((0.5, -0.8660, 0), Of([(NeckRotation, 60)]).Neck.Ahead, 1e-4);
    }

    [Theory]
    [InlineData(TrunkFlexion, 60)]
    [InlineData(TrunkSideBending, -35)]
    public void The_trunk_bends_by_the_whole_angle(JointAngle angle, double degrees)
    {
        var body = Of([(angle, degrees)]);
        Assert.Equal(Math.Abs(degrees), body.Pelvis.Up.AngleTo(body.Chest.Up), 1e-9);
    }

    [Fact]
    public void Flexion_of_the_neck_takes_the_head_ahead() => Assert.True(Of([(NeckFlexion, 30)]).Crown.X > 0.08);

    private static Spot Thumb(Limb arm) => arm.Last.Ahead;

    /// <summary>Of the working hand.</summary>
    private static Spot Palm(Limb arm) => arm.Last.Aside;

    private static double Off(Spot from, Spot to) => (to - from).AngleTo(new(0, 0, -1));

    private static void Is((double X, double Y, double Z) expected, Spot found, double within = Near)
    {
        Assert.Equal(expected.X, found.X, within);
        Assert.Equal(expected.Y, found.Y, within);
        Assert.Equal(expected.Z, found.Z, within);
    }

    /// <summary>Upright, with these angles on the working side, or of the trunk.</summary>
    private static Skeleton Of((JointAngle Angle, double Degrees)[] said)
    {
        var angles = new JointAngles();
        foreach (var (angle, degrees) in said)
            angles[new SidedAngle(angle, Working)] = degrees;
        return new(default, Frame.Upright, angles);
    }
}
