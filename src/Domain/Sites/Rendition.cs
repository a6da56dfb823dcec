namespace Gradus.Domain;

/// <summary>What a plan is rendered as.</summary>
public enum Rendition
{
    /// <summary>Every page a file of its own, with all that stands beside them.</summary>
    Pages,

    /// <summary>One page that holds all others and needs no other file.</summary>
    OneFile,

    /// <summary>The same page, and the one that asks for the passphrase before it is shown.</summary>
    Locked,
}
