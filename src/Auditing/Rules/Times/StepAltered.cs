using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class StepAltered : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        foreach (var pair in site.Steps.Where(p => p.OtherSide is null))
        {
            if (pair.Seen.Text != pair.Expected)
                yield return Said(
                    pair,
                    $"This step says \"{pair.Seen.Text}\"; in the plan it is \"{pair.Expected}\".",
                    "Show each step's words, its detail and its time, and nothing else."
                );

            // A theme may do without the script that reads these; then it writes none of them.
            if (pair.Seen.Data.Length > 0 && pair.Seen.Data != pair.Step.Data())
                yield return Said(
                    pair,
                    $"This step tells the script that leads through the session {PageData.Step}=\"{pair.Seen.Data}\"; in "
                        + $"the plan it is \"{pair.Step.Data()}\".",
                    "Write step.data as it is."
                );
        }

        Finding Said(StepPair pair, string message, string help) =>
            this.Found(Level.Error, plan.Client, pair.Seen.At, message, help);
    }
}
