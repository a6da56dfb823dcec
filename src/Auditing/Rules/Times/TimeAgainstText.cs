using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class TimeAgainstText : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        from page in site.Pages
        let exact = new Lazy<HashSet<TimeSeen>>(() => Exact(plan, page))
        from time in page.Times
        let message = Fault(time, exact, plan.Words)
        where message is not null
        select this.Found(
            Level.Error,
            plan.Client,
            time.At,
            message,
            "Write the span as PT, whole seconds, S, or the day as year-month-day, and the same in words beside it."
        );

    /// <summary>Those that must be to the second: of steps and their sum, and of the doses of an exercise. How long a session
    /// takes is said as a person says it.</summary>
    private static HashSet<TimeSeen> Exact(Plan plan, PageSeen page) =>
        plan.Exercises.Any(e => e.Path == page.Path)
            ? [.. page.Times]
            : page.Lists.SelectMany(l => l.Items.SelectMany(i => i.Times).Concat(l.Outside)).ToHashSet();

    private static string? Fault(TimeSeen time, Lazy<HashSet<TimeSeen>> exact, Words words)
    {
        if (time.Span is { } span)
            return time.Text == words.ShortSpan(span) || (time.Text == words.About(span) && !exact.Value.Contains(time))
                ? null
                : $"The time is {time.Machine}, which is {words.ShortSpan(span)}, but the words beside it are \"{time.Text}\".";
        if (DateOnly.TryParseExact(time.Machine, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return time.Text == words.Date(day)
                ? null
                : $"The day is {time.Machine}, which is {words.Date(day)}, but the words beside it are \"{time.Text}\".";
        return $"'{time.Machine ?? "nothing"}' is no time that can be read back; the words beside it are \"{time.Text}\".";
    }
}
