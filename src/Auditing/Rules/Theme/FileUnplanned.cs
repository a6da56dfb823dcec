using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class FileUnplanned : ISiteRule
{
    /// <summary>What a page may ask for. A file that can be run is none of it.</summary>
    private static readonly string[] Endings =
    [
        ".css",
        ".js",
        ".svg",
        ".png",
        ".jpg",
        ".jpeg",
        ".webp",
        ".gif",
        ".mp4",
        ".webm",
        ".vtt",
        ".webmanifest",
    ];

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var asked = site
            .Pages.SelectMany(p => p.Loads)
            .Select(l => l.Address.Split('#')[0])
            .Where(a => Endings.Any(e => a.EndsWith(e, StringComparison.OrdinalIgnoreCase)))
            .Concat(BuiltScript.OfSites.Select(s => s.Path))
            .Concat([PagePath.FileList, PagePath.Manifest, PagePath.Calendar, PagePath.AllPages])
            .Concat(site.Pages.Select(p => p.Path))
            .ToHashSet(StringComparer.Ordinal);
        return site
            .Files.Where(file => !site.IsInOne && !asked.Contains(file))
            .Order(StringComparer.Ordinal)
            .Select(file =>
                this.Found(
                    Level.Error,
                    plan.Client,
                    Location.Whole(file),
                    $"No page of {plan.ClientName} asks for '{file}'.",
                    "Publish the site again, which takes it away; what is in a client's folder is opened some day."
                )
            );
    }
}
