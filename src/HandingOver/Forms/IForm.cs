using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>A form in which sites are handed over and read back. Each stands at a place of its own in a target, so that all of a
/// client's may stand beside each other.</summary>
public interface IForm
{
    /// <summary>Its word on the command line.</summary>
    string Word { get; }

    /// <summary>What the help says of it, behind "How each site is handed over:".</summary>
    string Help { get; }

    /// <summary>The rendition that it packs.</summary>
    Rendition Takes { get; }

    /// <summary>What follows the client's id in the name of its place, from the dot on; empty where the place is called by the id
    /// alone. An id has no dot, so no form stands where another client's does.</summary>
    string Ending { get; }

    /// <summary>Where a client's site stands in a target, the whole path.</summary>
    string PlaceOf(ClientId client, string target) => Places.Of(target, client, Ending).Site;

    /// <summary>Whether what stands there can be read back; else it can only be known again by its bytes.</summary>
    bool IsReadable => true;

    /// <summary>Whether what stands there stays where it was made from the same.</summary>
    bool MayStand => true;

    /// <summary>Hands over one site in one step: whoever looks sees the whole site of before or the whole new one. Sites of
    /// different clients may be written at the same time.</summary>
    /// <exception cref="HandOverException">It could not be done; the site that stood there still stands whole.</exception>
    PublicationResult Write(Site site, TargetFolder target);

    /// <summary>Whether a site of the client stands there in this form. What only has its name, or cannot be read, is
    /// none.</summary>
    bool Stands(string place, ClientId client);

    /// <summary>A hash of all that stands there, by which a change of any byte, name or file is seen; null where there is nothing
    /// of this form, or it cannot be read whole.</summary>
    string? HashOf(string place);

    /// <summary>The site that stands there, which is not trusted.</summary>
    /// <exception cref="HandOverException">It is not there, cannot be read, is too large, or is no site in this form.</exception>
    Site Read(string place, ClientId client);

    /// <summary>What the command says of a site that it handed over: how much of it is new, and where to open it.</summary>
    string Said(PublicationResult result);
}
