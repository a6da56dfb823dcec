using System.Globalization;
using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What was asked of a client on a day that is past: by the edition of which the log tells, and where none on record
/// says it by the programme as it is written now.</summary>
public static class AskedThen
{
    /// <summary>The dose of an exercise in the week of that entry, in the session of that name or the first that has it; null
    /// where nobody knows.</summary>
    /// <param name="session">The name of a session.</param>
    public static SettledDose? Of(Client client, Training training, LogEntry entry, ExerciseId exercise, string session)
    {
        if (EditionOf(client, entry) is { } edition && Of(edition.Content, entry, exercise, session) is { } asked)
            return asked;
        var isCurrent = entry.Course is { } course ? course == CourseKey.Of(client) : client.Programme.Start <= entry.Day;
        if (!isCurrent)
            return null;
        var uses = training.Uses.Where(u => u.Exercise.Id == exercise && u.Weeks.Any(w => w.Week == entry.Week)).ToArray();
        return uses.OrderByDescending(u => client.Programme.AllSessions[u.Session - 1].Name == session)
            .FirstOrDefault()
            ?.DoseIn(entry.Week);
    }

    private static SettledDose? Of(EditionContent content, LogEntry entry, ExerciseId exercise, string session)
    {
        var asked =
            from written in content.Sessions
            from use in written.Uses
            where use.Exercise == exercise
            let dose = use.In(entry.Week)?.Asked.Value
            where dose is not null
            orderby written.Name == session descending
            select dose;
        return asked.FirstOrDefault();
    }

    /// <summary>The one that the entry names by its number, or that was the latest on its day; null where there is none of that
    /// programme.</summary>
    private static Edition? EditionOf(Client client, LogEntry entry)
    {
        var course = entry.Course ?? CourseKey.Of(client);
        var own = client.Editions.Where(e => e.Content.Programme == course).ToArray();
        return own.FirstOrDefault(e => e.Number.ToString(CultureInfo.InvariantCulture) == entry.Edition)
            ?? own.LastOrDefault(e => e.Date <= entry.Day);
    }
}
