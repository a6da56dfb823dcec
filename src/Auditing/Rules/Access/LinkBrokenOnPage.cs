using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class LinkBrokenOnPage : IToldOnceRule
{
    /// <summary>Emergency numbers have three digits; what is shorter counts something else.</summary>
    private const int ShortestNumber = 3;

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        from page in site.Pages
        from link in page.Links
        let message = Fault(page, link.Address, site) ?? Other(link)
        where message is not null
        select this.Found(
            Level.Error,
            plan.Client,
            link.At,
            message,
            "Lead to a page of this site, or to an address that begins with https, mailto or tel."
        );

    /// <summary>A number that is pressed is the number that is read, and so is an address to write to.</summary>
    private static string? Other(LinkSeen link)
    {
        var (called, read) = (Digits(link.Address), Digits(link.Text));
        return link.Address.StartsWith("tel:", StringComparison.OrdinalIgnoreCase)
            && read.Length >= ShortestNumber
            && called != read
                ? $"A link calls '{called}', and says '{read}'."
            : link.Address.StartsWith("mailto:", StringComparison.OrdinalIgnoreCase)
            && link.Text.Contains('@', StringComparison.Ordinal)
            && link.Address["mailto:".Length..] != link.Text
                ? $"A link writes to '{link.Address["mailto:".Length..]}', and says '{link.Text}'."
            : null;
    }

    private static string Digits(string text) => string.Concat(text.Where(char.IsAsciiDigit));

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
