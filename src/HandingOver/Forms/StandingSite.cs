using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>A site as it stands in a target.</summary>
/// <param name="Place">The whole path.</param>
public sealed record StandingSite(IForm Form, ClientId Client, string Place)
{
    /// <summary>Where the client's site stands in a form, if it does.</summary>
    public static StandingSite At(IForm form, ClientId client, string target) => new(form, client, form.PlaceOf(client, target));

    /// <exception cref="HandOverException">It is not there, or cannot be read as such a site.</exception>
    public Site Read() => Form.Read(Place, Client);

    internal static Series<StandingSite> Of(ClientId client, string target, IEnumerable<IForm> forms) =>
        forms.Select(form => At(form, client, target)).Where(site => site.Form.Stands(site.Place, client)).ToSeries();

    /// <summary>Every client of whom a site stands there, in ordinal order. What has the name of one and is none, such as a
    /// folder of posters, is not counted.</summary>
    internal static Series<ClientId> ClientsIn(string target, Series<IForm> forms) =>
        Directory
            .EnumerateFileSystemEntries(target)
            .SelectMany(path => forms.Select(form => Places.ClientOf(Path.GetFileName(path), form.Ending)))
            .OfType<ClientId>()
            .Distinct()
            .OrderBy(client => client.Text, StringComparer.Ordinal)
            .Where(client => Of(client, target, forms).Count > 0)
            .ToSeries();
}
