using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class LockWrong : ISiteRule
{
    private const string Again = "Publish the site again.";

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        if (site.Lock is not { } seen)
            yield break;
        if (seen.Html != LockPage.Of(plan.Words, seen.Inside))
            yield return Wrong("The page that asks for the passphrase is not as Gradus writes it.");
        foreach (var policy in seen.Policies.Select(p => new ContentPolicy(p.Text)))
        {
            foreach (var fault in policy.Faults(isInOne: true))
                yield return Wrong($"The policy of the page that asks for the passphrase {fault}.");
            if (site.Pages.SelectMany(p => p.Policy.Inline).Any(part => !policy.Covers(part)))
                yield return Wrong(
                    "The page that asks for the passphrase lets a script or a style of the locked page do nothing."
                );
        }

        if (seen.Policies.Count != 1)
            yield return Wrong("The page that asks for the passphrase has no policy that keeps the network out.");
        foreach (var name in new ClientNames([plan.ClientName]).In(seen.Html).Concat(site.Names.In(seen.Html)).Distinct())
            yield return Wrong($"The page that asks for the passphrase names {name}, and anybody can read it.");

        Finding Wrong(string message) => this.Wrong(plan, LockSeen.At, message, Again);
    }
}
