using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>The uses of one session in one week → the steps somebody goes through, to the second.</summary>
internal static class SessionPlanning
{
    /// <summary>Weeks with the same steps together, in the order of their first week. A week in which nothing of the session is
    /// done has none.</summary>
    /// <param name="words">Null where only the times are asked for.</param>
    public static Series<PlannedWeeks> WeeksOf(IReadOnlyList<Use> uses, int weeks, PracticeSettings settings, Words? words)
    {
        var byWeek = Enumerable
            .Range(1, weeks)
            .Select(week => (week, done: InWeek(uses, week)))
            .Where(w => w.done.Count > 0)
            .Select(w =>
                (
                    w.week,
                    steps: new SessionSteps(settings, words).Of(w.done),
                    about: w.done.Any(d => d.Dose.Measures(settings.Dose).About)
                )
            );
        return byWeek
            .GroupBy(w => (w.steps, w.about))
            .Select(same =>
            {
                var shared = same.Select(w => w.week).ToSeries();
                return new PlannedWeeks(shared, words?.Weeks(shared) ?? "", same.Key.steps, same.Key.about);
            })
            .ToSeries();
    }

    /// <summary>What is done in a week, in order.</summary>
    public static List<(Use Use, WeekDose Dose)> InWeek(IEnumerable<Use> uses, int week) =>
        [.. uses.SelectMany(use => use.Weeks.Where(w => w.Week == week).Select(w => (use, w)))];
}
