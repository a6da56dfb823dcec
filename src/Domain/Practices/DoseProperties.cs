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

    /// <summary>The usual one; what a practice has set is a matter of times, and not of harm.</summary>
    private const int SecondsOfBreath = 10;

    /// <param name="stage">What the exercise is for.</param>
    public static IEnumerable<string> Of(Stage stage, Dose dose)
    {
        if (dose.Actions.Any(a => IsHard(a.Effort)))
            yield return HardEffort;
        var held = HoldsForWork(stage, dose);
        if (
            dose.Actions.Any(a =>
                (a.Verb.IsContraction() || a.Verb == Verb.Carry || (held && a.Verb == Verb.Hold))
                && OnEnd(a, dose.Terms) > LongSeconds
            )
        )
            yield return LongContraction;
    }

    /// <summary>Whether an exercise that is there for force, for control or for a load has nothing to do but hold. A hold is
    /// relaxed; there it is mostly a held effort that somebody called so, and it counts as one in what may harm.</summary>
    public static bool HoldsForWork(Stage stage, Dose dose) =>
        stage is Stage.Strengthen or Stage.Control or Stage.Load
        && dose.Actions.Any(a => a.Verb == Verb.Hold)
        && dose.Actions.All(a => a.Verb is Verb.Hold or Verb.Breathe);

    /// <summary>Whether some press, pull or raise is hard.</summary>
    public static bool HasHardContraction(Dose dose) => dose.Actions.Any(a => a.Verb.IsContraction() && IsHard(a.Effort));

    /// <summary>Whether somebody is told to keep breathing where it starts: a press, pull or raise that is hard or
    /// long.</summary>
    public static bool AsksForBreath(SettledAction action) =>
        action.Verb.IsContraction() && (IsHard(action.Effort) || action.Amount > LongSeconds);

    /// <summary>Seconds: repetitions with no pause between them are one contraction. A breath takes ten.</summary>
    private static int OnEnd(DoseAction action, DoseTerms terms) =>
        action.Amount.Number.High
        * (action.Amount is Amount.Breaths ? SecondsOfBreath : 1)
        * (terms.Pause is { Value: > 0 } ? 1 : action.Times?.High ?? 1);

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
