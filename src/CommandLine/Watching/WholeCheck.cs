using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>Everything that the rules on sources find, with what was found of a client kept as long as nothing that the client's
/// findings are made from changes. One thread at a time.</summary>
internal sealed class WholeCheck
{
    private readonly Dictionary<ClientId, Judged> kept = [];
    private ReadState? keptOf;

    /// <param name="alone">The rules on each client are asked of these alone; null for all.</param>
    /// <param name="isStale">Asked between clients; where it says so, it is given up, and what was worked out is kept.</param>
    public CheckedState? Of(ReadState read, Series<ClientId>? alone, bool isThemeOwn, Func<bool> isStale)
    {
        if (keptOf is null || !read.SharesWith(keptOf))
            kept.Clear();
        keptOf = read;
        var findings = new Findings();
        findings.AddRange(read.Found);
        var trainings = new Dictionary<ClientId, Training>();
        if (read.Reading.Practice is { } practice)
        {
            var rules = new List<Finding>(RuleBook.CheckShared(practice, read.IsWhole));
            foreach (var client in practice.Clients.Where(c => alone?.Contains(c.Id) ?? true))
            {
                if (isStale())
                    return null;
                if (!kept.TryGetValue(client.Id, out var judged) || !ReferenceEquals(judged.Client, client))
                    kept[client.Id] = judged = Judge(read, practice, client);
                trainings[client.Id] = judged.Training;
                rules.AddRange(judged.Found);
            }

            // Of who has stopped only what cannot be read is said: nobody trains by the rest.
            findings.AddRange(rules.Where(f => f.Client is not { } of || read.StoppedOn(of) is null));
        }

        if (isThemeOwn)
            findings.AddRange(RuleBook.Judge(read.Theme.Seen));
        var reach = read.Reading.Practice is { } known ? Reach.Of(known) : new([], []);
        return new(read, findings, reach, trainings, alone is null);
    }

    private static Judged Judge(ReadState read, Practice practice, Client client)
    {
        var training = Training.Of(practice, client);
        return new(client, training, RuleBook.Check(practice, client, training, read.Today, read.IsWhole).ToSeries());
    }

    private sealed record Judged(Client Client, Training Training, Series<Finding> Found);
}

/// <summary>A practice that was read and checked, before any page.</summary>
/// <param name="IsOfAll">Whether the rules were asked of every client.</param>
internal sealed record CheckedState(
    ReadState Read,
    Findings Findings,
    Reach Reach,
    IReadOnlyDictionary<ClientId, Training> Trainings,
    bool IsOfAll
)
{
    private const string Acceptances = "accepted.yaml";

    /// <summary>Null where something stands in the way of it.</summary>
    public Plan? PlanOf(ClientId id) =>
        Read.StoppedOn(id) is null
        && !Findings.Block(id, Reach)
        && Read.Reading.Practice is { } practice
        && Read.Bound(id) is { } client
            ? ReadState.PlanOf(practice, client, Trainings[id])
            : null;

    /// <summary>What the audit would say of these clients, for people.</summary>
    /// <param name="onPages">What was found on their finished pages.</param>
    public Series<Finding> Said(Series<ClientId> clients, IEnumerable<Finding> onPages)
    {
        var all = new Findings();
        all.AddRange(Findings);
        all.AddRange(onPages);
        var said = CheckedPractice.Of(Read.Folder, Read.Reading, clients, all, Reach, Read.Today);
        // What nobody needs to accept is known once everybody was judged.
        return said.ForPeople(said.Said().Where(f => IsOfAll || f.At.File != Acceptances).ToSeries());
    }
}
