using System.Globalization;
using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class DayOverTime : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today)
    {
        var (programme, settings) = (client.Programme, practice.Card.Settings);
        var done = from session in programme.Sessions.Index()
                   from weeks in SessionTimes.Of([.. uses.Where(u => u.Session == session.Index + 1)], programme.Weeks, settings)
                   from week in weeks.Weeks
                   from date in session.Item.Days.DatesIn(programme, week)
                   select (date, session: session.Item, weeks.Total, week);
        return done.GroupBy(d => d.date).Where(d => d.Count() > 1 && d.Sum(s => s.Total.Value) > client.Minutes * 60).GroupBy(d => d.Key.DayOfWeek)
            .Select(day => day.MaxBy(d => d.Sum(s => s.Total.Value))).OfType<IGrouping<DateOnly, (DateOnly Date, ProgrammeSession Session, Seconds Total, int Week)>>()
            .Select(d => Wrong(client, [.. d]));
    }

    private Finding Wrong(Client client, (DateOnly Date, ProgrammeSession Session, Seconds Total, int Week)[] day)
    {
        var total = day.Sum(d => d.Total.Value);
        var minutes = string.Create(CultureInfo.InvariantCulture, $"{total / 60} min{(total % 60 == 0 ? "" : $" {total % 60} s")}");
        return new(
            RuleId.Of(GetType()), Level.Warning, client.Id, day[1].Session.At,
            $"On {day[0].Date.DayOfWeek} of week {day[0].Week} the sessions {string.Join(" and ", day.Select(d => $"'{d.Session.Name}'"))} take {minutes} together, but {client.Name} has {client.Minutes} minutes.",
            "Move one of them to another day, or make both shorter.");
    }
}
