namespace Gradus.Domain;

/// <summary>How long the pieces of a dose take; what they come to is added up from the steps (<see cref="Timeline"/>) and nowhere
/// else.</summary>
internal static class DoseTime
{
    /// <summary>Between the sets: 0 where none is written.</summary>
    public static Seconds Rest(SettledDose dose) => dose.Rest ?? Seconds.Zero;

    /// <summary>Between the counted repetitions of an action: 0 where none is written.</summary>
    public static Seconds Pause(SettledDose dose) => dose.Pause ?? Seconds.Zero;

    /// <summary>One repetition of a timed action, or the whole amount of one counted in breaths, reps or metres. Metres are
    /// rounded up to whole seconds.</summary>
    public static Seconds Once(SettledAction action, SettledDose dose, DoseSettings settings) =>
        action.Unit switch
        {
            AmountUnit.Seconds => new(action.Amount),
            AmountUnit.Breaths => new(checked(action.Amount * settings.Breath.Value)),
            AmountUnit.Reps => new(checked(action.Amount * (dose.Tempo?.Seconds ?? settings.Repetition).Value)),
            AmountUnit.Metres => new((action.Amount + settings.Carry.Value - 1) / settings.Carry.Value),
        };
}
