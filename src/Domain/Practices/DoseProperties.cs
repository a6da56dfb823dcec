namespace Gradus.Domain;

/// <summary>What a dose says about an exercise without anybody writing it down.</summary>
public static class DoseProperties
{
    public const string HardEffort = "hard-effort";
    public const string LongContraction = "long-contraction";

    /// <summary>Per cent of the hardest, inclusive. At least 70 % is where isometric training is called hard
    /// (reference-values.md, Contractions).</summary>
    private const int HardPercent = 70;

    /// <summary>The same on the scale of felt effort, inclusive; common practice, no source.</summary>
    private const int HardRating = 7;

    /// <summary>A contraction above this many seconds is long; common practice, no source. A carry is one of hand and trunk for
    /// as long as it takes: 10 s for each 10 m where no time is said.</summary>
    private const int LongSeconds = 10;

    public static IEnumerable<string> Of(Dose dose)
    {
        if (dose.Actions.Any(a => IsHard(a.Effort)))
            yield return HardEffort;
        if (dose.Actions.Any(a => (a.Verb.IsContraction() || a.Verb == Verb.Carry) && OnEnd(a, dose.Terms) > LongSeconds))
            yield return LongContraction;
    }

    /// <summary>Whether some press, pull or raise is hard.</summary>
    public static bool HasHardContraction(Dose dose) => dose.Actions.Any(a => a.Verb.IsContraction() && IsHard(a.Effort));

    /// <summary>Whether somebody is told to keep breathing where it starts: a press, pull or raise that is hard or
    /// long.</summary>
    public static bool AsksForBreath(SettledAction action) =>
        action.Verb.IsContraction() && (IsHard(action.Effort) || action.Amount > LongSeconds);

    /// <summary>Seconds: repetitions with no pause between them are one contraction.</summary>
    private static int OnEnd(DoseAction action, DoseTerms terms) =>
        action.Amount.Number.High * (terms.Pause is { Value: > 0 } ? 1 : action.Times?.High ?? 1);

    private static bool IsHard(Effort? effort) =>
        effort?.Match(
            steady => steady.Percent.High >= HardPercent,
            ramp => Math.Max(ramp.First.High, ramp.Last.High) >= HardPercent,
            felt => felt.Rating.High >= HardRating
        )
        ?? false;

    private static bool IsHard(SettledEffort? effort) =>
        effort?.Match(
            steady => steady.Percent >= HardPercent,
            ramp => Math.Max(ramp.First, ramp.Last) >= HardPercent,
            felt => felt.Rating >= HardRating
        )
        ?? false;
}
