using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>A dose or a week beside the published figures, as sentences for a coach.</summary>
public static class DoseReferenceSentences
{
    public const string Heading =
        "Published figures, as information; none of them is a limit for a person. Seen: read in the source itself; "
        + "second-hand: in a text that quotes it.";

    /// <summary>What the measure means, where it is told.</summary>
    public const string EffortWeighted =
        "Effort-weighted seconds: contraction seconds times the effort, so that 10 s at 50 % count 5.";

    /// <summary>What the figures say of a dose, at both its ends; nothing where none of them speaks of it. Stretch is counted for
    /// one side.</summary>
    public static IEnumerable<string> Of(Dose envelope, DoseSettings settings)
    {
        var (low, high) = (envelope.Low(), envelope.High());
        var stretch = new Count(StretchOf(low, settings), Math.Max(StretchOf(low, settings), StretchOf(high, settings)));
        if (stretch.High > 0)
        {
            yield return $"{stretch} s of stretch a side, {Against(stretch, DoseReferences.StretchInASession.Least)} "
                + $"{DoseReferences.StretchInASession.Least} s. {DoseReferences.StretchInASession.Marked}.";
            yield return $"5 min a week take {Sessions(stretch, DoseReferences.StretchInAWeek.Least)} such sessions, "
                + $"10 min {Sessions(stretch, DoseReferences.StretchEnough.Least)}. "
                + $"{DoseReferences.StretchInAWeek.Marked}. {DoseReferences.StretchEnough.Marked}.";
        }

        var holds = high
            .Actions.Where(a => a is { Verb: Verb.Hold, Amount.Unit: AmountUnit.Seconds })
            .Select(a => a.Amount.Number.High)
            .ToArray();
        if (holds.Length > 0)
        {
            yield return Text($"The longest hold is {holds.Max()} s. ")
                + $"{DoseReferences.HoldOfAdults.Marked}; {DoseReferences.HoldOver65.Words} (the same).";
        }

        var efforts = high.Actions.Where(a => a.Verb.IsContraction()).Select(a => Hardest(a.Effort)).OfType<int>().ToArray();
        if (efforts.Length > 0)
            yield return Text(
                $"The hardest contraction is at {efforts.Max()} %, as it feels. {DoseReferences.HardContraction.Marked}."
            );
    }

    /// <summary>What the figures say of one motion and side in one week; null where it is not stretched.</summary>
    public static string? Of(WeekLoad load)
    {
        var seconds = load.Work.StretchSeconds.Value;
        return seconds switch
        {
            0 => null,
            _ when seconds < DoseReferences.StretchInAWeek.Least => "below 5 min a week",
            _ when seconds <= DoseReferences.StretchEnough.Least => "from 5 to 10 min a week",
            _ => "above 10 min a week",
        };
    }

    private static int StretchOf(Dose end, DoseSettings settings)
    {
        var measures = DoseMeasures.Of(end.Settled(), settings);
        return Math.Max(
            measures.First.StretchSeconds.Value,
            Math.Max(measures.Second.StretchSeconds.Value, measures.Unsided.StretchSeconds.Value)
        );
    }

    private static string Against(Count seconds, int figure) =>
        seconds.High < figure ? "less than"
        : seconds.Low > figure ? "more than"
        : seconds.IsSingle ? "just"
        : "which takes in";

    /// <summary>As many sessions as it takes, rounded up: from the high end to the low.</summary>
    private static string Sessions(Count seconds, int figure)
    {
        var fewest = (figure + seconds.High - 1) / seconds.High;
        return seconds.Low == 0
            ? Text($"{fewest} or more")
            : new Count(fewest, (figure + seconds.Low - 1) / seconds.Low).ToString();
    }

    private static int? Hardest(Effort? effort) =>
        effort?.Match<int?>(steady => steady.Percent.High, ramp => Math.Max(ramp.First.High, ramp.Last.High), _ => null);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
