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
    private static Step? Largest(WeekTotal total, TotalWeek before, TotalWeek now, PracticeSettings settings) =>
        Enum.GetValues<SideMeasure>()
            .Select(measure => Large(total, before, now, measure, settings))
            .OfType<Step>()
            .MaxBy(step => step.PerCent);

    private static Step? Large(WeekTotal total, TotalWeek before, TotalWeek now, SideMeasure measure, PracticeSettings settings)
    {
        var changes = (
            from part in before.Uses
            let next = now.Uses.FirstOrDefault(n => n.Use == part.Use)
            let amount = part.Of(measure)
            where amount > 0
            select (Was: amount, Now: next?.Of(measure) ?? 0, IsOwn: MayGrow(part, next, settings), part.Use, Next: next)
        ).ToArray();
        var was = changes.Sum(c => c.Was);
        var jump = changes.Where(c => !(c.IsOwn && c.Now > c.Was)).Sum(c => c.Now - c.Was);
        if (100 * jump <= settings.LargeStep * was)
            return null;
        var most = changes.Where(c => !c.IsOwn).MaxBy(c => c.Now - c.Was);
        var at = most.Next is { Week.Line: not null } line ? line.Week.At : most.Use.At;
        return new(total.Motion, total.Side, now.Week, measure.Words(), was, was + jump, (int)(100 * jump / was), at);
    }

    /// <summary>Whether nobody wrote a line for either week and the step is one by which a dose may grow.</summary>
    private static bool MayGrow(TotalPart was, TotalPart? now, PracticeSettings settings) =>
        was.Week.Line is null
        && now is { Week.Line: null }
        && (
            now.Work.Since(was.Work).IsWithin(settings.GrowAtMost)
            || was.Use.Growth.Any(g => g.Coarse.Any(c => c.To == now.Week.Week))
        );

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
