using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class StartPassed : IClientRule
{
    /// <summary>From so many days on; a week is what a page offers, and who begins some days late misses none.</summary>
    private const int Days = 7;

    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var programme = client.Programme;
        // Who has sent a log has pages, whatever became of their record.
        if (client.LastEdition > 0 || client.Log.Count > 0 || programme.End < today)
            yield break;
        var passed = today.DayNumber - programme.Start.DayNumber;
        if (passed < Days)
            yield break;
        yield return this.Found(
            Level.Warning,
            client.Id,
            programme.At,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{client.Name}'s programme began on {programme.Start.Iso()}, {passed} days ago, and nothing was ever published "
                    + $"for {client.Name}: by its dates this is week {programme.WeekOf(today)} of {programme.Weeks}."
            ),
            $"If it has not begun, write 'start: {NextDay(client, today).Iso()}', the next day to train on."
        );
    }

    /// <summary>The first from today on, and in no pause, that a session names; where none names a day, that the client
    /// has.</summary>
    private static DateOnly NextDay(Client client, DateOnly today)
    {
        var named = client.Programme.Sessions.Select(s => s.Days).OfType<SessionDays.On>().SelectMany(d => d.Weekdays).ToArray();
        var days = named.Length > 0 ? named : [.. client.Days];
        var first = client.Programme.Pauses.Where(p => p.Has(today)).Select(p => p.Until.AddDays(1)).FirstOrDefault(today);
        return Enumerable.Range(0, Days).Select(first.AddDays).FirstOrDefault(d => days.Contains(d.DayOfWeek), first);
    }
}
