using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class HeadingSkipped : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) => site.Pages.SelectMany(page => On(plan, page));

    private IEnumerable<Finding> On(Plan plan, PageSeen page)
    {
        var headings = page.Shape.Headings;
        if (headings.All(h => h.Level != 1))
            yield return Said(plan, page.At, "This page has no heading of level 1.", "Write the page's own title as h1.");
        foreach (var second in headings.Where(h => h.Level == 1).Skip(1))
            yield return Said(
                plan,
                second.At,
                $"'{second.Text}' is a second heading of level 1.",
                "Use h1 once, for the page's own title, and h2 for its parts."
            );
        foreach (var (before, heading) in headings.Zip(headings.Skip(1)).Where(pair => pair.Second.Level > pair.First.Level + 1))
            yield return Said(
                plan,
                heading.At,
                $"'{heading.Text}' is a heading of level {heading.Level}, but the one before it, '{before.Text}', is of "
                    + $"level {before.Level}.",
                $"Make it h{before.Level + 1}: people who hear the page go from heading to heading."
            );
    }

    private Finding Said(Plan plan, Location at, string message, string help) =>
        this.Found(Level.Warning, plan.Client, at, message, help);
}
