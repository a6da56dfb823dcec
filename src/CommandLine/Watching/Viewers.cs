using System.Threading.Channels;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>The browser's pages that are open and seen, and wait to be told.</summary>
internal sealed class Viewers
{
    private const int MostUntold = 64;

    private readonly Lock gate = new();
    private readonly List<Viewer> all = [];

    /// <summary>The clients who are looked at, who was opened last first.</summary>
    public Series<ClientId> Looking
    {
        get
        {
            lock (gate)
                return all.Select(v => v.Client).OfType<ClientId>().Reverse().Distinct().ToSeries();
        }
    }

    /// <param name="client">Null for the page of all.</param>
    public Viewer Add(ClientId? client)
    {
        var viewer = new Viewer(
            client,
            Channel.CreateBounded<string>(new BoundedChannelOptions(MostUntold) { FullMode = BoundedChannelFullMode.DropOldest })
        );
        lock (gate)
            all.Add(viewer);
        return viewer;
    }

    public void Remove(Viewer viewer)
    {
        lock (gate)
            all.Remove(viewer);
    }

    /// <summary>Tells those who look at a client that something is other.</summary>
    /// <param name="client">Null for the page of all.</param>
    /// <param name="what">One word.</param>
    /// <param name="lines">What belongs to it, each on a line.</param>
    public void Tell(ClientId? client, string what, params IEnumerable<string> lines)
    {
        var message = $"event: {what}\n{string.Concat(lines.Select(line => $"data: {line}\n"))}\n";
        lock (gate)
            foreach (var viewer in all.Where(v => v.Client == client))
                viewer.Messages.Writer.TryWrite(message);
    }

    /// <summary>Tells everybody who looks at whatever.</summary>
    public void TellAll(string what)
    {
        foreach (var client in Looking)
            Tell(client, what, "all");
        Tell(null, what, "all");
    }
}

internal sealed record Viewer(ClientId? Client, Channel<string> Messages);
