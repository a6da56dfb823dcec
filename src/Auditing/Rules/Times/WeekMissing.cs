using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class WeekMissing : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        plan
            .Sessions.SelectMany(s => site.Page(s.Path) is { } page ? Session(plan, page, s) : [])
            .Concat(plan.Exercises.SelectMany(e => site.Page(e.Path) is { } page ? Exercise(plan, page, e) : []));

    /// <summary>Where a list stands under a heading that is not the plan's, it is the one to look at.</summary>
    private IEnumerable<Finding> Session(Plan plan, PageSeen page, PlannedSession session)
    {
        var strange = page.Lists.FirstOrDefault(l => session.Weeks.All(w => w.Heading != l.Heading));
        return session
            .Weeks.Where(weeks => page.Lists.All(l => l.Heading != weeks.Heading))
            .Select(weeks =>
                this.Wrong(
                    plan,
                    strange?.At ?? page.At,
                    "There is no list of steps for "
                        + $"'{weeks.Heading}'{(strange is null ? "" : $"; here is one under '{strange.Heading}'")}.",
                    "Show one numbered list for each group of weeks, in a section with that heading."
                )
            );
    }

    private IEnumerable<Finding> Exercise(Plan plan, PageSeen page, PlannedExercise exercise) =>
        from planned in exercise
            .Uses.SelectMany(u => u.Doses.Select(d => (Use: u, Weeks: plan.Words.Weeks(d.Weeks))))
            .GroupBy(d => d.Weeks, d => d.Use.SessionName, StringComparer.Ordinal)
        from session in planned.Skip(page.Shown.Sum(l => WholeWords.Places(l.Text, planned.Key).Count()))
        select this.Wrong(
            plan,
            page.At,
            $"'{planned.Key}' of the session '{session}' is not on this page.",
            "Show the dose of every week, and beside it the weeks that it is for."
        );
}
