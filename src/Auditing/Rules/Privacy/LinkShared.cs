using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class LinkShared : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice)
    {
        var linked = practice.Clients.Where(c => c.Link is not null).GroupBy(c => c.Link?.Name, StringComparer.Ordinal);
        foreach (var same in linked.Where(same => same.Count() > 1))
        foreach (var client in same)
            yield return this.Found(
                Level.Error,
                client.Id,
                client.Link?.At ?? client.At,
                $"{string.Join(" and ", same.Select(c => c.Name))} have the same link: each would read the other's pages.",
                $"Delete the {SiteLink.File} of the one who was copied from the other; publishing gives a new link.",
                client.Link?.Name.Length ?? 1
            );
    }
}
