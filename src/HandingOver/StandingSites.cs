using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Which sites stand in a target. What has the name of one and is none, such as a folder of posters, is not counted.</summary>
internal static class StandingSites
{
    /// <summary>The client's folder and zip, as far as they stand, in this order.</summary>
    public static Series<string> Of(ClientId client, string target)
    {
        var folder = Places.Of(target, client).Site;
        var zip = Places.OfZip(target, client).Site;
        return [.. File.Exists(Path.Combine(folder, SiteFile.FrontPage)) ? [folder] : (string[])[], .. PublishedZip.IsSiteOf(zip, client) ? [zip] : (string[])[]];
    }

    /// <summary>Every client who has one or both, in ordinal order.</summary>
    public static Series<ClientId> ClientsIn(string target) => Directory.EnumerateFileSystemEntries(target)
        .Select(path => Path.GetFileName(path))
        .Select(name => name.EndsWith(SiteZip.Ending, StringComparison.Ordinal) ? name[..^SiteZip.Ending.Length] : name)
        .Where(Id.IsValid)
        .Distinct(StringComparer.Ordinal)
        .Order(StringComparer.Ordinal)
        .Select(name => new ClientId(name))
        .Where(client => Of(client, target).Count > 0)
        .ToSeries();
}
