namespace Gradus.Domain;

/// <summary>One verb with its amount.</summary>
/// <param name="Times">The count written before the verb, 1 to 100; null where none is written, which is done once and counts no
/// repetition.</param>
/// <param name="Amount">hold and breathe take a span or breaths, press, pull and raise a span, move reps or a span, carry
/// metres.</param>
/// <param name="Effort">None for hold and breathe; percentages for press, pull and raise only. The steps of a ramp divide the
/// span at both its ends.</param>
public sealed record DoseAction(Count? Times, Verb Verb, Amount Amount, Effort? Effort)
{
    public Count? Times { get; } = Times is null ? null : DoseBounds.Checked(Times, DoseBounds.Counts, nameof(Times));

    public Amount Amount { get; } =
        Verb.Takes(Amount) ? Amount : throw new ArgumentException($"{Verb} does not take {Amount}.", nameof(Amount));

    public Effort? Effort { get; } =
        Verb.Takes(Effort) && (Effort is not Effort.Ramp ramp || ramp.Divides(Amount))
            ? Effort
            : throw new ArgumentException($"{Verb} {Amount} does not take {Effort}.", nameof(Effort));

    /// <summary>Whether every number is single.</summary>
    public bool IsSettled => Times is not { IsSingle: false } && Amount.Number.IsSingle && Effort is null or { IsSettled: true };

    internal DoseAction At(Func<Count, int> pick) =>
        new(
            Times is null ? null : new(pick(Times)),
            Verb,
            Amount.With(
                Effort is Effort.Ramp { Steps: var k }
                    ? new(k * pick(new(Amount.Number.Low / k, Amount.Number.High / k)))
                    : new(pick(Amount.Number))
            ),
            Effort?.Match<Effort>(
                steady => new Effort.Steady(new(pick(steady.Percent))),
                ramp => new Effort.Ramp(new(pick(ramp.First)), new(pick(ramp.Last)), ramp.Steps),
                felt => new Effort.Felt(new(pick(felt.Rating)))
            )
        );
}
