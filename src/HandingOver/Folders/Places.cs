using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Where one form of one client's site stands, folder, zip or page, all beside each other in the target.</summary>
/// <param name="Site">What the client is given.</param>
/// <param name="New">Being built, or about to be removed: nobody relies on it, and it may be cut off anywhere.</param>
/// <param name="Old">The folder of before, between two renames; always whole. A zip needs none: it is put in place by
/// one.</param>
internal sealed record Places(string Site, string New, string Old)
{
    /// <summary>How every name begins that Gradus keeps for itself in a target.</summary>
    public const string Mark = ".gradus-";

    public const string NewMark = Mark + "new-";

    public const string OldMark = Mark + "old-";

    /// <summary>Of the client's folder.</summary>
    public static Places Of(string target, ClientId client) => Named(target, client.Text);

    /// <summary>Of the client's zip. An id has no dot, so no folder of another client is called like it.</summary>
    public static Places OfZip(string target, ClientId client) => Named(target, client.Text + SiteZip.Ending);

    /// <summary>Of the client's one page that holds all others.</summary>
    public static Places OfPage(string target, ClientId client) => Named(target, client.Text + PublishedPage.Ending);

    private static Places Named(string target, string name) =>
        new(Path.Combine(target, name), Path.Combine(target, NewMark + name), Path.Combine(target, OldMark + name));
}
