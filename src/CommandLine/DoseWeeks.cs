using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <param name="Last">At least 1.</param>
/// <param name="Lighter">Weeks among them.</param>
public sealed record AskedWeeks(int Last, IReadOnlyCollection<int> Lighter);

/// <summary>One line over some weeks, as an exercise that is done in each of them: by what a practice counts where it says
/// nothing else.</summary>
internal sealed record DoseWeeks(Series<DoseWeek> Weeks, Series<string> Notes)
{
    public static DoseWeeks Of(Dose envelope, DoseSettings settings, AskedWeeks asked)
    {
        var (grow, share) = (PracticeSettings.Default.GrowAtMost, PracticeSettings.Default.LighterShare);
        var full = Enumerable.Range(1, asked.Last).Where(w => !asked.Lighter.Contains(w)).ToArray();
        var walk = Walk.Over(Ladder.Of(envelope, settings), full.Length, grow);
        var steps = envelope.Actions.Select(GrowthStep.Of).ToArray();
        var weeks = new List<DoseWeek>();
        DoseWeek? before = null;
        for (var week = 1; week <= asked.Last; week++)
        {
            var at = Array.IndexOf(full, week);
            var dose =
                at < 0
                    ? LighterDose.Of(before?.Dose ?? envelope.Low().Settled(), share, steps, settings).Dose
                    : walk.Ladder.Rungs[walk.Rungs[at]].Dose.Settled();
            var grown = before is null ? (Growth?)null : SideWork.Of(dose, settings).Since(SideWork.Of(before.Dose, settings));
            weeks.Add(new(week, dose, at < 0, grown));
            before = at < 0 ? before : weeks[^1];
        }

        return new(weeks.ToSeries(), NotesOf(envelope, walk, weeks, grow).ToSeries());
    }

    private static IEnumerable<string> NotesOf(Dose envelope, Walk walk, List<DoseWeek> weeks, int grow)
    {
        if (weeks.FindAll(w => !w.IsLighter) is not [var first, .. var rest])
            yield break;
        foreach (var (from, to) in rest.Prepend(first).Zip(rest))
            if (to.Since is { } step && !step.IsWithin(grow))
                yield return $"{GrowthSentences.Coarse(from.Dose, to.Dose, step.MorePercent)} {GrowthSentences.CoarseHelp}";
        if (!walk.IsFinished && !envelope.IsSettled)
            yield return GrowthSentences.Unfinished(
                "this line",
                walk.Rungs.Count,
                walk.Need,
                first.Dose,
                rest.LastOrDefault(first).Dose,
                grow
            ) + $" {GrowthSentences.UnfinishedHelp}";
    }
}

/// <param name="Since">Against the last full week before; null where there is none.</param>
internal sealed record DoseWeek(int Week, SettledDose Dose, bool IsLighter, Growth? Since);
