using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class StepAltered : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteReading site) =>
        from session in plan.Sessions
        let page = site.Page(session.Path)
        where page is not null
        from weeks in session.Weeks
        from list in page.Lists
        where list.Heading == weeks.Heading && list.Items.Count == weeks.Steps.Count
        from pair in list.Items.Zip(weeks.Steps)
        where !Says(pair.First.Text, pair.Second, plan.Words)
        select new Finding(
            RuleId.Of(GetType()), Level.Error, plan.Client, pair.First.At,
            $"This step says \"{pair.First.Text}\"; in the plan it is \"{Expected(pair.Second, plan.Words)}\".",
            "Show each step's words, its detail and its time, and nothing else.");

    private static bool Says(string text, Step step, Words words) => string.Equals(text, Expected(step, words), StringComparison.Ordinal);

    private static string Expected(Step step, Words words) => Spacing.Collapse($"{step.Words} {step.Detail} {words.Span(step.Seconds)}");
}
