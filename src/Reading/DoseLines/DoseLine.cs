using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Reads a dose line. <c>dose-line.md</c> is its grammar; every line has at most one reading.</summary>
public static class DoseLine
{
    /// <summary>The dose of a line, or the first fault in it. Nothing that is in a line makes it throw.</summary>
    /// <param name="settings">What the practice counts for a breath and the like, for the limit of 4 h.</param>
    public static DoseLineResult Read(string line, DoseSettings settings)
    {
        var scanner = new DoseScanner(line);
        if (Whole(scanner, settings) is { } dose)
            return new DoseLineResult.Understood(dose);
        return new DoseLineResult.Refused(
            scanner.Fault ?? throw new InvalidOperationException("A line was refused without a fault.")
        );
    }

    private static Dose? Whole(DoseScanner scanner, DoseSettings settings)
    {
        if (scanner.IsDone)
        {
            return scanner.Refuse<Dose>(
                new(0, 0),
                "Here a dose is missing.",
                "Write what is done and how much, as in 3 x hold 30 s."
            );
        }
        if (WorkReader.Read(scanner) is not { } work)
            return null;
        if (TermReader.Read(scanner) is not { } written)
            return null;
        var dose = work with { Terms = written.Terms };
        if (dose.Terms is { Plus: not null, Side: not SideTerm.Each })
        {
            return scanner.Refuse<Dose>(
                written.Places[TermName.Plus],
                "plus gives one side more, and the sides are not worked one after the other.",
                "Write each side too, or leave out plus."
            );
        }

        foreach (var idle in TermEffect.Idle(dose).OrderBy(name => written.Places[name].Start))
            return TermFaults.Idle(scanner, dose, idle, written.Places[idle]);
        return DoseBounds.IsTooLong(dose, settings) ? TooLong(scanner, dose) : dose;
    }

    private static Dose? TooLong(DoseScanner scanner, Dose dose)
    {
        var start = scanner.Line.Length - scanner.Line.TrimStart().Length;
        return scanner.Refuse<Dose>(
            scanner.Since(start),
            $"The whole dose takes more than 4 h{(dose.IsSettled ? "" : " at its high end")}, which is the most that is "
                + "possible.",
            "Write fewer sets or shorter times."
        );
    }
}
