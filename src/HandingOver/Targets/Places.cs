using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Where one form of one client's site stands, all forms beside each other in the target.</summary>
/// <param name="Site">What the client is given.</param>
/// <param name="New">Being built, or about to be removed: nobody relies on it, and it may be cut off anywhere.</param>
/// <param name="Old">The site of before, between two renames; always whole. A file needs none: it is put in place by
/// one.</param>
internal sealed record Places(string Site, string New, string Old)
{
    /// <summary>How every name begins that Gradus keeps for itself in a target.</summary>
    public const string Mark = ".gradus-";

    public const string NewMark = Mark + "new-";

    public const string OldMark = Mark + "old-";

    /// <param name="ending">That of the form.</param>
    public static Places Of(string target, ClientId client, string ending = "") => In(target, client.Text + ending);

    public static Places In(string folder, string name) =>
        new(Path.Combine(folder, name), Path.Combine(folder, NewMark + name), Path.Combine(folder, OldMark + name));

    /// <summary>The client whose place has that name in the form with that ending; null where it is nobody's.</summary>
    public static ClientId? ClientOf(string name, string ending) =>
        name.EndsWith(ending, StringComparison.Ordinal) && Id.IsValid(name[..^ending.Length])
            ? new(name[..^ending.Length])
            : null;

    /// <summary>Builds what is new and puts it in the place of the site.</summary>
    public void Replace(Action build, Action<Places> put)
    {
        try
        {
            build();
            put(this);
        }
        finally
        {
            // After the exchange this is the folder of before, after a failure what is unfinished.
            Leftovers.TryRemove(New);
        }
    }
}
