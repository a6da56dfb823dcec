namespace Gradus.Domain;

/// <summary>The numbers of a dose that may grow, as places on four wheels, inner to outer: time, times, sets, effort. What each
/// place means is worked out here, and nowhere else.</summary>
internal sealed class GrowthWheels
{
    private readonly Dose envelope;
    private readonly DoseSettings settings;
    private readonly DoseAction[] actions;

    /// <param name="envelope">With its ranges.</param>
    public GrowthWheels(Dose envelope, DoseSettings settings)
    {
        (this.envelope, this.settings) = (envelope, settings);
        actions = [.. envelope.Actions];
        Times = [.. actions.Select(a => a.Times ?? new(1)), .. envelope.Parts.Select(p => p.Times)];
        Efforts = [.. actions.Select(NotchesOf)];
        Positions = actions.Max(a => HowOften(a.Amount.Number, GrowthStep.Of(a)));
    }

    /// <summary>The range of the count before each verb, in the order of the line, then of each part.</summary>
    public Count[] Times { get; }

    /// <summary>How many notches lead from the low end of each action's effort to the high end.</summary>
    public int[] Efforts { get; }

    /// <summary>The last position of the wheel of time; the first is 0.</summary>
    public int Positions { get; }

    public Count Sets => envelope.Sets;

    public static int HalfUp(decimal number) => (int)Math.Floor(number + 0.5m);

    /// <summary>The dose at a place.</summary>
    public Dose DoseAt(WheelPlaces at)
    {
        var (action, part) = (0, 0);
        return TermEffect.DropIdle(
            envelope with
            {
                Sets = new(at.Sets),
                Parts = envelope
                    .Parts.Select(p =>
                    {
                        var own = p.Actions.Select(_ => ActionAt(at, action++)).ToSeries();
                        var times = at.Times[actions.Length + part++];
                        return p is DosePart.Group ? new DosePart.Group(new(times), own) : (DosePart)new DosePart.Single(own[0]);
                    })
                    .ToSeries(),
            }
        );
    }

    public SideWork WorkAt(WheelPlaces at) => SideWork.Of(DoseAt(at).Settled(), settings);

    /// <summary>How many actions one set has in all.</summary>
    public int TimesInAll(WheelPlaces at)
    {
        var (action, all) = (0, 0);
        foreach (var (part, index) in envelope.Parts.Select((p, i) => (p, i)))
        foreach (var _ in part.Actions)
            all += at.Times[action++] * at.Times[actions.Length + index];
        return all;
    }

    private DoseAction ActionAt(WheelPlaces at, int index)
    {
        var action = actions[index];
        return new(
            action.Times is null ? null : new(at.Times[index]),
            action.Verb,
            action.Amount.With(new(AmountAt(action, at.Time))),
            action.Effort?.Match<Effort>(
                steady => new Effort.Steady(NotchAt(steady.Percent, at.Effort[index], PercentNotch)),
                ramp => new Effort.Ramp(
                    NotchAt(ramp.First, at.Effort[index], PercentNotch),
                    NotchAt(ramp.Last, at.Effort[index], PercentNotch),
                    ramp.Steps
                ),
                felt => new Effort.Felt(NotchAt(felt.Rating, at.Effort[index], 1))
            )
        );
    }

    private int AmountAt(DoseAction action, int position)
    {
        var (low, high) = (action.Amount.Number.Low, action.Amount.Number.High);
        if (position == 0 || low == high)
            return low;
        if (position == Positions)
            return high;
        var grain = action.Effort is Effort.Ramp ramp ? ramp.Steps : 1;
        return Math.Min(high, low + (grain * HalfUp((decimal)(high - low) * position / ((long)grain * Positions))));
    }

    private const int PercentNotch = 5;

    private static Count NotchAt(Count range, int notch, int step) => new(Math.Min(range.High, range.Low + (step * notch)));

    private static int NotchesOf(DoseAction action) =>
        action.Effort?.Match(
            steady => HowOften(steady.Percent, PercentNotch),
            ramp => Math.Max(HowOften(ramp.First, PercentNotch), HowOften(ramp.Last, PercentNotch)),
            felt => HowOften(felt.Rating, 1)
        )
        ?? 0;

    private static int HowOften(Count range, int step) => (range.High - range.Low + step - 1) / step;
}

/// <summary>Where the four wheels stand.</summary>
/// <param name="Times">Of each count in <see cref="GrowthWheels.Times"/>.</param>
/// <param name="Time">The position of all amounts together, from 0.</param>
/// <param name="Effort">Notches of each action above its low end.</param>
internal sealed record WheelPlaces(int Sets, int[] Times, int Time, int[] Effort)
{
    /// <summary>How many wheels have some number that is higher than at another place.</summary>
    public int HigherThan(WheelPlaces other) =>
        (Time > other.Time ? 1 : 0)
        + (IsUp(other.Times, Times) ? 1 : 0)
        + (Sets > other.Sets ? 1 : 0)
        + (IsUp(other.Effort, Effort) ? 1 : 0);

    private static bool IsUp(int[] from, int[] to)
    {
        for (var i = 0; i < from.Length; i++)
            if (to[i] > from[i])
                return true;
        return false;
    }
}
