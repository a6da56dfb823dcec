using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class LinkBrokenOnPage : IToldOnceRule
{
    private const string Help =
        "Let each link lead to what it is called: a page of this site, or an address that the practice or its coach gives.";

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var names = site.Asked(plan).LinkNames;
        foreach (var page in site.Pages)
        {
            foreach (var link in page.Links)
                if ((Fault(page, link.Address, site) ?? Misnamed(page, link, site, names)) is { } message)
                    yield return this.Found(Level.Error, plan.Client, link.At, message, Help);
            foreach (var (number, text) in page.Spoken.Planned)
                if (Missing(text, page.Lines[number]) is { } address)
                    yield return this.Found(
                        Level.Error,
                        plan.Client,
                        page.Lines[number].At,
                        $"There is no link to '{address}' here, so nobody can press it.",
                        "Show the text as the plan has it, with its links."
                    );
        }
    }

    /// <summary>Where the first link leads that a text should have and its line has not; null where it has all.</summary>
    private static string? Missing(Wording.Line text, TextLine line)
    {
        foreach (var address in text.Leads)
            if (!line.Leads.Contains(address))
                return address;
        return null;
    }

    /// <summary>What is wrong with where a link leads; null where there is such a place.</summary>
    private static string? Fault(PageSeen page, string address, SiteSeen site)
    {
        if (Uri.TryCreate(address, UriKind.Absolute, out var uri) && !address.StartsWith('/'))
            return uri.Scheme is "https" or "mailto" or "tel" || IsCalendar(address, site)
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

    /// <summary>What is wrong with what a link is called.</summary>
    private static string? Misnamed(PageSeen page, LinkSeen link, SiteSeen site, ILookup<string, string> names)
    {
        var place = Place(page, link.Address, site);
        return names[place].Contains(link.Text, StringComparer.Ordinal) ? null
            : names.Contains(place) ? $"A link leads to '{link.Address}', and says '{link.Text}'."
            : $"A link leads to '{link.Address}', which is nowhere in this client's plan.";
    }

    /// <summary>Where a link would lead if every page were a file of its own.</summary>
    private static string Place(PageSeen page, string address, SiteSeen site)
    {
        if (IsCalendar(address, site))
            return PagePath.Calendar;
        if (!site.IsInOne || !address.StartsWith('#'))
            return address;
        var here = "#" + PageId.Page(page.Path) + "-";
        return site.Pages.FirstOrDefault(p => PageLinks.Lead(address, p.Path))?.Path
            ?? (address.StartsWith(here, StringComparison.Ordinal) ? "#" + address[here.Length..] : address);
    }

    private static bool IsCalendar(string address, SiteSeen site) =>
        site.IsInOne && address.StartsWith(SiteSeen.CalendarData, StringComparison.Ordinal);
}
