using System.Globalization;
using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class LargeStep : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var settings = practice.Card.Settings;
        var steps =
            from total in WeekTotals.Of(practice, client, training)
            from now in total.Weeks
            where !now.IsLighter
            let before = total.Weeks.LastOrDefault(w => w.Week < now.Week && !w.IsLighter)
            where before is not null
            let large = Largest(total, before, now, settings)
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
            $"Take two weeks for it, or leave it if you mean it. This practice notes steps above {limit} per cent "
                + "(rule of thumb); 'large-step' in practice.md changes it."
        );
    }

    /// <summary>The measure that grows most beyond the limit; null where none does. Work that begins has no percentage, and a
    /// step by which a dose may grow by itself is none.</summary>
    private static Step? Largest(WeekTotal total, TotalWeek before, TotalWeek now, PracticeSettings settings)
    {
        Step? largest = null;
        foreach (var measure in Enum.GetValues<SideMeasure>())
        {
            var changes = now
                .Uses.Select(u =>
                    (u.Use, Was: before.Of(u.Use, measure), Now: u.Of(measure), IsOwn: MayGrow(u.Use, before, now, settings))
                )
                .Where(c => c.Was > 0)
                .ToArray();
            var was = before.Uses.Sum(u => u.Of(measure));
            var gone = before.Uses.Where(b => changes.All(c => c.Use != b.Use)).Sum(b => b.Of(measure));
            var jump = changes.Where(c => !(c.IsOwn && c.Now > c.Was)).Sum(c => c.Now - c.Was) - gone;
            if (jump <= 0)
                continue;
            var percent = (int)(100 * jump / was);
            if (100 * jump <= settings.LargeStep * was || percent <= largest?.PerCent)
                continue;
            var most = changes.Where(c => !c.IsOwn).MaxBy(c => c.Now - c.Was).Use;
            var at = most.Weeks.FirstOrDefault(w => w.Week == now.Week) is { Line: not null } line ? line.At : most.At;
            largest = new(total.Motion, total.Side, now.Week, measure.Words(), was, was + jump, percent, at);
        }

        return largest;
    }

    /// <summary>Whether nobody wrote a line for either week and the step is one by which a dose may grow.</summary>
    private static bool MayGrow(Use use, TotalWeek before, TotalWeek now, PracticeSettings settings)
    {
        var (was, done) = (
            use.Weeks.FirstOrDefault(w => w.Week == before.Week),
            use.Weeks.FirstOrDefault(w => w.Week == now.Week)
        );
        return was is { Line: null }
            && done is { Line: null }
            && (
                SideWork.Of(done.Dose, settings.Dose).Since(SideWork.Of(was.Dose, settings.Dose)).IsWithin(settings.GrowAtMost)
                || use.Growth.Any(g => g.Coarse.Any(c => c.To == now.Week))
            );
    }

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
