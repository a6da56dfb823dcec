using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>What handing over one client's site came to, as a folder or as a zip. All paths are inside the site, with <c>/</c>
/// between folders, in ordinal order.</summary>
/// <param name="Place">The whole path of the folder or zip that is handed over.</param>
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
);
