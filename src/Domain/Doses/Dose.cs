namespace Gradus.Domain;

/// <summary>What one exercise asks: sets of a piece of work, and the terms beside it. With ranges it is an envelope; with single
/// numbers only it is settled. <c>dose-line.md</c> fixes how it is written, and DoseLine reads it.</summary>
/// <param name="Sets">1 to 100; 1 where the line names none.</param>
/// <param name="Parts">The work of one set, in order, nothing between the parts; at least one.</param>
public sealed record Dose(Count Sets, Series<DosePart> Parts, DoseTerms Terms)
{
    public Count Sets
    {
        get;
        init => field = DoseBounds.Checked(value, DoseBounds.Counts, nameof(Sets));
    } = DoseBounds.Checked(Sets, DoseBounds.Counts, nameof(Sets));

    public Series<DosePart> Parts
    {
        get;
        init => field = AtLeastOne(value);
    } = AtLeastOne(Parts);

    /// <summary>All actions in the order they are written, those of groups too, each once.</summary>
    public IEnumerable<DoseAction> Actions => Parts.SelectMany(p => p.Actions);

    /// <summary>Whether every number is single.</summary>
    public bool IsSettled => Sets.IsSingle && Parts.All(p => p.Times.IsSingle && p.Actions.All(a => a.IsSettled));

    /// <summary>The dose of all low ends, without the terms that have nothing to act on there.</summary>
    public Dose Low() => At(count => count.Low);

    /// <summary>The dose of all high ends.</summary>
    public Dose High() => At(count => count.High);

    /// <summary>The dose with each range replaced by the number picked from it, without the terms that have nothing to act on
    /// then. The seconds of a ramp of k steps are k times the number picked from (low/k to high/k), so that k still divides
    /// them.</summary>
    public Dose At(Func<Count, int> pick) =>
        TermEffect.DropIdle(this with { Sets = new(pick(Sets)), Parts = Parts.Select(p => p.At(pick)).ToSeries() });

    /// <summary>The dose as it is done.</summary>
    /// <param name="sideOf">Which side of the body a name means.</param>
    /// <exception cref="ArgumentException">It still has ranges.</exception>
    public SettledDose Settled(Func<SideName, Side> sideOf) => new(this, sideOf);

    /// <summary>The dose as it would be done by somebody of whom nothing is known: the side that the sport names is the left
    /// one.</summary>
    /// <exception cref="ArgumentException">It still has ranges.</exception>
    public SettledDose Settled() => Settled(name => name is SideName.Body body ? body.Side : Side.Left);

    /// <summary>The canonical line.</summary>
    public override string ToString() => DosePrinter.Print(this);

    private static Series<DosePart> AtLeastOne(Series<DosePart> parts)
    {
        ArgumentOutOfRangeException.ThrowIfZero(parts.Count);
        return parts;
    }
}
