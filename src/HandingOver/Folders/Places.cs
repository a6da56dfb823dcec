using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Where one client's folders stand, all beside each other in the target.</summary>
/// <param name="Site">What the client is given.</param>
/// <param name="New">Being built, or about to be removed: nobody relies on it, and it may be cut off anywhere.</param>
/// <param name="Old">The site of before, between two renames; always whole.</param>
internal sealed record Places(string Site, string New, string Old)
{
    /// <summary>How every name begins that Gradus keeps for itself in a target.</summary>
    public const string Mark = ".gradus-";

    public const string NewMark = Mark + "new-";

    public const string OldMark = Mark + "old-";

    public static Places Of(string target, ClientId client) => new(
        Path.Combine(target, client.Text), Path.Combine(target, NewMark + client.Text), Path.Combine(target, OldMark + client.Text));
}
