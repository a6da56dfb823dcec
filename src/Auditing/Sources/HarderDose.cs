using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Auditing.Sources;

/// <summary>What one dose has more of than another.</summary>
internal static partial class HarderDose
{
    /// <summary>What is harder, by kind: all amounts are one, as they are where a dose grows by itself.</summary>
    public static IEnumerable<(string Kind, string Words)> Of(SettledDose before, SettledDose now)
    {
        if (now.Sets > before.Sets)
            yield return ("sets", "more sets");
        foreach (var (was, part) in before.Parts.Zip(now.Parts))
            if (part.Times > was.Times)
                yield return ("times", "more times");
        foreach (var (was, action) in before.Actions.Zip(now.Actions).Where(pair => pair.First.Verb == pair.Second.Verb))
        {
            if ((action.Times ?? 1) > (was.Times ?? 1))
                yield return ("times", "more times");
            if (action.Unit == was.Unit && action.Amount > was.Amount)
                yield return ("amount", action.Unit == AmountUnit.Seconds ? "longer times" : "more of each");
            if (Hardest(action.Effort) > Hardest(was.Effort))
                yield return ("effort", "more effort");
        }

        if (now.Load is { } load && load != before.Load)
            yield return ("load", "another load");
        if (now.Tempo is { } tempo && before.Tempo is { } slow && tempo.Seconds > slow.Seconds)
            yield return ("tempo", "a slower tempo");
    }

    /// <summary>What asks more of a body that it hurt: what is harder, without what only spreads less work otherwise, and without
    /// a load that says by its number that it is less. Empty where nothing does.</summary>
    public static Series<string> More(SettledDose before, SettledDose now, DoseSettings settings)
    {
        var (was, work) = (SideWork.Of(before, settings), SideWork.Of(now, settings));
        var isLess = was != work && was.IsNoLessThan(work);
        var harder = Of(before, now)
            .Where(h => h.Kind == "load" ? !IsLighter(before.Load, now.Load) : h.Kind == "effort" || !isLess)
            .Select(h => h.Words)
            .Distinct()
            .ToSeries();
        if (harder.Count > 0)
            return harder;
        if (now.Sides.MoreOnFirst > before.Sides.MoreOnFirst)
            return ["more sets on one side"];
        return work.Measures.Zip(was.Measures).Any(m => m.First.Amount > m.Second.Amount) ? ["more work"] : [];
    }

    private static int Hardest(SettledEffort? effort) =>
        effort?.Match(steady => steady.Percent, ramp => Math.Max(ramp.First, ramp.Last), felt => felt.Rating * 10) ?? 0;

    private static bool IsLighter(string? before, string? now) =>
        (before is null ? null : Weighed().Match(before), now is null ? null : Weighed().Match(now))
            is ({ Success: true } was, { Success: true } lighter)
        && string.Equals(was.Groups[2].Value, lighter.Groups[2].Value, StringComparison.OrdinalIgnoreCase)
        && Number(lighter) < Number(was);

    private static decimal Number(Match match) => decimal.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);

    /// <summary>"6 kg", "0.5 kg in the hand"</summary>
    [GeneratedRegex(@"\A([0-9]{1,6}(?:\.[0-9]{1,3})?) *(\D*)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Weighed();
}
