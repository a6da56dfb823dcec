using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Sides in the client's words.</summary>
internal static class SideWords
{
    /// <summary>"left leg", "right arm", "left side".</summary>
    public static string Of(Side side, Limb limb, Words words) => words.Say($"{side.Word()}-{Key(limb)}");

    /// <summary>"each leg, left leg first", "left leg, your rear leg"; empty where the dose has no side.</summary>
    public static string Of(WeekDose week, Limb limb, Texts texts)
    {
        var (sides, role, words) = (week.Dose.Sides, week.Role, texts.Words);
        var first = Of(sides.First, limb, words);
        return sides.Order switch
        {
            SideOrder.Each => words.Say($"each-{Key(limb)}", ("first", first)),
            SideOrder.Alternate => words.Say($"in-turn-{Key(limb)}", ("first", first)),
            SideOrder.Both => words.Say($"both-{Key(limb)}"),
            SideOrder.One => role is null ? first : words.Say($"role-{Key(limb)}", ("side", first), ("role", texts.Of(role))),
            SideOrder.None => "",
        };
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
