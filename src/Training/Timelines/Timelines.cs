using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>The timeline of a session in weeks that share it.</summary>
/// <param name="Weeks">In rising order.</param>
/// <param name="Steps">Get ready and transitions among them.</param>
/// <param name="About">Whether some of it is counted by an average, such as repetitions without a tempo.</param>
/// <param name="Unbroken">How long somebody stays in one position, one after the other.</param>
public sealed record TimedWeeks(Series<int> Weeks, Series<SessionStep> Steps, bool About, Series<UnbrokenTime> Unbroken)
{
    public Seconds Total => new(Steps.Sum(s => s.Seconds.Value));
}

/// <summary>The uses of one session → the steps somebody goes through in each week, to the second.</summary>
public static class Timelines
{
    /// <summary>Weeks with the same steps together, in the order of their first week. A week in which nothing of the session is
    /// done has none.</summary>
    /// <param name="uses">Those of one session, in order.</param>
    /// <param name="weeks">How many the programme has.</param>
    /// <exception cref="ArgumentException">A dose takes longer than 4 h.</exception>
    public static Series<TimedWeeks> Of(IReadOnlyList<Use> uses, int weeks, PracticeSettings settings) =>
        Enumerable
            .Range(1, weeks)
            .Select(week => (Week: week, Done: InWeek(uses, week)))
            .Where(w => w.Done.Count > 0)
            .Select(w => OfWeek(w.Week, w.Done, settings))
            .GroupBy(w => (w.Steps, w.About))
            .Select(same => same.First() with { Weeks = same.SelectMany(w => w.Weeks).ToSeries() })
            .ToSeries();

    private static TimedWeeks OfWeek(int week, List<(Use Use, WeekDose Dose)> done, PracticeSettings settings)
    {
        var steps = new SessionSteps(settings).Of(done);
        return new(
            [week],
            steps.Select(s => s.Step).ToSeries(),
            done.Any(d => d.Dose.Measures.About),
            UnbrokenTimes.Of(steps).ToSeries()
        );
    }

    /// <summary>What is done in a week, in order.</summary>
    private static List<(Use Use, WeekDose Dose)> InWeek(IEnumerable<Use> uses, int week) =>
        [.. uses.SelectMany(use => use.Weeks.Where(w => w.Week == week).Select(w => (use, w)))];
}
