using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class SessionOverTime : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        var settings = practice.Card.Settings;
        return client
            .Programme.AllSessions.Index()
            .Where(s => !s.Item.IsShortened)
            .Select(s =>
                Judged(
                    client,
                    s.Item,
                    [.. uses.Where(u => u.Session == s.Index + 1)],
                    own => SessionTimes.Of(own, client.Programme.Weeks, settings),
                    settings
                )
            )
            .OfType<Finding>();
    }

    /// <param name="times">How long the session takes with those uses, week by week.</param>
    private Finding? Judged(
        Client client,
        ProgrammeSession session,
        Use[] uses,
        Func<Use[], Series<PlannedWeeks>> times,
        PracticeSettings settings
    )
    {
        if (times(uses).MaxBy(w => w.Total) is not { } longest || longest.Total.Value <= client.Minutes * 60)
            return null;
        var week = longest.Weeks[0];
        var (use, done) = uses.SelectMany(u => u.Weeks.Where(w => w.Week == week).Select(w => (u, w)))
            .MaxBy(u => LengthOf(u.w.Dose));
        var help =
            $"No dose that '{use.Exercise.Title}' allows makes it fit; take something out, or spread it over more sessions.";
        foreach (var shorter in use.Exercise.Dose.Dose is { } allowed ? ShorterDoses.Of(done.Dose, allowed) : [])
        {
            var total = times([.. uses.Select(u => u == use ? use with { Weeks = [done with { Dose = shorter }] } : u)])
                .First(w => w.Weeks.Contains(week))
                .Total;
            if (total.Value > client.Minutes * 60)
                continue;
            help =
                $"Write '{Line(shorter, done.Line)}' for week {week} under 'by-week': '{use.Exercise.Title}' allows it, "
                + $"and the session then takes {Time(total)}.";
            break;
        }

        return new(
            RuleId.Of(GetType()),
            Level.Warning,
            client.Id,
            done.Line is null ? use.At : done.At,
            $"'{session.Name}' takes {Time(longest.Total)} in week {week}, but {client.Name} has {client.Minutes} "
                + $"minutes; the longest part of it, {Time(LengthOf(done.Dose))}, is '{use.Exercise.Title}'.",
            help,
            (done.Line?.Line ?? use.Exercise.Id.Text).Length
        );

        Seconds LengthOf(Dose dose) => DoseMeasures.Of(dose, settings.Dose).Seconds;
    }

    /// <summary>The dose as a coach writes it there: with the terms that the line had; the others come from the
    /// exercise.</summary>
    private static string Line(Dose dose, WrittenDose? written)
    {
        var bare = dose with { Terms = DoseTerms.None };
        return DosePrinter.Print(DoseInheritance.Complete(dose with { Terms = written?.Dose?.Terms ?? DoseTerms.None }, bare));
    }

    private static string Time(Seconds span) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{span.Value / 60} min{(span.Value % 60 == 0 ? "" : $" {span.Value % 60} s")}"
        );
}
