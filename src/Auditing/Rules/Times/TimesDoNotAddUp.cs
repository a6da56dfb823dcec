using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class TimesDoNotAddUp : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        plan
            .Sessions.SelectMany(s => Session(plan, site, s))
            .Concat(
                plan.Exercises.SelectMany(e =>
                    Spans(
                        plan,
                        site.Page(e.Path),
                        e.Uses.SelectMany(u => u.Doses).Select(d => d.Seconds),
                        "a dose of this exercise"
                    )
                )
            )
            .Concat(site.Page(PagePath.Weeks) is { } weeks ? InOrder(plan, weeks, [.. Weeks(plan)]) : [])
            .Concat(
                Spans(plan, site.Page(PagePath.Home), plan.Sessions.SelectMany(s => s.Weeks).Select(w => w.Total), "a session")
            );

    /// <summary>Each session and the sum of each week, then where the time of each session goes.</summary>
    private static IEnumerable<Seconds> Weeks(Plan plan) =>
        plan
            .Weeks.Where(w => w.Sessions.Count > 0)
            .SelectMany(w => w.Sessions.Select(s => s.Seconds).Append(w.Total))
            .Concat(
                plan.Sessions.SelectMany(s => s.Weeks)
                    .Select(w => (w.Shares, w.Total))
                    .SelectMany(w => new[] { w.Shares.Work, w.Shares.Rest, w.Shares.Moving, w.Total })
            );

    /// <summary>Exactly those spans, in that order.</summary>
    private IEnumerable<Finding> InOrder(Plan plan, PageSeen page, Seconds[] planned)
    {
        TimeSeen[] shown = [.. page.Times.Where(t => t.Span is not null)];
        var same = shown.Zip(planned).TakeWhile(p => p.First.Span == p.Second).Count();
        if (same == planned.Length && same == shown.Length)
            yield break;
        var at = same < shown.Length ? shown[same].At : page.At;
        yield return this.Wrong(
            plan,
            at,
            same < planned.Length
                ? $"Here {plan.Words.Span(planned[same])} should stand, as in the plan."
                : "Here is a time too many.",
            "Show for each week the time of each session and their sum, then for each session work, rest, moving about "
                + "and all of it."
        );
    }

    private IEnumerable<Finding> Session(Plan plan, SiteSeen site, PlannedSession session)
    {
        if (site.Page(session.Path) is not { } page)
            yield break;
        foreach (var weeks in session.Weeks)
        {
            var lists = page.Lists.Where(l => l.Heading == weeks.Heading).ToArray();
            foreach (var finding in lists.SelectMany(list => List(plan, weeks, list)))
                yield return finding;
            foreach (var second in lists.Skip(1))
                yield return this.Wrong(
                    plan,
                    second.At,
                    $"There is a second list of steps under the heading '{weeks.Heading}'.",
                    "Show one numbered list for each group of weeks."
                );
        }

        // Where a week has no list, another rule says so, and a list under a strange heading may be that week's.
        if (session.Weeks.Any(w => page.Lists.All(l => l.Heading != w.Heading)))
            yield break;
        foreach (var other in page.Lists.Where(l => session.Weeks.All(w => w.Heading != l.Heading)))
            yield return this.Wrong(
                plan,
                other.At,
                $"The list of steps under the heading '{other.Heading}' is not in the plan.",
                "Show one numbered list for each group of weeks, in a section with that heading."
            );
    }

    private IEnumerable<Finding> List(Plan plan, PlannedWeeks weeks, StepList list)
    {
        if (list.Items.FirstOrDefault(i => i.Times.Count != 1) is { } odd)
            yield return this.Wrong(
                plan,
                odd.At,
                $"This step has {odd.Times.Count} times; it must have one.",
                "Write exactly one time element in each item."
            );
        var sum = list.Items.SelectMany(i => i.Times).Sum(t => t.Span?.Value ?? 0);
        if (list.Outside is not [var total])
            yield return this.Wrong(
                plan,
                list.At,
                $"The section '{weeks.Heading}' has {list.Outside.Count} times outside its list; it must have one, the total.",
                "Write the total in one time element beside the list."
            );
        else if (total.Span?.Value != sum)
            yield return this.Wrong(
                plan,
                total.At,
                $"The steps of '{weeks.Heading}' take {sum} seconds together, but the total says "
                    + $"{total.Span?.Value.ToString() ?? "nothing"}.",
                "Write the sum of the steps."
            );
        if (sum != weeks.Total.Value)
            yield return this.Wrong(
                plan,
                list.At,
                $"The steps of '{weeks.Heading}' take {sum} seconds together, but the plan's take {weeks.Total.Value}.",
                "Show every step of the plan once, with its own time."
            );
        else if (FirstOther(weeks, list) is { } other)
            yield return this.Wrong(
                plan,
                other,
                $"In '{weeks.Heading}' this step does not take the time it has in the plan.",
                "Show the steps in the plan's order, each with its own time."
            );
    }

    private static Location? FirstOther(PlannedWeeks weeks, StepList list) =>
        list.Items.Count != weeks.Steps.Count
            ? list.At
            : list
                .Items.Zip(weeks.Steps)
                .FirstOrDefault(p => p.First.Times is [var time, ..] && time.Span != p.Second.Seconds)
                .First?.At;

    /// <summary>Every span on the page must be one of those, and each of those must be there.</summary>
    private IEnumerable<Finding> Spans(Plan plan, PageSeen? page, IEnumerable<Seconds> planned, string what)
    {
        if (page is null)
            yield break;
        var inOrder = planned.ToArray();
        var right = inOrder.ToHashSet();
        foreach (var time in page.Times.Where(t => t.Span is { } span && !right.Contains(span)))
            yield return this.Wrong(
                plan,
                time.At,
                $"'{time.Text}' is not the time of {what} in the plan.",
                "Show the times of the plan."
            );
        if (page.Path == PagePath.Home)
            yield break;
        var shown = page.Times.Where(t => t.Span is not null).ToArray();
        foreach (var missing in right.Where(s => shown.All(t => t.Span != s)).OrderBy(s => s))
            yield return this.Wrong(
                plan,
                page.At,
                $"The time {plan.Words.Span(missing)} of {what} is not on its page.",
                "Show the time of every dose in a time element."
            );
        if (
            shown.Length == inOrder.Length
            && shown.Zip(inOrder).FirstOrDefault(p => p.First.Span != p.Second).First is { } other
            && shown.All(t => right.Contains(t.Span ?? default))
        )
            yield return this.Wrong(
                plan,
                other.At,
                $"'{other.Text}' is the time of another dose than the one it stands beside.",
                "Show the doses in the plan's order, each with its own time."
            );
    }
}
