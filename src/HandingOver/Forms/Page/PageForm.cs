using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.HandingOver;

/// <summary>One page that holds all others and needs no other file.</summary>
public sealed class PageForm : IForm
{
    /// <summary>What every such page says of its first part.</summary>
    private const string Mark = $"{PageData.Page}=\"{PagePath.Home}\"";

    public string Word => "file";

    public string Help => "as one page that needs no other file";

    public Rendition Takes => Rendition.OneFile;

    public string Ending => PagePath.Ending;

    public PublicationResult Write(Site site, TargetFolder target)
    {
        var places = Places.Of(target.Root, site.Client, Ending);
        var page = site.Pages.Single();
        var bytes = Encoding.UTF8.GetBytes(page.Html);
        Series<SiteFile> files = [new(page.Path, bytes)];
        return DiskTrouble.Writing(places.Site, () =>
        {
            target.RefuseVanished();
            MarkedPage.RefuseOther(places.Site, "a whole site", Mark, PublishedSite.LargestWhole);
            if (NewFile.Stands(places, bytes))
                return PublicationResult.Of(site, places, false, new([], files, []));
            places.Replace(() => NewFile.Build(places, bytes), NewFile.Put);
            return PublicationResult.Of(site, places, true, new(files, [], []));
        });
    }

    /// <summary>Whether a page that holds a whole site stands there, whoever's it is.</summary>
    public bool Stands(string place, ClientId client) => MarkedPage.Stands(place, Mark, PublishedSite.LargestWhole);

    public string? HashOf(string place) => SiteHash.OfFile(place);

    /// <summary>The site that is one page, called as it is in any other form.</summary>
    /// <exception cref="HandOverException">The page is not there or cannot be read, is too large, or is not UTF-8.</exception>
    public Site Read(string place, ClientId client) =>
        DiskTrouble.Reading(place, () =>
            new FileInfo(place).Length <= PublishedSite.LargestWhole
                ? PublishedSite.Of(place, client, [new SiteFile(PagePath.AllPages, File.ReadAllBytes(place))])
                : throw new HandOverException(
                    $"'{place}' is larger than {PublishedSite.LargestWhole / PublishedSite.MiB} MiB.",
                    "Publish the site again."
                )
        );

    public string Said(PublicationResult result) =>
        $"one page, {(result.Changed ? "new or changed" : "nothing changed")}: {result.Place}";
}
