using System.Globalization;
using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class LargeStep : ICountingRule
{
    private static readonly (string Name, Func<WorkMeasures, decimal> Of)[] Measures =
    [
        ("stretch seconds", w => w.StretchSeconds.Value),
        ("contraction seconds", w => w.ContractionSeconds.Value),
        ("effort-seconds", w => w.EffortSeconds),
        ("repetitions", w => w.Reps),
    ];

    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var settings = practice.Card.Settings;
        var steps =
            from load in training.Loads.GroupBy(l => (l.Motion, l.Side))
            from now in load
            where !now.IsLighter
            let before = load.Where(l => l.Week < now.Week && !l.IsLighter).MaxBy(l => l.Week)
            where before is not null
            let large = Largest(client, training.Uses, before, now, settings)
            where large is not null
            select large;
        return steps
            .GroupBy(s => (s.Motion, s.Week, s.At))
            .Select(same => Said(client, same.Key.Motion, [.. same], settings.LargeStep));
    }

    private Finding Said(Client client, Motion motion, Step[] sides, int limit)
    {
        var step = sides[0];
        return this.Found(
            Level.Note,
            client.Id,
            step.At,
            string.Create(
                CultureInfo.InvariantCulture,
                $"A large step in week {step.Week}: {Trained.Named(motion, sides.Select(s => s.Side))}, from "
                    + $"{step.Before:0.#} to {step.Now:0.#} {step.Measure} a week, {step.PerCent} per cent more."
            ),
            $"Take two weeks for it, or leave it if you mean it. This practice notes steps above {limit} per cent, which "
                + "is common practice, with no source; 'large-step' in practice.md changes it."
        );
    }

    /// <summary>The measure that grows most beyond the limit, without what grows evenly inside an envelope; null where none
    /// does.</summary>
    private static Step? Largest(Client client, Series<Use> uses, WeekLoad before, WeekLoad now, PracticeSettings settings)
    {
        Step? largest = null;
        foreach (var (name, of) in Measures)
        {
            Use[] own = [.. uses.Where(u => u.Session <= client.Programme.Sessions.Count && u.Exercise.Trains == now.Motion)];
            var was = own.Sum(u => In(u, before.Week));
            if (was == 0)
                continue;
            var changes = own.Select(u =>
                    (Use: u, Grown: IsGrown(u, before.Week, now.Week), Change: In(u, now.Week) - In(u, before.Week))
                )
                .ToArray();
            var jump = changes.Sum(c => c.Change) - changes.Where(c => c.Grown && c.Change > 0).Sum(c => c.Change);
            var percent = (int)(100 * jump / was);
            if (100 * jump <= settings.LargeStep * was || percent <= (largest?.PerCent ?? 0))
                continue;
            var most = changes.Where(c => !c.Grown).MaxBy(c => c.Change).Use;
            var at = most.Weeks.FirstOrDefault(w => w.Week == now.Week) is { Line: not null } line ? line.At : most.At;
            largest = new(now.Motion, now.Side, now.Week, name, was, was + jump, percent, at);

            decimal In(Use use, int week) =>
                use.Weeks.FirstOrDefault(w => w.Week == week) is not { } done
                    ? 0
                    : done.BySide.Where(s => s.Side == now.Side).Sum(s => of(s.Work)) * TimesAWeek(client.Programme, use, week);
        }

        return largest;
    }

    /// <summary>A session every so many days comes as often in one week as in another, on the average: that four times follow
    /// three is no growth.</summary>
    private static decimal TimesAWeek(Programme programme, Use use, int week)
    {
        var days = programme.Sessions[use.Session - 1].Days;
        return days is SessionDays.EveryDays every ? 7m / every.Days : programme.TimesOf(days, week) ?? 0;
    }

    /// <summary>Whether nobody wrote a line for either week, so that the dose only follows its envelope.</summary>
    private static bool IsGrown(Use use, int before, int now) =>
        use.Weeks.Any(w => w.Week == before && w.Line is null) && use.Weeks.Any(w => w.Week == now && w.Line is null);

    private sealed record Step(
        Motion Motion,
        Side? Side,
        int Week,
        string Measure,
        decimal Before,
        decimal Now,
        int PerCent,
        Location At
    );
}
