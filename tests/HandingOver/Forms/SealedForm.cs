using System.Text;
using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

/// <summary>A fourth form, as somebody would add one: a page with a seal before it.</summary>
internal sealed class SealedForm : IForm
{
    public const string Seal = "sealed\n";

    public string Word => "sealed";

    public string Help => "as one sealed page";

    public Rendition Takes => Rendition.OneFile;

    public string Ending => ".sealed";

    public PublicationResult Write(Site site, TargetFolder target)
    {
        var place = Path.Combine(target.Root, site.Client.Text + Ending);
        var page = Seal + site.Pages.Single().Html;
        File.WriteAllText(place, page);
        return new(site.Client, place, true, [site.Pages.Single().Path], [], [], 1, Encoding.UTF8.GetByteCount(page));
    }

    public bool Stands(string place, ClientId client) => File.Exists(place);

    public string? HashOf(string place) => File.Exists(place) ? TextHash.Whole(File.ReadAllText(place)) : null;

    public Site Read(string place, ClientId client) =>
        new(client, [new Page("all-pages.html", File.ReadAllText(place)[Seal.Length..])], []);

    public string Said(PublicationResult result) => $"sealed: {result.Place}";
}
