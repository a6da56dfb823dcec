namespace Gradus.Domain;

/// <summary>What came of reading a dose line: the dose, or the first thing that could not be understood.</summary>
public abstract record DoseReading
{
    private DoseReading() { }

    public sealed record Understood(Dose Dose) : DoseReading;

    public sealed record Refused(DoseFault Fault) : DoseReading;
}
