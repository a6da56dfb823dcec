using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.CommandLine;

/// <summary>Under which links one publish puts sites on a host.</summary>
/// <param name="host">Null where nothing is put on one: then links that stand are known all the same.</param>
/// <param name="rotate">Whether each client gets another link than before.</param>
internal sealed class Linking(string? host, bool rotate)
{
    private readonly Dictionary<ClientId, SiteLink> links = [];
    private readonly Dictionary<ClientId, SiteLink> before = [];
    private readonly HashSet<string> ended = new(StringComparer.Ordinal);

    public bool IsAsked => host is not null;

    public LinkForm Form => new(links.GetValueOrDefault);

    /// <summary>Every link that somebody has; who is to get another one, and did not, has the one of before.</summary>
    public IEnumerable<SiteLink> All => links.Values.Concat(before.Values.Where(link => !ended.Contains(link.Name)));

    /// <param name="clients">All that could be read.</param>
    /// <param name="wanted">Those whom the command is about.</param>
    public void Settle(IEnumerable<Client> clients, IEnumerable<ClientId> wanted)
    {
        foreach (var client in clients)
        {
            if (client.Link is { } link)
                before[client.Id] = links[client.Id] = link;
        }

        if (host is null)
            return;
        foreach (var id in wanted)
        {
            var name = !rotate && before.TryGetValue(id, out var kept) ? kept.Name : SiteLink.NewName();
            links[id] = new(name, host, Location.Whole(SiteLink.PathOf(id)));
        }
    }

    /// <summary>Writes down the client's link before the site stands under it: nobody is ever given an address that is
    /// forgotten.</summary>
    /// <param name="practice">The practice's folder.</param>
    /// <returns>Whether it is other than it was.</returns>
    /// <exception cref="HandOverException">It could not be written.</exception>
    public bool Keep(string practice, ClientId client)
    {
        var (now, was) = (links[client], before.GetValueOrDefault(client));
        if (was?.Address == now.Address)
            return false;
        LinkRecord.Write(practice, client, now);
        return true;
    }

    /// <summary>Takes away what stands under the link of before; a line that says so, or nothing.</summary>
    /// <exception cref="HandOverException">It could not be taken away.</exception>
    public string Ended(ClientId client, string target)
    {
        if (!IsAsked || !before.TryGetValue(client, out var was) || was.Name == links[client].Name)
            return "";
        LinkForm.Remove(target, was);
        ended.Add(was.Name);
        return $"\n{client}: the old link is ended here; on the host it ends when you delete the folder {was.Name} there.";
    }
}
