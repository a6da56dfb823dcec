namespace Gradus.Domain;

/// <summary>A dose as it is done: every number single, every side one of the body. What is counted, timed and shown to a client
/// is counted from this alone.</summary>
public sealed record SettledDose
{
    internal SettledDose(Dose dose, Func<SideName, Side> sideOf)
    {
        if (!dose.IsSettled)
            throw new ArgumentException("The dose still has ranges.", nameof(dose));
        AsDose = dose with
        {
            Terms = dose.Terms with
            {
                Side = dose.Terms.Side is SideTerm.On(var one)
                    ? new SideTerm.On(new SideName.Body(sideOf(one)))
                    : dose.Terms.Side,
                Plus = dose.Terms.Plus is { } more ? new(more.Sets, new SideName.Body(sideOf(more.Side))) : null,
            },
        };
        Sides = SidesOf(AsDose.Terms);
        Parts = dose.Parts.Select(p => new SettledPart(p)).ToSeries();
    }

    /// <summary>The same as an envelope of one point.</summary>
    public Dose AsDose { get; }

    public int Sets => AsDose.Sets.Low;

    public Series<SettledPart> Parts { get; }

    /// <summary>All actions in order, each once.</summary>
    public IEnumerable<SettledAction> Actions => Parts.SelectMany(p => p.Actions);

    public WorkedSides Sides { get; }

    /// <summary>Between the sets.</summary>
    public Seconds? Rest => AsDose.Terms.Rest;

    /// <summary>Between the repetitions of a timed action.</summary>
    public Seconds? Pause => AsDose.Terms.Pause;

    /// <summary>Between the two sides, where the line says it.</summary>
    public Seconds? Switch => AsDose.Terms.Switch;

    public Tempo? Tempo => AsDose.Terms.Tempo;

    public string? Load => AsDose.Terms.Load;

    public int? Leave => AsDose.Terms.Leave;

    public bool Equals(SettledDose? other) => other is not null && AsDose == other.AsDose;

    public override int GetHashCode() => AsDose.GetHashCode();

    /// <summary>The canonical line.</summary>
    public override string ToString() => AsDose.ToString();

    /// <summary>Other numbers of the same dose, on the same sides.</summary>
    public SettledDose With(Func<Dose, Dose> change) => new(TermEffect.DropIdle(change(AsDose)), SideIn);

    private static Side SideIn(SideName name) =>
        (name as SideName.Body ?? throw new ArgumentException($"'{name}' is no side of the body.", nameof(name))).Side;

    private static WorkedSides SidesOf(DoseTerms terms) =>
        terms.Side switch
        {
            SideTerm.On(SideName.Body(var one)) => new(SideOrder.One, one, 0),
            SideTerm.Each => new(SideOrder.Each, terms.Plus is { } more ? SideIn(more.Side) : Side.Left, terms.Plus?.Sets ?? 0),
            SideTerm.Alternate => new(SideOrder.Alternate, Side.Left, 0),
            SideTerm.Both => new(SideOrder.Both, Side.Left, 0),
            _ => new(SideOrder.None, Side.Left, 0),
        };
}

/// <summary>A piece of one set.</summary>
public sealed record SettledPart
{
    internal SettledPart(DosePart part)
    {
        (Times, IsGroup) = (part.Times.Low, part is DosePart.Group);
        Actions = part.Actions.Select(a => new SettledAction(a)).ToSeries();
    }

    /// <summary>How often the actions are done over.</summary>
    public int Times { get; }

    /// <summary>Whether it stands in brackets.</summary>
    public bool IsGroup { get; }

    public Series<SettledAction> Actions { get; }
}

/// <summary>One verb with its amount.</summary>
public sealed record SettledAction
{
    internal SettledAction(DoseAction action)
    {
        (Times, Verb, Unit, Amount) = (action.Times?.Low, action.Verb, action.Amount.Unit, action.Amount.Number.Low);
        Effort = action.Effort?.Match<SettledEffort>(
            steady => new SettledEffort.Steady(steady.Percent.Low),
            ramp => new SettledEffort.Ramp(ramp.First.Low, ramp.Last.Low, ramp.Steps),
            felt => new SettledEffort.Felt(felt.Rating.Low)
        );
    }

    /// <summary>The count before the verb; null where none is written, which is done once and counts no repetition.</summary>
    public int? Times { get; }

    public Verb Verb { get; }

    /// <summary>In the unit.</summary>
    public int Amount { get; }

    public AmountUnit Unit { get; }

    public SettledEffort? Effort { get; }

    /// <summary>The amount where it is counted in that unit, otherwise null.</summary>
    public int? In(AmountUnit unit) => Unit == unit ? Amount : null;
}

/// <summary>How hard, in single numbers.</summary>
public abstract record SettledEffort
{
    private SettledEffort() { }

    /// <summary>What comes of it, by its kind: whoever asks must know them all.</summary>
    public abstract T Match<T>(Func<Steady, T> steady, Func<Ramp, T> ramp, Func<Felt, T> felt);

    /// <param name="Percent">1 to 100.</param>
    public sealed record Steady(int Percent) : SettledEffort
    {
        public override T Match<T>(Func<Steady, T> steady, Func<Ramp, T> ramp, Func<Felt, T> felt) => steady(this);
    }

    /// <summary>Equal steps from the first per cent to the last, both included.</summary>
    public sealed record Ramp(int First, int Last, int Steps) : SettledEffort
    {
        public override T Match<T>(Func<Steady, T> steady, Func<Ramp, T> ramp, Func<Felt, T> felt) => ramp(this);

        /// <param name="step">From 1.</param>
        public decimal PercentAt(int step) => First + ((decimal)(Last - First) * (step - 1) / (Steps - 1));
    }

    /// <param name="Rating">0 to 10.</param>
    public sealed record Felt(int Rating) : SettledEffort
    {
        public override T Match<T>(Func<Steady, T> steady, Func<Ramp, T> ramp, Func<Felt, T> felt) => felt(this);
    }
}
