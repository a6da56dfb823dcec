using static Gradus.Figures.BodyPart;
using static Gradus.Figures.JointAngle;

namespace Gradus.Figures;

/// <summary>The words of a pose: terms of the trade, each with its sign.</summary>
internal static class PoseWords
{
    /// <summary>Joint and motion, with the sign of the motion.</summary>
    public static readonly Dictionary<string, (JointAngle Angle, int Sign)> Motions = new(StringComparer.Ordinal)
    {
        ["thoracolumbar flexion"] = (TrunkFlexion, 1),
        ["thoracolumbar extension"] = (TrunkFlexion, -1),
        ["thoracolumbar side-bending"] = (TrunkSideBending, 1),
        ["thoracic rotation"] = (TrunkRotation, 1),
        ["neck flexion"] = (NeckFlexion, 1),
        ["neck extension"] = (NeckFlexion, -1),
        ["neck rotation"] = (NeckRotation, 1),
        ["shoulder flexion"] = (ShoulderFlexion, 1),
        ["shoulder extension"] = (ShoulderFlexion, -1),
        ["shoulder abduction"] = (ShoulderAbduction, 1),
        ["shoulder adduction"] = (ShoulderAbduction, -1),
        ["shoulder internal rotation"] = (ShoulderRotation, 1),
        ["shoulder external rotation"] = (ShoulderRotation, -1),
        ["elbow flexion"] = (ElbowFlexion, 1),
        ["elbow extension"] = (ElbowFlexion, -1),
        ["forearm pronation"] = (ForearmPronation, 1),
        ["forearm supination"] = (ForearmPronation, -1),
        ["wrist extension"] = (WristExtension, 1),
        ["wrist flexion"] = (WristExtension, -1),
        ["hip flexion"] = (HipFlexion, 1),
        ["hip extension"] = (HipFlexion, -1),
        ["hip abduction"] = (HipAbduction, 1),
        ["hip adduction"] = (HipAbduction, -1),
        ["hip internal rotation"] = (HipRotation, 1),
        ["hip external rotation"] = (HipRotation, -1),
        ["knee flexion"] = (KneeFlexion, 1),
        ["knee extension"] = (KneeFlexion, -1),
        ["ankle dorsiflexion"] = (AnkleDorsiflexion, 1),
        ["ankle plantarflexion"] = (AnkleDorsiflexion, -1),
        ["toe extension"] = (ToeExtension, 1),
        ["toe flexion"] = (ToeExtension, -1),
    };

    /// <summary>Motions of the trunk and neck that go to a side.</summary>
    public static readonly string[] ToASide = ["thoracolumbar side-bending", "thoracic rotation", "neck rotation"];

    public static readonly Dictionary<string, BodyPart> Parts = new(StringComparer.Ordinal)
    {
        ["head"] = Head,
        ["chest"] = Chest,
        ["back"] = Back,
        ["belly"] = Belly,
        ["seat"] = Seat,
        ["flank"] = Flank,
        ["shoulder"] = Shoulder,
        ["elbow"] = Elbow,
        ["forearm"] = Forearm,
        ["hand"] = Hand,
        ["hip"] = Hip,
        ["thigh"] = Thigh,
        ["knee"] = Knee,
        ["foot"] = Foot,
        ["heel"] = Heel,
        ["ball"] = Ball,
        ["instep"] = Instep,
    };

    public static readonly Dictionary<string, Surface> Surfaces = new(StringComparer.Ordinal)
    {
        ["floor"] = Surface.Floor,
        ["step"] = Surface.Step,
        ["chair"] = Surface.Chair,
        ["table"] = Surface.Table,
        ["wall"] = Surface.Wall,
        ["side wall"] = Surface.SideWall,
        ["wall behind"] = Surface.BackWall,
        ["bar"] = Surface.Bar,
    };

    public static readonly Dictionary<string, ThingKind> Things = new(StringComparer.Ordinal)
    {
        ["bottle"] = ThingKind.Bottle,
        ["bag"] = ThingKind.Bag,
        ["weight"] = ThingKind.Weight,
        ["backpack"] = ThingKind.Backpack,
        ["cushion"] = ThingKind.Cushion,
        ["stick"] = ThingKind.Stick,
    };

    public static readonly Dictionary<string, PushDirection> Directions = new(StringComparer.Ordinal)
    {
        ["ahead"] = PushDirection.Ahead,
        ["back"] = PushDirection.Back,
        ["up"] = PushDirection.Up,
        ["down"] = PushDirection.Down,
        ["in"] = PushDirection.In,
        ["out"] = PushDirection.Out,
    };

    public static readonly Dictionary<string, View> Views = new(StringComparer.Ordinal)
    {
        ["seen from the side"] = View.Side,
        ["seen from the front"] = View.Front,
        ["seen from above"] = View.Above,
    };

    /// <summary>Words that say which of two is meant.</summary>
    public static readonly string[] Which = ["working", "other", "both", "front", "rear", "top", "lower"];

    /// <summary>"hands" is "hand": what stands in the list is the one.</summary>
    public static string One(string word) =>
        word switch
        {
            "feet" => "foot",
            _ when word.EndsWith('s') && (Parts.ContainsKey(word[..^1]) || Things.ContainsKey(word[..^1])) => word[..^1],
            _ => word,
        };
}
