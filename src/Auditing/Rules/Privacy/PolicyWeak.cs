using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class PolicyWeak : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        site
            .Pages.SelectMany(page =>
                Faults(page, site.IsInOne)
                    .Select(fault =>
                        this.Found(
                            Level.Error,
                            plan.Client,
                            fault.At,
                            fault.Said,
                            "Write the policy that Gradus makes for the page (site.policy) first in its head, and let "
                                + "nothing in beside it."
                        )
                    )
            )
            .Distinct();

    private static IEnumerable<(Location At, string Said)> Faults(PageSeen page, bool isInOne)
    {
        var policies = page.Policy.Policies.Select(policy => (Seen: policy, Read: new ContentPolicy(policy.Text))).ToArray();
        if (policies.Length == 0)
            yield return (page.At, "This page has no policy that keeps the network out.");
        foreach (var (policy, read) in policies)
        {
            if (!policy.IsInTime)
                yield return (
                    policy.At,
                    "This page's policy comes too late: it must stand in the head, before anything that loads."
                );
            foreach (var fault in read.Faults(isInOne))
                yield return (policy.At, $"This page's policy {fault}.");
        }

        foreach (var part in policies.Length == 0 ? [] : page.Policy.Inline)
            if (!policies.All(policy => policy.Read.Covers(part)))
                yield return (
                    part.At,
                    $"This page's policy has no hash of the {part.Element} that stands here, so it does nothing."
                );
    }
}
