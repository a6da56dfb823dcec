using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class DayOverTime : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var days = training.Dates.GroupBy(
            d => d.Day,
            d => new Done(d.Week, client.Programme.Sessions[d.Session - 1], d.Length),
            (date, done) => new Day(date, [.. done])
        );
        return from day in days
            where day.Sessions.Length > 1 && day.Total > client.Minutes * 60
            group day by day.Date.DayOfWeek into same
            select Said(client, same.OrderByDescending(d => d.Total).ThenBy(d => d.Date).First());
    }

    private Finding Said(Client client, Day day)
    {
        var minutes = string.Create(
            CultureInfo.InvariantCulture,
            $"{day.Total / 60} min{(day.Total % 60 == 0 ? "" : $" {day.Total % 60} s")}"
        );
        return this.Found(
            Level.Warning,
            client.Id,
            day.Sessions[1].Session.At,
            $"On {day.Date.DayOfWeek} of week {day.Sessions[0].Week} the sessions "
                + $"{string.Join(" and ", day.Sessions.Select(d => $"'{d.Session.Name}'"))} take {minutes} together, but "
                + $"{client.Name} has {client.Minutes} minutes.",
            "Move one of them to another day, or make both shorter."
        );
    }

    private sealed record Done(int Week, ProgrammeSession Session, Seconds Total);

    private sealed record Day(DateOnly Date, Done[] Sessions)
    {
        public int Total => Sessions.Sum(s => s.Total.Value);
    }
}
