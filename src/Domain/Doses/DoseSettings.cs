namespace Gradus.Domain;

/// <summary>What a practice counts for the things a dose line leaves open.</summary>
/// <param name="Breath">One slow breath. 60 / breaths a minute; the default is 6 a minute (reference values, section 7).</param>
/// <param name="Switch">Between two sides where the line names no switch.</param>
/// <param name="Repetition">One repetition of <c>move</c> without a tempo; the total is then about.</param>
/// <param name="Carry">One metre of <c>carry</c>; the total is then about.</param>
public sealed record DoseSettings(Seconds Breath, Seconds Switch, Seconds Repetition, Seconds Carry)
{
    public static readonly DoseSettings Default = new(new(10), new(10), new(4), new(1));
}
