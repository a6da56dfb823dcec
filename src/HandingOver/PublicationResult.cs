using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>What handing over one client's site came to. All paths are inside the site, with <c>/</c> between folders, in ordinal order.</summary>
/// <param name="Written">Files that are new or other than before.</param>
/// <param name="Untouched">Files that stood there with the same bytes; they are the same files on the disk as before.</param>
/// <param name="Removed">What stood in the folder and is no part of the site; a folder ends in <c>/</c>.</param>
/// <param name="Pages">How many pages the site has.</param>
/// <param name="Bytes">The size of the whole site.</param>
public sealed record PublicationResult(
    ClientId Client, Series<string> Written, Series<string> Untouched, Series<string> Removed, int Pages, long Bytes)
{
    /// <summary>False when the folder already was this site, byte for byte; then nothing at all was written.</summary>
    public bool Changed => Written.Count + Removed.Count > 0;
}
