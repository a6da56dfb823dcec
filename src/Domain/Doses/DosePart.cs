namespace Gradus.Domain;

/// <summary>A piece of one set: an action, or a bracketed group of actions done several times over.</summary>
public abstract record DosePart
{
    private static readonly Count Once = new(1);

    private DosePart() { }

    /// <summary>How often the actions are done over; 1 for a single action, whose own count is another matter.</summary>
    public abstract Count Times { get; }

    public abstract Series<DoseAction> Actions { get; }

    internal abstract DosePart At(Func<Count, int> pick);

    public sealed record Single(DoseAction Action) : DosePart
    {
        public override Count Times => Once;

        public override Series<DoseAction> Actions => [Action];

        internal override DosePart At(Func<Count, int> pick) => new Single(Action.At(pick));
    }

    public sealed record Group : DosePart
    {
        /// <param name="times">Rounds of the group, 1 to 100, with nothing between them.</param>
        /// <param name="actions">At least one.</param>
        public Group(Count times, Series<DoseAction> actions)
        {
            ArgumentOutOfRangeException.ThrowIfZero(actions.Count);
            Times = DoseBounds.Checked(times, DoseBounds.Counts, nameof(times));
            Actions = actions;
        }

        public override Count Times { get; }

        public override Series<DoseAction> Actions { get; }

        internal override DosePart At(Func<Count, int> pick) =>
            new Group(new(pick(Times)), Actions.Select(a => a.At(pick)).ToSeries());

        public void Deconstruct(out Count times, out Series<DoseAction> actions) => (times, actions) = (Times, Actions);
    }
}
