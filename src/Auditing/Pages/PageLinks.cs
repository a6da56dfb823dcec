using Gradus.Planning;

namespace Gradus.Auditing;

internal static class PageLinks
{
    /// <summary>Whether a link leads to that page of the site, in the folder or, as a fragment, where all pages are
    /// one.</summary>
    public static bool Lead(string address, string path) =>
        address == path || (address.StartsWith('#') && address[1..] == PageId.Page(path));
}
