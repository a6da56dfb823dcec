namespace Gradus.Domain;

/// <summary>The dose of a lighter week, taken from the last full week. <c>dose-line.md</c>, Lighter weeks.</summary>
/// <param name="IsLighter">Whether every measure is at most <see cref="Enough"/> per cent of the full week's; otherwise nothing
/// can be taken away.</param>
public sealed record LighterDose(SettledDose Dose, bool IsLighter)
{
    /// <summary>Per cent of the last full week; common practice, no source.</summary>
    public const int Enough = 75;

    /// <summary>The first of these that is light enough, and the last of them where none is: the share of the sets; of the counts
    /// before verbs and brackets; of the amounts. <c>plus</c> falls away, with whatever then has nothing to act on; effort,
    /// tempo, load and side stay.</summary>
    /// <param name="full">Of the last full week.</param>
    /// <param name="share">In per cent, 1 to 100.</param>
    /// <param name="steps">How much of its unit each action grows by at once; an amount does not get smaller than that, nor
    /// larger than it is.</param>
    public static LighterDose Of(SettledDose full, int share, IReadOnlyList<int> steps, DoseSettings settings)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(share, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(share, 100);
        var before = SideWork.Of(full, settings);
        var ways = new[] { FewerSets(full, share), FewerTimes(full, share), Shorter(full, share, steps) };
        foreach (var way in ways)
            if (SideWork.Of(way, settings).Since(before).IsAtMost(Enough))
                return new(way, true);
        return new(ways[^1], false);
    }

    /// <summary>A share of the sets, in per cent, and at least one; <c>plus</c> falls away.</summary>
    public static SettledDose FewerSets(SettledDose full, int share) =>
        Without(full, dose => dose with { Sets = new(Fewer(dose.Sets.Low, share)) });

    private static SettledDose FewerTimes(SettledDose full, int share) =>
        Without(full, dose =>
            dose with
            {
                Parts = dose
                    .Parts.Select(p =>
                        Changed(p, new(Fewer(p.Times.Low, share)), a =>
                            new(a.Times is { } own ? new Count(Fewer(own.Low, share)) : null, a.Verb, a.Amount, a.Effort)
                        )
                    )
                    .ToSeries(),
            }
        );

    private static SettledDose Shorter(SettledDose full, int share, IReadOnlyList<int> steps) => Without(full, dose =>
        {
            var index = 0;
            return dose with { Parts = dose.Parts.Select(p => Changed(p, p.Times, a => Shorter(a, steps[index++]))).ToSeries() };

            DoseAction Shorter(DoseAction action, int step)
            {
                var (amount, grain) = (action.Amount.Number.Low, action.Effort is Effort.Ramp ramp ? ramp.Steps : 1);
                var less = grain * GrowthWheels.HalfUp((decimal)amount * share / 100 / grain);
                return new(
                    action.Times,
                    action.Verb,
                    action.Amount.With(new(Math.Min(amount, Math.Max(step, less)))),
                    action.Effort
                );
            }
        });

    private static SettledDose Without(SettledDose full, Func<Dose, Dose> change) =>
        full.With(dose => change(dose with { Terms = dose.Terms with { Plus = null } }));

    private static DosePart Changed(DosePart part, Count times, Func<DoseAction, DoseAction> change) =>
        part is DosePart.Group
            ? new DosePart.Group(times, part.Actions.Select(change).ToSeries())
            : new DosePart.Single(change(part.Actions[0]));

    /// <summary>A share of a count, in per cent, half up, and at least one.</summary>
    public static int Fewer(int times, int share) => Math.Max(1, GrowthWheels.HalfUp((decimal)times * share / 100));
}
