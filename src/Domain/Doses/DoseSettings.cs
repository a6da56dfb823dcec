namespace Gradus.Domain;

/// <summary>What a practice counts for the things a dose line leaves open.</summary>
/// <param name="Breath">One slow breath, at least 1 s. 60 / breaths a minute; the default is 6 a minute (reference-values.md,
/// Breathing).</param>
/// <param name="Switch">Between two sides where the line names no switch.</param>
/// <param name="Repetition">One repetition of <c>move</c> without a tempo, at least 1 s; the total is then about.</param>
/// <param name="Carry">How far <c>carry</c> gets in one second, at least 1 m; the total is then about.</param>
public sealed record DoseSettings(Seconds Breath, Seconds Switch, Seconds Repetition, Metres Carry)
{
    public static readonly DoseSettings Default = new(new(10), new(10), new(4), new(1));

    public Seconds Breath
    {
        get;
        init => field = AtLeastOne(value);
    } = AtLeastOne(Breath);

    public Seconds Repetition
    {
        get;
        init => field = AtLeastOne(value);
    } = AtLeastOne(Repetition);

    public Metres Carry
    {
        get;
        init => field = AtLeastOne(value);
    } = AtLeastOne(Carry);

    private static Seconds AtLeastOne(Seconds value)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value.Value, 1);
        return value;
    }

    private static Metres AtLeastOne(Metres value)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value.Value, 1);
        return value;
    }
}
