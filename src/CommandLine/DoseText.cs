using System.Globalization;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>A dose for the coach at the keyboard: the line as understood, its time at both ends, the steps with the clock at
/// which each begins, what published figures say of it, the weeks.</summary>
internal static class DoseText
{
    public static void Write(TextWriter to, Dose dose, DoseSettings settings, AskedWeeks? weeks)
    {
        to.WriteLine(DosePrinter.Print(dose));
        to.WriteLine();
        if (dose.IsSettled)
        {
            WriteEnd(to, "", dose.Low().Settled(), settings);
        }
        else
        {
            WriteEnd(to, "low   ", dose.Low().Settled(), settings);
            WriteEnd(to, "high  ", dose.High().Settled(), settings);
        }

        var beside = DoseReferenceSentences.Of(dose, settings).ToArray();
        if (beside.Length > 0)
            to.WriteLine(DoseReferenceSentences.Heading);
        foreach (var line in beside)
            to.WriteLine($"  {line}");
        if (beside.Length > 0)
            to.WriteLine();
        if (weeks is not null)
            WriteWeeks(to, DoseWeeks.Of(dose, settings, weeks), settings);
    }

    private static void WriteWeeks(TextWriter to, DoseWeeks grown, DoseSettings settings)
    {
        var room = grown.Weeks.Max(w => w.Dose.ToString().Length);
        foreach (var week in grown.Weeks)
        {
            var step = week.Since is { } since
                ? string.Create(CultureInfo.InvariantCulture, $"{since.MorePercent:+0;-0;0} %")
                : "";
            var measures = DoseMeasures.Of(week.Dose, settings);
            var line = string.Create(
                CultureInfo.InvariantCulture,
                $"week {week.Week, -3} {(week.IsLighter ? "lighter" : ""), -7} {measures.Seconds.Clock(), 7} {step, 6}  "
            );
            to.WriteLine($"{line}{week.Dose.ToString().PadRight(room)}  {string.Join(", ", Totals(measures))}".TrimEnd());
        }

        foreach (var note in grown.Notes)
            to.WriteLine(note);
    }

    private static void WriteEnd(TextWriter to, string end, SettledDose settled, DoseSettings settings)
    {
        var measures = DoseMeasures.Of(settled, settings);
        string[] said = [$"{(measures.About ? "about " : "")}{measures.Seconds.Clock()}", .. Totals(measures)];
        to.WriteLine($"{end}{string.Join(", ", said)}");
        var clock = Seconds.Zero;
        foreach (var run in Timeline.Of(settled, settings).Steps)
        {
            var side = settled.Sides.TurnOf(run.Side) is { } turn ? $"{Kebab.Of(turn.ToString())} side" : "";
            var effort = run is TimelineStep.Work { EffortPercent: { } percent }
                ? string.Create(CultureInfo.InvariantCulture, $"{percent:0.##} %")
                : "";
            to.WriteLine(
                string.Create(
                        CultureInfo.InvariantCulture,
                        $"  {clock.Clock(), 7}  {run.Seconds.Value, 5} s  {Kebab.Of(run.Kind.ToString()), -9} "
                            + $"{side, -12} {effort}"
                    )
                    .TrimEnd()
            );
            clock += run.Seconds;
        }

        to.WriteLine();
    }

    /// <summary>Over all sides: what of it is not nothing.</summary>
    private static IEnumerable<string> Totals(DoseMeasures measures)
    {
        if (measures.StretchSeconds > Seconds.Zero)
            yield return $"stretch {measures.StretchSeconds}";
        if (measures.ContractionSeconds > Seconds.Zero)
            yield return $"contraction {measures.ContractionSeconds}";
        if (measures.EffortSeconds > 0)
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"effort-weighted seconds {measures.EffortSeconds:0.###} (10 s at 50 % count 5)"
            );
        if (measures.Reps > 0)
            yield return string.Create(CultureInfo.InvariantCulture, $"repetitions {measures.Reps}");
    }
}
