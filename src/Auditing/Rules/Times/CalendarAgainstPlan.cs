using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class CalendarAgainstPlan : ISiteRule
{
    private static readonly string[] Frame = ["BEGIN", "END", "VERSION", "PRODID", "CALSCALE"];

    /// <summary>What every session says once, whether it has an hour or the whole day.</summary>
    private static readonly string[] Owed = ["UID", "DTSTAMP", "SUMMARY", "DESCRIPTION"];

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        if (site.Texts.FirstOrDefault(t => t.Path == PagePath.Calendar) is not { } file)
        {
            if (plan.Dates.Count > 0)
                yield return this.Wrong(
                    plan,
                    Location.Whole(PagePath.Calendar),
                    "The calendar is missing, and the plan has fixed days.",
                    "Hand the site over with its calendar."
                );
            yield break;
        }

        var calendar = CalendarSeen.Of(file.Text);
        if (calendar.Events.Count != plan.Dates.Count)
            yield return this.Wrong(
                plan,
                Location.Whole(file.Path),
                $"Sessions in the calendar: {calendar.Events.Count}; in the plan: {plan.Dates.Count}.",
                "Write one for each session on a fixed day, and the day of measuring again."
            );
        if (
            calendar.Around.FirstOrDefault(l =>
                !Frame.Contains(l.Name) || l.Name is "BEGIN" or "END" && l.Value != "VCALENDAR"
            ) is
            { } foreign
        )
            yield return this.Wrong(
                plan,
                new(file.Path, foreign.Number, 1),
                $"The calendar says {foreign.Name} outside its sessions, which is not in the plan.",
                "Write nothing but the sessions."
            );
        foreach (var (date, seen) in plan.Dates.Zip(calendar.Events))
        {
            if (Fault(date, seen, plan.Edition - 1) is { } fault)
            {
                yield return this.Wrong(
                    plan,
                    new(file.Path, seen.Line, 1),
                    fault,
                    "Write each session as the plan has it, in its order."
                );
                yield break;
            }
        }
    }

    private static string? Fault(PlannedDate date, CalendarEvent seen, int revision)
    {
        var start = date.Start is { } instant
            ? instant.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture)
            : date.Date.ToString("yyyyMMdd", CultureInfo.InvariantCulture);
        if (seen["DTSTART"] != start)
            return $"A session begins at {seen["DTSTART"]}; in the plan it is {start}.";
        if (date.Start is not null && IsoSeconds.Read(seen["DURATION"]) != date.Length)
            return $"The session of {start} takes {seen["DURATION"]}; in the plan it is {date.Length.ToIsoDuration()}.";
        if (seen["SUMMARY"] != date.Title || seen["DESCRIPTION"] != date.Note)
            return $"The session of {start} is called \"{seen["SUMMARY"]}\" and says \"{seen["DESCRIPTION"]}\"; the "
                + $"plan's words are \"{date.Title}\" and \"{date.Note}\".";
        if (seen["UID"] != date.Uid)
            return $"The session of {start} has another name for calendars than in the plan.";
        if (revision > 0 && seen["SEQUENCE"] != revision.ToString(CultureInfo.InvariantCulture))
            return $"The session of {start} is revision \"{seen["SEQUENCE"]}\" for calendars; in the plan it is {revision}.";
        var owed = Owed.Concat(revision > 0 ? ["SEQUENCE"] : [])
            .Concat(date.Start is null ? ["DTSTART;VALUE=DATE"] : ["DTSTART", "DURATION"])
            .ToHashSet(StringComparer.Ordinal);
        var more = seen
            .Lines.Select(l => l.Parameters.Length == 0 ? l.Name : $"{l.Name};{l.Parameters}")
            .FirstOrDefault(said => !owed.Remove(said));
        return more is not null ? $"The session of {start} says {more}, which is not in the plan."
            : owed.Count > 0 ? $"The session of {start} does not say {owed.Min(StringComparer.Ordinal)}."
            : null;
    }
}
