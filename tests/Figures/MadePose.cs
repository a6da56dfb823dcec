using Gradus.Domain;
using Gradus.Figures;

namespace Gradus.Tests.Figures;

/// <summary>A pose made from the words of the grammar, by chance: near enough to what the base is usually like that a good share
/// of them can be.</summary>
/// <param name="Kinds">What it is made of: for the spread.</param>
internal sealed record MadePose(WrittenPose Written, IReadOnlyList<string> Kinds)
{
    public static MadePose Of(ulong seed)
    {
        var maker = new PoseMaker(seed);
        return new(maker.Make(), maker.Kinds);
    }
}

internal sealed class PoseMaker(ulong seed)
{
    private readonly Chance chance = new(seed);
    private readonly List<string> kinds = [];

    public IReadOnlyList<string> Kinds => kinds;

    public WrittenPose Make()
    {
        var named = chance.Of(PoseBase.All);
        kinds.Add(named.Name);
        var start = new List<string> { named.Name };
        if (named.HasFront && chance.Below(2) == 0)
            start.Add(Kind("leg", chance.Below(2) == 0 ? "front leg works" : "rear leg works"));
        for (var i = chance.Below(4); i > 0; i--)
            start.Add(Item(named));
        if (chance.Below(3) == 0)
            start.Add(Kind("view", chance.Of([.. PoseWords.Views.Keys])));
        var end = new List<string>();
        if (chance.Below(2) == 0)
        {
            end.Add(Angle(named));
            end.Add(Kind("moves", $"{Which(named, true)}{chance.Of<string>(["knee", "foot", "hip"])} moves"));
        }

        kinds.Add(end.Count > 0 ? "with end" : "start alone");
        return new(start.ToSeries(), end.ToSeries());
    }

    private string Item(PoseBase named) =>
        chance.Below(8) switch
        {
            < 4 => Angle(named),
            4 => Kind("lean", named.Bow == 0 ? chance.Of<string>(["trunk upright", "trunk leaning ahead 20"]) : Angle(named)),
            5 => Contact(named),
            6 => Kind("thing", $"{chance.Of<string>(["bottle", "bag", "weight", "stick"])} in {chance.Of(Sides)}hand"),
            _ => Kind(
                "push",
                $"{chance.Of(Sides)}{chance.Of<string>(["knee", "ball", "hand"])} pushes "
                    + chance.Of([.. PoseWords.Directions.Keys])
            ),
        };

    /// <summary>Within 25 degrees of what is usual there, on the side that is said.</summary>
    private string Angle(PoseBase named)
    {
        var motion = chance.Of([.. PoseWords.Motions.Keys]);
        var (angle, sign) = PoseWords.Motions[motion];
        var usual = PoseReader.Usual(named, BodySide.Working).GetValueOrDefault(new(angle, BodySide.Working));
        var range = JointRange.Of(angle);
        var degrees = Math.Clamp(usual + chance.Below(51) - 25, range.Least, range.Most) * sign;
        var paired = new SidedAngle(angle, BodySide.Working).IsPaired;
        var to = PoseWords.ToASide.Contains(motion) ? $" to the {chance.Of(Sides)}side" : "";
        var which = paired ? Which(named, angle >= JointAngle.HipFlexion) : "";
        return Kind("angle", FormattableString.Invariant($"{which}{motion} {Math.Abs(Math.Round(degrees))}{to}"));
    }

    private string Contact(PoseBase named)
    {
        var all = named.Position switch
        {
            Position.Standing or Position.SplitStance or Position.HalfKneeling => new[]
            {
                "hands on wall",
                "working hand on wall",
                "other hand on side wall",
                "working hand on chest",
            },
            Position.Sitting => ["forearms on table", "hands on thighs", "working hand on head", "hands on knees"],
            Position.Supine => ["feet on floor", "working foot on floor", "working hand on belly", "hands on floor"],
            Position.HandsAndKnees => ["balls on floor", "forearms on floor", "other hand 10 cm off floor"],
            _ => ["working hand on hip", "other hand on thigh", "hands on thighs"],
        };
        return Kind("contact", chance.Of(all));
    }

    private static readonly string[] Sides = ["working ", "other "];

    private string Which(PoseBase named, bool isOfLeg)
    {
        List<string> words = ["working ", "other ", "both ", ""];
        if (named.HasFront && isOfLeg)
            words.AddRange(["front ", "rear "]);
        if (named.IsSideLying)
            words.AddRange(["top ", "lower "]);
        var word = chance.Of(words);
        kinds.Add(word.Length == 0 ? "no side word" : word.Trim());
        return word;
    }

    private string Kind(string kind, string item)
    {
        kinds.Add(kind);
        return item;
    }
}
