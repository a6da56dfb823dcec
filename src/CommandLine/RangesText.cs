using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>The measured ranges of clients for the coach at the keyboard.</summary>
internal static class RangesText
{
    public static void Write(TextWriter to, Practice practice, IEnumerable<(Client Client, ClientRanges Ranges)> clients)
    {
        var all = clients.ToArray();
        foreach (var (client, ranges) in all)
            OfClient(to, practice, client, ranges);
        Part(to, "Errors on file, for readings other than some of these", all.SelectMany(c => Unfit(c.Ranges)).Distinct());
        to.WriteLine();
        to.WriteLine(RangeSentences.SetByCoach);
        to.WriteLine(RangeSentences.SidesDiffer);
        to.WriteLine(RangeSentences.TrainedPeople);
        foreach (var (key, raters, own) in practice.OwnErrors.All)
            to.WriteLine(Own(key, raters, own));
    }

    private static void OfClient(TextWriter to, Practice practice, Client client, ClientRanges ranges)
    {
        to.WriteLine(
            $"{client.Name}: measured until {ranges.Today.Iso()}; {client.Programme.Title}, from {client.Programme.Start.Iso()}"
        );
        if (client.Programme.Retest is { } retest)
            to.WriteLine($"To be measured again {When(retest)}.");
        to.WriteLine(RangeSentences.Comparisons(ranges.Comparisons));
        if (ranges.IsVeryMobile)
            to.WriteLine(RangeSentences.NotTheAim);
        to.WriteLine();
        to.WriteLine("Measured");
        foreach (var series in ranges.Series)
            Series(to, series);
        if (ranges.Series.SelectMany(s => s.Changes).Any(c => c.Word is ChangeWord.Gain or ChangeWord.More))
            to.WriteLine("  " + RangeSentences.NoCause);
        Part(to, "What the sport asks", ranges.Demands.Select(d => $"{NameOf(practice, d)}: {RangeSentences.Of(d)}"));
        Part(to, "Left and right", ranges.Sides.SelectMany(Sides));
        Part(to, "Errors used for demands and sides", Used(ranges).Distinct());
        Part(to, "Never measured", ranges.Never.Select(Never));
        Part(to, "To be measured again", ranges.Due.Select(Due));
        to.WriteLine();
    }

    private static void Series(TextWriter to, MeasuredSeries series)
    {
        var motion = series.Key.Motion;
        to.WriteLine($"  {RangeSentences.NameOf(series.Key)}: {string.Join("; ", Readings(series))}");
        if (series.Sudden is { } sudden)
            to.WriteLine($"    from a day to the next: {RangeSentences.Of(sudden, motion)}");
        if (series.SinceBaseline is { } since)
            to.WriteLine($"    since the baseline: {RangeSentences.Of(since, motion)}");
        if (series.SinceBefore is { } before)
            to.WriteLine($"    since the time before: {RangeSentences.Of(before, motion)}");
        if (series.Line is { } line)
            to.WriteLine($"    {RangeSentences.Of(line, series.Read)}");
        foreach (
            var source in series.Changes.Select(c => c.Error).OfType<ErrorInUse>().Select(RangeErrorText.SourceOf).Distinct()
        )
            to.WriteLine($"    error: {source}");
    }

    private static IEnumerable<string> Readings(MeasuredSeries series)
    {
        var motion = series.Key.Motion;
        if (series.Baseline is { } baseline)
            yield return $"baseline {RangeSentences.Value(baseline.Value, motion)} on {RangeSentences.DaysOf(baseline)}";
        if (series.Latest is { } latest && latest != series.Baseline)
            yield return $"latest {RangeSentences.Value(latest.Value, motion)} on {RangeSentences.DaysOf(latest)}";
        foreach (var reading in series.Read.AfterTraining)
            yield return $"{RangeSentences.Value(reading.Value, motion)} on {reading.Date.Iso()}, after training, not judged";
    }

    private static void Part(TextWriter to, string title, IEnumerable<string> lines)
    {
        var all = lines.ToArray();
        if (all.Length == 0)
            return;
        to.WriteLine();
        to.WriteLine(title);
        foreach (var line in all)
            to.WriteLine($"  {line}");
    }

    /// <summary>"Épée fencing, lunge, rear leg (right): lying ankle dorsiflexion, passive, at least 15°".</summary>
    private static string NameOf(Practice practice, JudgedDemand judged)
    {
        var demand = judged.Demand;
        var side = judged.Side?.Word();
        var role =
            side is null ? ""
            : demand.Side is { } named && named != side ? $", {named} ({side})"
            : $", {side}";
        return $"{practice.Find(judged.Sport)?.Name}, {demand.Position}{role}, {demand.Motion}"
            + $"{(demand.Mode is { } mode ? $", {RangeErrorText.WordOf(mode)}" : "")}, at least "
            + RangeSentences.Value(demand.AtLeast, judged.Measure.Motion);
    }

    private static IEnumerable<string> Sides(ComparedSides sides)
    {
        var motion = sides.Key.Motion;
        yield return $"{RangeSentences.NameOf(sides.Key)}: {RangeSentences.Of(sides.Latest, motion)}";
        if (sides.Change is { } change)
            yield return $"  {RangeSentences.Of(change, motion)}";
    }

    private static IEnumerable<string> Used(ClientRanges ranges) =>
        ranges
            .Demands.Where(d => d.Open is null)
            .Select(d => (d.Measure.Motion.Name, d.Mark?.Error))
            .Concat(ranges.Sides.Select(s => (s.Measure.Motion.Name, s.Latest.Error)))
            .Where(used => used.Error is not null)
            .Select(used => $"{used.Name}: {(used.Error is { } error ? RangeErrorText.SourceOf(error) : "")}");

    private static string When(Retest retest) =>
        retest.From == retest.Until ? $"on {retest.From.Iso()}" : $"from {retest.From.Iso()} to {retest.Until.Iso()}";

    private static string Never(NeverMeasured never) =>
        $"{string.Join(" or ", never.Ways.Select(w => w.Motion.Name))}{RangeSentences.SideOf(never.Side)}: "
        + (never.Demand is { } d ? $"demanded in {d.Demand.Position}{(never.IsTrained ? ", and trained" : "")}" : "trained");

    private static string Due(DueMeasure due) =>
        $"{RangeSentences.NameOf(due.Key)}: last on {due.Latest.Last.Iso()}, "
        + (
            due.Why switch
            {
                DueWhy.Old => string.Create(CultureInfo.InvariantCulture, $"more than {RangeMark.ReadingsLast} days ago"),
                DueWhy.Retest => "and the day to measure it again is past",
                DueWhy.ProgrammeOver => "and the programme that works on it is over",
            }
        );

    /// <summary>"thoracic rotation: 5.6°, level not stated, active, …": where readings have no error.</summary>
    private static IEnumerable<string> Unfit(ClientRanges ranges) =>
        from series in ranges.Series
        where !series.Changes.Any(c => c.Error is not null)
        from error in series.Measure.Errors
        select $"{series.Key.Motion.Name}: {RangeSentences.Value(error.Value, series.Key.Motion)}, "
            + $"{RangeErrorText.ConditionsOf(error)}; {error.Note}; {error.Source}";

    private static string Own(SeriesKey key, RaterRelation raters, OwnError own) =>
        $"This practice's own error of {RangeSentences.NameOf(key)}, {RangeErrorText.WordOf(raters)}: "
        + (
            own.IsUsable ? $"{RangeSentences.Error(Roots.Of(own.Square), key.Motion)}, from {Pairs(own)}."
            : own.Pairs < OwnError.PairsNeeded ? $"{Pairs(own)} so far; {Number(OwnError.PairsNeeded)} are needed."
            : $"not used: in {Pairs(own)} the later reading leans to one side."
        );

    private static string Pairs(OwnError own) => own.Pairs == 1 ? "1 pair of readings" : $"{Number(own.Pairs)} pairs of readings";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
