using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class PastWeekChanged : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var (programme, key) = (client.Programme, CourseKey.Of(client));
        if (training.Refusals.Count > 0 || client.Editions.LastOrDefault(e => e.Content.Programme == key) is not { } edition)
            yield break;
        var over = Math.Min(Over(client, today), Math.Min(programme.Weeks, edition.Content.Weeks));
        foreach (var changed in PastWeeks.Of(edition.Content.Sessions, EditionContents.SessionsOf(training, programme), over))
        {
            var use = training.Uses.FirstOrDefault(u => u.Session == changed.Session + 1 && u.Exercise.Id == changed.Exercise);
            var session = programme.AllSessions[changed.Session];
            yield return this.Found(
                Level.Error,
                client.Id,
                use?.At ?? session.At,
                $"{(changed.Weeks.Count == 1 ? "Week" : "Weeks")} {string.Join(", ", changed.Weeks)} of '{session.Name}' "
                    + $"{(changed.Weeks.Count == 1 ? "is" : "are")} over, and edition {edition.Number} of "
                    + $"{edition.Date.Iso()} asked something else there{(use is null ? "" : " of " + use.Exercise.Id)}.",
                Help(over, programme),
                use?.Exercise.Id.Text.Length ?? 1
            );
        }
    }

    /// <summary>The last week that is over: by the calendar, or because the client has done something of a later one.</summary>
    private static int Over(Client client, DateOnly today)
    {
        var programme = client.Programme;
        var byDay = today < programme.Start ? 0 : programme.WeekOf(today) - 1;
        var key = CourseKey.Of(client);
        var done = client
            .Log.Where(e => e.Outcome is LogOutcome.Done && e.Course == key && e.Day <= today)
            .Select(e => e.Week - 1);
        return done.Append(byDay).Max();
    }

    private static string Help(int over, Programme programme) =>
        over == programme.Weeks
            ? "Put back what was there; write what is new as a programme of its own, with its own title and first day."
            : $"Put back what was there, and write what is new from week {over + 1} on, with by-week, from-week or until-week; "
                + "or begin a programme of its own, with its own title and first day.";
}
