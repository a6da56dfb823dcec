using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Which sites stand in a target. What has the name of one and is none, such as a folder of posters, is not
/// counted.</summary>
internal static class StandingSites
{
    /// <summary>The client's folder, zip and page, as far as they stand, in this order.</summary>
    public static Series<string> Of(ClientId client, string target)
    {
        var folder = Places.Of(target, client).Site;
        var zip = Places.OfZip(target, client).Site;
        var page = Places.OfPage(target, client).Site;
        return
        [
            .. File.Exists(Path.Combine(folder, SiteFile.FrontPage)) ? [folder] : (string[])[],
            .. PublishedZip.IsSiteOf(zip, client) ? [zip] : (string[])[],
            .. PublishedPage.IsSite(page) ? [page] : (string[])[],
        ];
    }

    /// <summary>Every client who has one of these, in ordinal order.</summary>
    public static Series<ClientId> ClientsIn(string target) =>
        Directory
            .EnumerateFileSystemEntries(target)
            .Select(path => Path.GetFileName(path))
            .Select(name =>
                new[] { SiteZip.Ending, PublishedPage.Ending }.FirstOrDefault(e => name.EndsWith(e, StringComparison.Ordinal))
                    is { } ending
                    ? name[..^ending.Length]
                    : name
            )
            .Where(Id.IsValid)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(name => new ClientId(name))
            .Where(client => Of(client, target).Count > 0)
            .ToSeries();
}
