using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Hands one site over, in one step: whoever looks sees the whole site of before or the whole new one.</summary>
/// <remarks>What is handed over is exactly what was audited: a file that somebody put into a client's folder or zip counts as a
/// change, and is gone once the site is published again.</remarks>
public static class Publication
{
    /// <summary>The target is held for this site only; a publish of several clients opens the target once.</summary>
    /// <param name="form">The usual one where none is given.</param>
    /// <exception cref="HandOverException">It could not be done; the site that stood there still stands whole.</exception>
    public static PublicationResult Write(Site site, string target, IForm? form = null)
    {
        using var folder = TargetFolder.Open(target);
        return (form ?? Forms.All.Usual).Write(site, folder);
    }
}
