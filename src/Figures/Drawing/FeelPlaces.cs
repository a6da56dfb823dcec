namespace Gradus.Figures;

/// <summary>Where an exercise is felt, on the skin of one side or of both.</summary>
/// <param name="Name">One of <see cref="FeelPlaces.Names"/>.</param>
public sealed record FeelPlace(string Name, BodySide Side);

/// <summary>Places on the body where something is felt.</summary>
public static class FeelPlaces
{
    private const double Radius = 0.038;

    private static readonly (string Name, Func<Skeleton, Limb, Limb, int, Spot> At)[] All =
    [
        ("calf", (_, _, leg, _) => leg.Middle.Towards(leg.End, 0.32) - (leg.Lower.Ahead * 0.022)),
        ("shin", (_, _, leg, _) => leg.Middle.Towards(leg.End, 0.35) + (leg.Lower.Ahead * 0.022)),
        ("ankle", (_, _, leg, _) => leg.End),
        ("foot", (_, _, leg, _) => leg.Ball),
        ("knee", (_, _, leg, _) => leg.Middle),
        ("front of the thigh", (_, _, leg, _) => leg.Root.Towards(leg.Middle, 0.5) + (leg.Upper.Ahead * 0.032)),
        ("back of the thigh", (_, _, leg, _) => leg.Root.Towards(leg.Middle, 0.55) - (leg.Upper.Ahead * 0.032)),
        ("inner thigh", (_, _, leg, sign) => leg.Root.Towards(leg.Middle, 0.4) - (leg.Upper.Aside * (sign * 0.032))),
        ("front of the hip", (_, _, leg, _) => leg.Root + (leg.Upper.Ahead * 0.045)),
        ("outer hip", (body, _, leg, sign) => leg.Root + (body.Pelvis.Aside * (sign * 0.05))),
        ("buttock", (body, _, leg, _) => leg.Root - (body.Pelvis.Ahead * 0.06)),
        ("belly", (body, _, _, _) => body.LowBack + (body.Pelvis.Ahead * 0.05)),
        ("lower back", (body, _, _, _) => body.LowBack - (body.Pelvis.Ahead * 0.05)),
        ("upper back", (body, _, _, _) => body.MidBack.Towards(body.Shoulders, 0.3) - (body.Chest.Ahead * 0.05)),
        ("flank", (body, _, _, sign) => body.MidBack + (body.Chest.Aside * (sign * 0.07))),
        ("chest", (body, _, _, sign) => body.Shoulders + body.Chest.Out(new(0.05, sign * 0.07, -0.05))),
        ("shoulder", (_, arm, _, _) => arm.Root),
        ("back of the shoulder", (body, arm, _, _) => arm.Root - (body.Chest.Ahead * 0.035)),
        ("upper arm", (_, arm, _, _) => arm.Root.Towards(arm.Middle, 0.55)),
        ("forearm", (_, arm, _, _) => arm.Middle.Towards(arm.End, 0.45)),
        ("wrist", (_, arm, _, _) => arm.End),
        ("neck", (body, _, _, _) => body.Shoulders.Towards(body.Chin, 0.5)),
    ];

    /// <summary>How many of them, from the first, are on a leg.</summary>
    private const int LegPlaces = 11;

    public static IReadOnlyList<string> Names { get; } = [.. All.Select(p => p.Name)];

    /// <summary>The limb it is on; none on the trunk.</summary>
    internal static IEnumerable<SidedPart> LimbOf(FeelPlace? feel) =>
        feel is null ? []
        : Array.FindIndex(All, p => p.Name == feel.Name) is var at && at < LegPlaces ? [new(BodyPart.Knee, feel.Side)]
        : feel.Name is "shoulder" or "back of the shoulder" or "upper arm" or "forearm" or "wrist"
            ? [new(BodyPart.Elbow, feel.Side)]
        : [];

    internal static Shape Shape(Skeleton body, FeelPlace feel, Camera camera)
    {
        var (_, at) = All.First(p => p.Name == feel.Name);
        var place = camera.See(at(body, body.ArmOf(feel.Side), body.LegOf(feel.Side), Skeleton.Sign(feel.Side)));
        return new("", Tone.Feel, [place, place with { X = place.X + 0.1 }], Radius * 2 * Camera.Scale);
    }
}
