using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What could be done instead of a dose, to take less time and stay within what the exercise allows.</summary>
public static class ShorterDoses
{
    /// <summary>The least change first: one set fewer after another; then the low ends of the work, with as many sets as before,
    /// and with fewer. Efforts, rests and sides stay as they are. None where the work is other than the exercise's, and none
    /// that is still more than it allows.</summary>
    /// <param name="settled">The dose of a week.</param>
    public static IEnumerable<SettledDose> Of(SettledDose settled, Dose envelope) =>
        All(settled, envelope).Where(shorter => IsAllowed(shorter.AsDose, envelope));

    /// <summary>By the work alone: what stands in a week's line beside it stays as it is.</summary>
    private static bool IsAllowed(Dose shorter, Dose envelope) =>
        Envelope
            .Compare(envelope with { Terms = DoseTerms.None }, shorter with { Terms = DoseTerms.None })
            .All(departure => departure.Side != DepartureSide.Hard);

    private static IEnumerable<SettledDose> All(SettledDose settled, Dose envelope)
    {
        var (most, least) = (settled.Sets, envelope.Sets.Low);
        for (var sets = most - 1; sets >= least; sets--)
            yield return With(settled, sets, settled.AsDose.Parts);
        if (LowWork(settled.AsDose, envelope) is not { } work || work.Equals(settled.AsDose.Parts))
            yield break;
        for (var sets = most; sets >= Math.Min(least, most); sets--)
            yield return With(settled, sets, work);
    }

    private static SettledDose With(SettledDose dose, int sets, Series<DosePart> parts) =>
        dose.With(d => d with { Sets = new(sets), Parts = parts });

    /// <summary>The same parts with each count and amount at the low end that the exercise gives it, where that is
    /// lower.</summary>
    private static Series<DosePart>? LowWork(Dose settled, Dose envelope)
    {
        if (settled.Parts.Count != envelope.Parts.Count)
            return null;
        var parts = settled.Parts.Zip(envelope.Parts, LowPart).ToArray();
        return parts.Any(p => p is null) ? null : parts.OfType<DosePart>().ToSeries();
    }

    private static DosePart? LowPart(DosePart part, DosePart allowed)
    {
        if (part.Actions.Count != allowed.Actions.Count)
            return null;
        var pairs = part.Actions.Zip(allowed.Actions).ToArray();
        if (pairs.Any(p => p.First.Verb != p.Second.Verb || p.First.Amount.Unit != p.Second.Amount.Unit))
            return null;
        var actions = pairs.Select(p => LowAction(p.First, p.Second)).ToArray();
        return part is DosePart.Group group
            ? new DosePart.Group(Lower(group.Times, allowed.Times), actions.ToSeries())
            : new DosePart.Single(actions[0]);
    }

    private static DoseAction LowAction(DoseAction action, DoseAction allowed)
    {
        var times = action.Times is { } own && allowed.Times is { } other ? Lower(own, other) : action.Times;
        var number = Lower(action.Amount.Number, allowed.Amount.Number);
        var amount = action.Amount.With(number);

        // Other steps than the exercise's may not divide its low end.
        return new(
            times,
            action.Verb,
            action.Effort is Effort.Ramp ramp && !ramp.Divides(amount) ? action.Amount : amount,
            action.Effort
        );
    }

    private static Count Lower(Count settled, Count allowed) => new(Math.Min(settled.Low, allowed.Low));
}
