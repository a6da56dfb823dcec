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
        foreach (var total in WeekTotals.Of(practice, client, training))
        foreach (var now in total.Weeks.Where(w => w.IsLighter && w.Uses.Count > 0))
        {
            if (total.Weeks.LastOrDefault(w => w.Week < now.Week && !w.IsLighter && w.Uses.Count > 0) is not { } full)
                continue;
            if (Heaviest(full, now) is { } found)
                yield return Said(client, total, now, full, found);
        }

        foreach (var use in training.Uses.Where(u => u.Session <= client.Programme.Sessions.Count))
        foreach (var week in use.Weeks.Where(w => w.Lightness == Lightness.Uncut && use.Weeks.Any(b => b.Week < w.Week)))
            yield return this.Found(
                Level.Note,
                client.Id,
                use.At,
                $"Nothing can be taken away from '{practice.TitleOf(use)}' in week {week.Week}, which is a lighter one: its dose is too small.",
                "Leave it, end the use before that week, or write a line for the week.",
                use.Exercise.Id.Text.Length
            );
    }

    /// <summary>The measure that stays highest, where one stays above the limit, of the uses from which something can be
    /// taken.</summary>
    private static (SideMeasure Measure, decimal Was, decimal Now, decimal Share)? Heaviest(TotalWeek full, TotalWeek now)
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
            select ((SideMeasure, decimal, decimal, decimal)?)(measure, was, done, share);
        return measured.FirstOrDefault();
    }

    private Finding Said(
        Client client,
        WeekTotal total,
        TotalWeek now,
        TotalWeek full,
        (SideMeasure Measure, decimal Was, decimal Now, decimal Share) found
    )
    {
        var at = now.Uses.Where(u => u.Week.Line is not null).Select(u => u.Week.At).FirstOrDefault() ?? now.Uses[0].Use.At;
        return this.Found(
            found.Share >= 100 ? Level.Error : Level.Warning,
            client.Id,
            at,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Week {now.Week} is called a lighter one, but {Trained.Named(total.Motion, [total.Side])} has {found.Now:0.#} "
                    + $"{found.Measure.Words()} in it and {found.Was:0.#} in week {full.Week}, the last full one."
            ),
            "Write less for that week, begin other work in a later one, or take the week out of 'lighter'."
        );
    }
}
