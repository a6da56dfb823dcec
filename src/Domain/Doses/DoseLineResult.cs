namespace Gradus.Domain;

/// <summary>What came of reading a dose line: the dose, or the first thing that could not be understood.</summary>
public abstract record DoseLineResult
{
    private DoseLineResult() { }

    public sealed record Understood(Dose Dose) : DoseLineResult;

    public sealed record Refused(DoseFault Fault) : DoseLineResult;
}
