using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Sides in the client's words.</summary>
internal static class SideWords
{
    /// <summary>"left leg", "right arm", "left side".</summary>
    public static string Of(Side side, Limb limb, Words words) => words.Say($"{side.Word()}-{Key(limb)}");

    /// <summary>"each leg, left leg first", "left leg, your rear leg"; empty where the dose has no side.</summary>
    /// <param name="role">The role that the coach called the one side by; null for left, right, two sides or none.</param>
    public static string Of(Dose dose, RoleName? role, Limb limb, Words words)
    {
        var first = Of(Use.SidesOf(dose)[0], limb, words);
        return dose.Terms.Side switch
        {
            SideTerm.Each => words.Say($"each-{Key(limb)}", ("first", first)),
            SideTerm.Alternate => words.Say($"in-turn-{Key(limb)}", ("first", first)),
            SideTerm.Both => words.Say($"both-{Key(limb)}"),
            SideTerm.On => role is null ? first : words.Say($"role-{Key(limb)}", ("side", first), ("role", role.In(words))),
            _ => "",
        };
    }

    /// <summary>What <c>{side}</c> stands for: the one side, or the one at work where there are two.</summary>
    public static string Filled(IEnumerable<Dose> doses, Limb limb, Words words)
    {
        var sides = doses.Select(d => d.Terms.Side is SideTerm.On ? Use.SidesOf(d)[0] : (Side?)null).Distinct().ToArray();
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
