using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class StepAltered : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteReading site) =>
        from pair in StepPair.Of(plan, site)
        where pair.OtherSide is null && pair.Seen.Text != pair.Expected
        select new Finding(
            RuleId.Of(GetType()), Level.Error, plan.Client, pair.Seen.At,
            $"This step says \"{pair.Seen.Text}\"; in the plan it is \"{pair.Expected}\".",
            "Show each step's words, its detail and its time, and nothing else.");
}
