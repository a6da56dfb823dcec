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
        var walked = WalkedWeeks.Over(Ladder.Of(envelope, settings), full, grow);
        var steps = envelope.Actions.Select(GrowthStep.Of).ToArray();
        var (weeks, notes) = (new List<DoseWeek>(), NotesOf(envelope, walked, grow).ToList());
        DoseWeek? before = null;
        for (var week = 1; week <= asked.Last; week++)
        {
            var isLighter = asked.Lighter.Contains(week);
            var dose = walked.DoseIn(week).Settled();
            if (isLighter)
            {
                (dose, var isLess) = LighterDose.Of(dose, share, steps, settings);
                if (!isLess && before is not null)
                    notes.Add(GrowthSentences.Uncut("this line", week));
            }

            var grown = before is null ? (Growth?)null : SideWork.Of(dose, settings).Since(SideWork.Of(before.Dose, settings));
            weeks.Add(new(week, dose, isLighter, grown));
            before = isLighter ? before : weeks[^1];
        }

        return new(weeks.ToSeries(), notes.ToSeries());
    }

    private static IEnumerable<string> NotesOf(Dose envelope, WalkedWeeks walked, int grow)
    {
        foreach (var (from, to, percent) in walked.Coarse)
            yield return $"{GrowthSentences.Coarse(DoseIn(from), DoseIn(to), percent)} {GrowthSentences.CoarseHelp}";
        if (walked is { Walk: { IsFinished: false } walk, Full: [var first, ..] full } && !envelope.IsSettled)
            yield return GrowthSentences.Unfinished("this line", full.Count, walk.Need, DoseIn(first), DoseIn(full[^1]), grow)
                + $" {GrowthSentences.UnfinishedHelp}";

        SettledDose DoseIn(int week) => walked.DoseIn(week).Settled();
    }
}

/// <param name="Since">Against the last full week before; null where there is none.</param>
internal sealed record DoseWeek(int Week, SettledDose Dose, bool IsLighter, Growth? Since);
