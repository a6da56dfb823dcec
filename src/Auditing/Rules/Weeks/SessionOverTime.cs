using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class SessionOverTime : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from session in training.Sessions
        where !session.IsShortened
        let longest = session.Weeks.MaxBy(w => w.Total)
        where longest is not null && longest.Total.Value > client.Minutes * 60
        let uses = training.Uses.Where(u => u.Session == session.Number).ToArray()
        select Said(practice, client, client.Programme.AllSessions[session.Number - 1], uses, longest);

    private Finding Said(Practice practice, Client client, ProgrammeSession session, Use[] uses, TimedWeeks longest)
    {
        var week = longest.Weeks[0];
        var (use, done) = uses.SelectMany(u => u.Weeks.Where(w => w.Week == week).Select(w => (u, w)))
            .MaxBy(u => u.w.Measures.Seconds);
        var exercise = practice.Of(use.Exercise.Id);
        return this.Found(
            Level.Warning,
            client.Id,
            done.Line is null ? use.At : done.At,
            $"'{session.Name}' takes {Time(longest.Total)} in week {week}, but {client.Name} has {client.Minutes} "
                + $"minutes; the longest part of it, {Time(done.Measures.Seconds)}, is '{exercise.Title}'.",
            Shorter(practice.Card.Settings, client, exercise, uses, use, done)
                ?? $"No dose that '{exercise.Title}' allows makes it fit; take something out, or spread it over more sessions.",
            (done.Line?.Line ?? use.Exercise.Id.Text).Length
        );
    }

    /// <summary>The least change of that dose with which the session fits; null where there is none.</summary>
    private static string? Shorter(
        PracticeSettings settings,
        Client client,
        Exercise exercise,
        Use[] uses,
        Use use,
        WeekDose done
    )
    {
        foreach (var shorter in exercise.Dose.Dose is { } allowed ? ShorterDoses.Of(done.Dose, allowed) : [])
        {
            var instead = use with { Weeks = [done.Shorter(shorter, settings.Dose)] };
            var total = Timelines
                .Of([.. uses.Select(u => ReferenceEquals(u, use) ? instead : u)], client.Programme.Weeks, settings)
                .First(w => w.Weeks.Contains(done.Week))
                .Total;
            if (total.Value <= client.Minutes * 60)
                return $"Write '{Line(shorter.AsDose, done.Line)}' for week {done.Week} under 'by-week': "
                    + $"'{exercise.Title}' allows "
                    + $"it, and the session then takes {Time(total)}.";
        }

        return null;
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
