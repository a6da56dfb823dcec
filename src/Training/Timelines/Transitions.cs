using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Going from one exercise to the next.</summary>
internal static class Transitions
{
    /// <summary>The short time where position and equipment stay, the long one between the floor and standing, the middle one
    /// otherwise (dose-line.md, Arithmetic).</summary>
    public static Seconds Between(Drill from, Drill to, PracticeSettings settings)
    {
        var heights = (from.Position.HeightOf(), to.Position.HeightOf());
        if (heights is (Height.Floor, Height.Feet) or (Height.Feet, Height.Floor))
            return settings.TransitionStanding;
        var stays = from.Position == to.Position && from.Equipment.ToHashSet().SetEquals(to.Equipment);
        return stays ? settings.Transition : settings.TransitionChange;
    }
}
