using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class LinkBrokenOnPage : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        from page in site.Pages
        from link in page.Links
        let message = Fault(page, link.Address, site)
        where message is not null
        select this.Found(
            Level.Error,
            plan.Client,
            link.At,
            message,
            "Lead to a page of this site, or to an address that begins with https, mailto or tel."
        );

    private static string? Fault(PageSeen page, string address, SiteSeen site)
    {
        if (Uri.TryCreate(address, UriKind.Absolute, out var uri) && !address.StartsWith('/'))
            return
                uri.Scheme is "https" or "mailto" or "tel"
                || (site.IsInOne && address.StartsWith(SiteSeen.CalendarData, StringComparison.Ordinal))
                ? null
                : $"A link leads to '{address}', which is no place for a client to go.";
        var parts = address.Split('#', 2);
        if (parts[0].Length > 0 && !site.Files.Contains(parts[0]))
            return $"A link leads to '{address}', but this site has no such page.";
        var fragment = parts.Length > 1 ? parts[1] : "";
        return
            fragment.Length == 0
            || (parts[0].Length == 0 ? page : site.Page(parts[0])) is { } target
                && target.Ids.Contains(Uri.UnescapeDataString(fragment))
            ? null
            : $"A link leads to '{address}', but that page has no such place.";
    }
}
