using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class WeekToldWrong : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var course = plan.Course.Attributes();
        foreach (var page in site.Pages)
        {
            var told = page.Shape.Weeks;
            if (
                page.Shape.Scripts.FirstOrDefault(s => s.Source == BuiltScript.Page.Path) is { } script
                && told.Courses.Count != 1
            )
                yield return this.Wrong(
                    plan,
                    script.At,
                    $"This page has the script that finds this week, and {told.Courses.Count} places that tell it the programme.",
                    "Give the page's main part the attributes of site.course; the plain theme does it in top.html."
                );
            foreach (
                var (seen, planned) in told.Courses.SelectMany(c =>
                    c.Attributes.Zip(course).Where(a => a.First != a.Second).Select(a => (c, a.Second))
                )
            )
                yield return this.Wrong(
                    plan,
                    seen.At,
                    $"This page tells its script another {planned.Name} than the plan.",
                    $"Write {planned.Name}=\"{planned.Value}\", as site.course has it."
                );
            foreach (var finding in Figures(plan, page).Concat(Exercises(plan, page)))
                yield return finding;
            foreach (var part in told.Parts.Where(p => !SaysItsWeeks(p, plan)))
                yield return this.Wrong(
                    plan,
                    part.At,
                    $"A part for the weeks '{part.Weeks}' does not begin with these weeks in words, or they are no weeks "
                        + "of the plan.",
                    "Let the part begin with its weeks as the plan words them, so that what a script shows and what "
                        + "stands there are the same."
                );
            foreach (var due in told.Due.Where(d => !IsPlanned(d, plan)))
                yield return this.Wrong(
                    plan,
                    due.At,
                    $"This page tells its script that session '{due.Session}' is due on the weekdays '{due.Weekdays}', "
                        + "which the plan does not say.",
                    "Write the session's own number and days, with the link to its page first."
                );
        }
    }

    /// <summary>What the numbers in a text are in each week.</summary>
    private IEnumerable<Finding> Figures(Plan plan, PageSeen page)
    {
        if (page.Lines.All(l => l.Figures.Count == 0))
            yield break;
        foreach (var line in page.Spoken.Planned.Where(p => page.Lines[p.Line].Figures.Count > 0).GroupBy(p => p.Line))
        {
            var (seen, planned) = (page.Lines[line.Key], line.SelectMany(p => p.Text.Figures).ToSeries());
            if (!seen.Figures.Equals(planned))
                yield return this.Wrong(
                    plan,
                    seen.At,
                    $"A number in this text is \"{seen.Figures.Except(planned).FirstOrDefault() ?? seen.Figures[0]}\" for the "
                        + "script that fills it in week by week; the plan says another.",
                    "Show the coach's text as it is, with the number of each week as it comes."
                );
        }
    }

    /// <summary>In which weeks each exercise of a session is done, and where its dose is taken from.</summary>
    private IEnumerable<Finding> Exercises(Plan plan, PageSeen page)
    {
        var uses = plan.Sessions.FirstOrDefault(s => s.Path == page.Path)?.Uses ?? [];
        foreach (var part in page.Shape.Weeks.Planned.Where(p => !uses.Any(u => Is(u, p))))
            yield return this.Wrong(
                plan,
                part.At,
                $"This page tells its script that '{part.Exercise}' is done in the weeks '{part.Weeks}' and has its dose under "
                    + $"'{part.Letter}', which the plan does not say.",
                $"Write {PageData.Planned} on the article of the exercise as use.planned has it, and {PageData.Dose} in it as "
                    + "use.letter."
            );
        foreach (var doses in page.Shape.Weeks.Doses.Where(d => !uses.Any(u => Is(u, d))))
            yield return this.Wrong(
                plan,
                doses.At,
                $"This page tells its script that the doses of '{doses.Letter}' are those below '{doses.Heading}'.",
                $"Write {PageData.Doses} as use.letter has it, on the rows of that exercise, its letter and title first."
            );
    }

    private static bool Is(PlannedUse use, PlannedSeen seen) =>
        (use.Exercise.Text, WeekData.Numbers(use.Weeks), use.Letter) == (seen.Exercise, seen.Weeks, seen.Letter);

    private static bool Is(PlannedUse use, DosesSeen seen) =>
        use.Letter == seen.Letter && seen.Heading == $"{use.Letter} {use.Title}";

    private static bool SaysItsWeeks(WeekPartSeen part, Plan plan)
    {
        var numbers = part
            .Weeks.Split(' ')
            .Select(n => int.TryParse(n, NumberStyles.None, CultureInfo.InvariantCulture, out var week) ? week : 0)
            .ToSeries();
        if (numbers.Any(n => n < 1 || n > plan.Course.Weeks))
            return false;
        var words = plan.Words.Weeks(numbers);
        return part.Text.StartsWith(words, StringComparison.Ordinal)
            && (part.Text.Length == words.Length || !char.IsDigit(part.Text[words.Length]));
    }

    private static bool IsPlanned(DueSeen due, Plan plan) =>
        int.TryParse(due.Session, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && plan.Sessions.FirstOrDefault(s => s.Number == number) is { } session
        && due.Weekdays == session.WeekdayNumbers()
        && PageLinks.Lead(due.Leads, session.Path);
}
