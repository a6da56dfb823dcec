using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>What handing over one client's site came to. All paths are inside the site, with <c>/</c>
/// between folders, in ordinal order.</summary>
/// <param name="Place">The whole path of what is handed over.</param>
/// <param name="Changed">False when the site stood there already, byte for byte; then nothing at all was written. A zip that
/// differs in something other than its files, such as their dates, is changed with no file written or removed.</param>
/// <param name="Written">Files that are new or other than before.</param>
/// <param name="Untouched">Files that stood there with the same bytes; in a folder they are the same files on the disk as
/// before.</param>
/// <param name="Removed">What stood there and is no part of the site; a folder ends in <c>/</c>.</param>
/// <param name="Pages">How many pages the site has.</param>
/// <param name="Bytes">The size of all its files together; a zip of them is a little larger.</param>
public sealed record PublicationResult(
    ClientId Client,
    string Place,
    bool Changed,
    Series<string> Written,
    Series<string> Untouched,
    Series<string> Removed,
    int Pages,
    long Bytes
)
{
    /// <summary>What opens it, where Gradus made that for it: to be shown once. It is in no file.</summary>
    public Passphrase? Passphrase { get; init; }

    /// <summary>How much of a site of several files is new: "12 pages, 3 files new or changed".</summary>
    internal string InFiles => $"{Pages} pages, {(Changed ? $"{Written.Count} files new or changed" : "nothing changed")}";

    /// <summary>What stands there was handed over before, and is as it was then: nothing was looked at closer.</summary>
    public static PublicationResult Unchanged(ClientId client, string place, StandingForm standing) =>
        new(client, place, false, [], [], [], standing.Pages, standing.Bytes);

    internal static PublicationResult Of(Site site, Places places, bool changed, Changes changes) =>
        new(
            site.Client,
            places.Site,
            changed,
            changes.Written.Select(file => file.Path).ToSeries(),
            changes.Untouched.Select(file => file.Path).ToSeries(),
            changes.Removed,
            site.Pages.Count,
            changes.Written.Concat(changes.Untouched).Sum(file => (long)file.Bytes.Length)
        );
}
