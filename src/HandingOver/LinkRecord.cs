using System.Text;
using Gradus.Domain;

namespace Gradus.HandingOver;

/// <summary>Keeps a client's link with the sources, so that it stands whatever becomes of the sites.</summary>
public static class LinkRecord
{
    /// <param name="practice">The practice's folder.</param>
    /// <exception cref="HandOverException">It could not be written; what stood there still stands.</exception>
    public static void Write(string practice, ClientId client, SiteLink link)
    {
        var place = Path.GetFullPath(Path.Combine(practice, SiteLink.PathOf(client)));
        DiskTrouble.Writing(place, () =>
        {
            InTheWay.RefuseLink(place);
            var places = Places.In(Path.GetDirectoryName(place) ?? place, SiteLink.File);
            places.Replace(
                () =>
                    NewFile.Build(
                        places,
                        Encoding.UTF8.GetBytes(
                            $"# Whoever knows this address can read the pages of this client.\n"
                                + $"name: {link.Name}\nhost: {link.Host}\n"
                        )
                    ),
                NewFile.Put
            );
            return place;
        });
    }
}
