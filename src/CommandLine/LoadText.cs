using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>The load of one client for the coach at the keyboard: a table of the weeks for each motion and side, and of the time
/// of each week.</summary>
internal static class LoadText
{
    public static void Write(TextWriter to, Client client, Training training)
    {
        to.WriteLine($"{client.Name}: {client.Programme.Title}");
        foreach (var motion in training.Loads.GroupBy(l => (l.Motion, l.Side)))
            Motion(to, motion.Key.Motion, motion.Key.Side, [.. motion]);
        if (training.Loads.Any(l => l.Work.EffortSeconds > 0))
        {
            to.WriteLine();
            to.WriteLine(DoseReferenceSentences.EffortWeighted);
        }

        Times(to, client, training);
        to.WriteLine(DoseReferenceSentences.Heading);
        foreach (
            var figure in (DoseReference[])
                [
                    DoseReferences.StretchInASession,
                    DoseReferences.StretchInAWeek,
                    DoseReferences.StretchEnough,
                    DoseReferences.HoldOver65,
                ]
        )
            to.WriteLine($"  {figure.Marked}.");
        to.WriteLine();
    }

    private static void Motion(TextWriter to, Motion motion, Side? side, WeekLoad[] weeks)
    {
        var isEmpty = weeks.All(w => w.Work == WorkMeasures.None);
        to.WriteLine();
        to.WriteLine(
            $"{motion.Name}{(side is { } one ? ", " + one.Word() : "")}"
                + (
                    !weeks.Any(w => w.BeforePlay) ? ""
                    : isEmpty ? ": only before play"
                    : "; sessions before play come on top"
                )
        );
        if (isEmpty)
            return;
        to.WriteLine("  week  stretch s        contraction s    effort-weighted s  reps             sessions  days");
        for (var i = 0; i < weeks.Length; i++)
        {
            var (now, before) = (weeks[i].Work, i > 0 ? weeks[i - 1].Work : null);
            to.WriteLine(
                string.Create(
                        CultureInfo.InvariantCulture,
                        $"  {weeks[i].Week, 4}  {Cell(now.StretchSeconds.Value, before?.StretchSeconds.Value), -16} "
                            + $"{Cell(now.ContractionSeconds.Value, before?.ContractionSeconds.Value), -16} "
                            + $"{Cell(now.EffortSeconds, before?.EffortSeconds), -18} "
                            + $"{Cell(now.Reps, before?.Reps), -16} {weeks[i].Sessions, 8}  {weeks[i].Days, 4}  "
                            + $"{(weeks[i].IsLighter ? "lighter " : "")}{DoseReferenceSentences.Of(weeks[i])}"
                    )
                    .TrimEnd()
            );
        }
    }

    private static void Times(TextWriter to, Client client, Training training)
    {
        to.WriteLine();
        to.WriteLine($"Time; {client.Name} has {client.Minutes} min for a session, on {client.Days.Count} days a week");
        foreach (var week in training.Weeks)
        {
            var sessions = week.Sessions.Select(s =>
                $"'{client.Programme.Sessions[s.Session - 1].Name}' "
                + (s.Times is { } times ? string.Create(CultureInfo.InvariantCulture, $"{times} x ") : "before play, ")
                + s.Seconds.Clock()
            );
            to.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"  {week.Number, 4}  {TotalOf(week).Clock(), 7}  {string.Join(", ", sessions)}{LongestDay(week)}"
                )
            );
        }

        to.WriteLine();
    }

    /// <summary>All sessions that have their number of times; those that go by the days of play come on top.</summary>
    private static Seconds TotalOf(TrainedWeek week) => new(week.Sessions.Sum(s => s.Seconds.Value * (s.Times ?? 0)));

    /// <summary>The day that takes most of the time, where days are fixed.</summary>
    private static string LongestDay(TrainedWeek week)
    {
        var days = week
            .Sessions.SelectMany(s => s.Dates.Select(date => (Date: date, s.Seconds)))
            .GroupBy(d => d.Date)
            .Select(d => (Date: d.Key, Total: new Seconds(d.Sum(s => s.Seconds.Value))))
            .OrderByDescending(d => d.Total)
            .ThenBy(d => d.Date)
            .ToArray();
        return days.Length == 0
            ? ""
            : $"; fixed days: {days.Length}, the longest {days[0].Date.DayOfWeek} with {days[0].Total.Clock()}";
    }

    /// <summary>The figure and its change against the week before; from nothing there is no percentage.</summary>
    private static string Cell(decimal now, decimal? before)
    {
        var change = (now, before) switch
        {
            (_, null) or (0, 0) => "",
            (> 0, 0) => " (new)",
            (0, > 0) => " (none)",
            _ when now == before => " (same)",
            var (a, b) => string.Create(
                CultureInfo.InvariantCulture,
                $" ({Math.Round(100 * (a - b.Value) / b.Value, MidpointRounding.AwayFromZero):+0;-0;0} %)"
            ),
        };
        return string.Create(CultureInfo.InvariantCulture, $"{now:0.#}{change}");
    }
}
