using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Sides in the client's words.</summary>
internal static class SideWords
{
    /// <summary>"left leg", "right arm", "left side".</summary>
    public static string Of(Side side, Limb limb, Words words) => words.Say($"{side.Word()}-{Key(limb)}");

    /// <summary>"each leg, left leg first", "left leg, your rear leg", "RIGHT foot in front (your rear leg in Épée fencing)";
    /// empty where the dose has no side.</summary>
    /// <param name="cue">Where the working leg is; null where nobody says.</param>
    public static string Of(WeekDose week, Limb limb, SideCue? cue, Texts texts)
    {
        var (sides, role, words) = (week.Dose.Sides, week.Role, texts.Words);
        var first = Of(sides.First, limb, words);
        return sides.Order switch
        {
            SideOrder.Each => words.Say($"each-{Key(limb)}", ("first", first)),
            SideOrder.Alternate => words.Say($"in-turn-{Key(limb)}", ("first", first)),
            SideOrder.Both => words.Say($"both-{Key(limb)}"),
            SideOrder.One when cue is { } where => Cued(sides.First, where, role, texts),
            SideOrder.One => role is null ? first : words.Say($"role-{Key(limb)}", ("side", first), ("role", texts.Of(role))),
            SideOrder.None => "",
        };
    }

    /// <summary>With the sport's name beside the role: by itself "your rear leg" would say where it stands.</summary>
    private static string Cued(Side side, SideCue cue, RoleMeant? role, Texts texts)
    {
        var words = texts.Words;
        var said = words.Say($"cue-{Kebab.Of(cue.ToString())}-{side.Word()}");
        return role is null
            ? said
            : words.Say(
                "cue-and-role",
                ("cue", said),
                ("role", words.Say("role-in-sport", ("role", texts.Shown(role)), ("sport", texts.Of(role.Sport).Name)))
            );
    }

    /// <summary>What <c>{side}</c> stands for: the one side, or the one at work where there are two.</summary>
    public static string Filled(IEnumerable<SettledDose> doses, Limb limb, Words words)
    {
        var sides = doses.Select(d => d.Sides.Order == SideOrder.One ? d.Sides.First : (Side?)null).Distinct().ToArray();
        return sides is [{ } one] ? Of(one, limb, words) : words.Say($"working-{Key(limb)}");
    }

    private static string Key(Limb limb) =>
        limb switch
        {
            Limb.Leg => "leg",
            Limb.Arm => "arm",
            _ => "trunk",
        };
}
