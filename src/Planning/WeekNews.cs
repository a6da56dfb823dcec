namespace Gradus.Planning;

/// <summary>Plan → what is other in each week than in the one before.</summary>
public static class WeekNews
{
    /// <summary>The exercises of the programme's sessions that begin in that week, or whose dose is another; null where there are
    /// none, and in the first week, where everything is new.</summary>
    public static string? Of(Plan plan, int week)
    {
        var words = plan.Words;
        var changed = plan
            .Sessions.Where(s => s.InsteadOf is null && s.AllWeeks.First() < week)
            .SelectMany(s => s.Uses)
            .Where(u => u.Doses.Any(d => d.Weeks[0] == week))
            .Select(u => u.Weeks.First() == week ? words.Say("begins-now", ("exercise", u.Title)) : u.Title)
            .Distinct(StringComparer.Ordinal)
            .ToArray();
        return changed.Length == 0 ? null : words.Say("new-this-week", ("exercises", words.Joined(changed, "comma")));
    }
}
