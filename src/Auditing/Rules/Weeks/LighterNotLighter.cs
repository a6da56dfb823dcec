using System.Globalization;
using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class LighterNotLighter : ICountingRule
{
    /// <summary>Per cent of the last full week; common practice, no source.</summary>
    private const int Most = 85;

    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var heavy =
            from total in WeekTotals.Of(practice, client, training)
            from now in total.Weeks
            where now.IsLighter && now.Uses.Count > 0
            let full = total.Weeks.LastOrDefault(w => w.Week < now.Week && !w.IsLighter && w.Uses.Count > 0)
            where full is not null
            let found = Heaviest(full, now)
            where found is not null
            select (total.Motion, total.Side, Found: found);
        foreach (var same in heavy.GroupBy(h => (h.Motion, h.Found), h => h.Side))
            yield return Said(client, same.Key.Motion, [.. same], same.Key.Found);

        foreach (var use in training.Uses.Where(u => u.Session <= client.Programme.Sessions.Count))
        foreach (var week in use.Weeks.Where(w => w.Lightness == Lightness.Uncut && use.Weeks.Any(b => b.Week < w.Week)))
            yield return this.Found(
                Level.Note,
                client.Id,
                use.At,
                GrowthSentences.Uncut($"'{practice.TitleOf(use)}'", week.Week),
                "Leave it, end the use before that week, or write a line for the week.",
                use.Exercise.Id.Text.Length
            );
    }

    /// <summary>The measure that stays highest, where one stays above the limit, of the uses from which something can be
    /// taken.</summary>
    private static Heavy? Heaviest(TotalWeek full, TotalWeek now)
    {
        var uncut = now.Uses.Where(u => u.Week.Lightness == Lightness.Uncut).Select(u => u.Use).ToArray();
        var measured =
            from measure in Enum.GetValues<SideMeasure>()
            let was = full.Uses.Where(u => !uncut.Contains(u.Use)).Sum(u => u.Of(measure))
            where was > 0
            let done = now.Uses.Where(u => !uncut.Contains(u.Use)).Sum(u => u.Of(measure))
            let share = 100 * done / was
            where share > Most
            orderby share descending
            select new Heavy(now.Week, full.Week, measure, was, done, PlaceOf(now));
        return measured.FirstOrDefault();
    }

    private Finding Said(Client client, Motion motion, Side?[] sides, Heavy found) =>
        this.Found(
            found.Now >= found.Was ? Level.Error : Level.Warning,
            client.Id,
            found.At,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Week {found.Week} is called a lighter one, but {Trained.Named(motion, sides)} has {found.Now:0.#} "
                    + $"{found.Measure.Words()} in it and {found.Was:0.#} in week {found.FullWeek}, the last full one."
            ),
            "Write less for that week, begin other work in a later one, or take the week out of 'lighter'."
        );

    /// <summary>The line of that week, where there is one.</summary>
    private static Location PlaceOf(TotalWeek week) =>
        week.Uses.Where(u => u.Week.Line is not null).Select(u => u.Week.At).FirstOrDefault() ?? week.Uses[0].Use.At;

    private sealed record Heavy(int Week, int FullWeek, SideMeasure Measure, decimal Was, decimal Now, Location At);
}
