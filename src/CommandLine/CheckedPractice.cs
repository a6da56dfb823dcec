using Gradus.Auditing;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>A practice read and checked, with everything found so far.</summary>
internal sealed class CheckedPractice
{
    private readonly Reach reach;
    private readonly AuditRun run;
    private readonly Dictionary<ClientId, Client> bound;
    private readonly HashSet<ClientId> asked;
    private readonly DateOnly today;
    private readonly Share? share;
    private readonly IReadOnlyDictionary<ClientId, CheckedClient> worked;
    private readonly SourceKeys? keys;

    private CheckedPractice(
        SourceFolder folder,
        PracticeReading reading,
        Series<ClientId> wanted,
        Findings findings,
        Reach reach,
        IReadOnlyDictionary<ClientId, CheckedClient> worked,
        SourceKeys? keys,
        DateOnly today,
        Share? share
    )
    {
        (this.worked, this.keys) = (worked, keys);
        this.share = share;
        Folder = folder;
        Practice = reading.Practice;
        Known = reading.Clients;
        Wanted = wanted;
        Findings = findings;
        this.reach = reach;
        bound = (reading.Practice?.Clients ?? []).ToDictionary(c => c.Id);
        asked = [.. wanted];
        Names = bound.Values.Select(c => c.Name).ToSeries();
        run = new(Names);
        this.today = today;
    }

    public SourceFolder Folder { get; }

    /// <summary>Null where practice.md could not be bound, which a finding says.</summary>
    public Practice? Practice { get; }

    /// <summary>Every client who has a folder, bound or not.</summary>
    public Series<ClientId> Known { get; }

    /// <summary>The clients the command is about, bound or not.</summary>
    public Series<ClientId> Wanted { get; }

    public Findings Findings { get; }

    /// <summary>Of all clients who could be bound: none of another's may stand in a client's site.</summary>
    public Series<string> Names { get; }

    /// <summary>The lines of finished pages that findings point at.</summary>
    public PageLines Lines { get; } = new();

    /// <param name="share">Which of the clients the command is about; everybody where none is given.</param>
    /// <param name="records">What is recorded there of the same sources is not worked out again.</param>
    /// <param name="kept">What was read of the same practice a moment before; null where nothing was.</param>
    /// <exception cref="IOException">There is no such folder, or no such client in it.</exception>
    public static CheckedPractice Open(
        string path,
        string[] clients,
        DateOnly today,
        Share? share = null,
        SiteRecords? records = null,
        KeptReadings? kept = null
    )
    {
        var findings = new Findings();
        var folder = SourceFolder.Open(path);
        if (!folder.Has("practice.md"))
            throw new IOException($"'{path}' is no practice: there is no practice.md in it.");
        var reading = PracticeReader.Read(folder, findings, kept);
        var known = reading.Clients.Select(c => c.Text).ToArray();
        if (clients.FirstOrDefault(c => !known.Contains(c, StringComparer.Ordinal)) is { } unknown)
            throw new IOException(NoClient(unknown, known, path));
        var worked = new Dictionary<ClientId, CheckedClient>();
        var keys = reading.Practice is null ? null : new SourceKeys(folder, reading.Practice);
        if (reading.Practice is { } practice)
        {
            var (whole, held) = (findings.All(f => f.Level != Level.Error), new HeldTrainings());
            foreach (var client in practice.Clients)
                worked[client.Id] = new(practice, client, Recorded(client.Id), today, whole, held);
            var stopped = practice.Clients.Where(c => c.HasStopped(today)).Select(c => c.Id).ToHashSet();
            var found = AtOnce.InOrder(practice.Clients, c => worked[c.Id].Found).SelectMany(f => f);
            // Of who has stopped only what cannot be read is said: nobody trains by the rest.
            findings.AddRange(
                RuleBook
                    .CheckShared(practice, whole)
                    .Concat(found)
                    .Where(f => f.Client is not { } client || !stopped.Contains(client))
                    .ToSeries()
            );
        }

        var asked =
            clients.Length == 0
                ? reading.Clients
                : clients.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).Select(c => new ClientId(c)).ToSeries();
        var wanted = share is null ? asked : share.Of(asked);
        var reach = reading.Practice is null ? new([], []) : Reach.Of(reading.Practice);
        return new(folder, reading, wanted, findings, reach, worked, keys, today, share);

        ClientRecord? Recorded(ClientId client) =>
            records?.Read(client) is { } record && keys?.Of(client, record.Asked) == record.Key ? record : null;
    }

    /// <summary>That there is no such client, and who is meant perhaps.</summary>
    public static string NoClient(string client, string[] known, string folder) =>
        $"There is no client '{client}' in '{folder}'. "
        + $"{Nearest.Ask(client, known, $"The clients are: {string.Join(", ", known)}.")}";

    /// <summary>What somebody else has read and checked, for these clients.</summary>
    /// <param name="findings">What was found so far; more may come.</param>
    public static CheckedPractice Of(
        SourceFolder folder,
        PracticeReading reading,
        Series<ClientId> wanted,
        Findings findings,
        Reach reach,
        DateOnly today
    ) => new(folder, reading, wanted, findings, reach, new Dictionary<ClientId, CheckedClient>(), null, today, null);

    /// <summary>The client as far as the files could be read, whatever stands in the way of a plan; null where they could
    /// not.</summary>
    public Client? Bound(ClientId id) => bound.GetValueOrDefault(id);

    /// <summary>Since when no pages are made for a client; null where they are.</summary>
    public DateOnly? StoppedOn(ClientId id) => Bound(id) is { } client && client.HasStopped(today) ? client.Stopped?.On : null;

    /// <summary>Names on standard error whom the command could say nothing of; the exit status that comes of it.</summary>
    /// <param name="folder">As it was written on the command line.</param>
    public int SayUnread(string folder)
    {
        var unread = Wanted.Where(id => Bound(id) is null).ToArray();
        if (Practice is not null && unread.Length == 0)
            return Commands.Fine;
        Console.Error.WriteLine(
            $"gradus: {(unread.Length == 0 ? "the practice" : string.Join(", ", unread.Select(u => u.Text)))} cannot be "
                + $"read; 'gradus audit {folder}' says why."
        );
        return Commands.ErrorsFound;
    }

    /// <summary>The client, or null where an error stands in the way of a plan.</summary>
    public Client? Ready(ClientId id) => Findings.Block(id, reach) ? null : bound.GetValueOrDefault(id);

    /// <summary>What is asked of a client whom <see cref="Ready"/> gave.</summary>
    public Training TrainingOf(Client client) => worked[client.Id].Training;

    /// <summary>The plan of a client whom <see cref="Ready"/> gave.</summary>
    public Plan PlanOf(Client client) => worked[client.Id].Plan();

    /// <summary>The hash of the same.</summary>
    /// <param name="plan">Is asked for where its hash is not recorded.</param>
    public string PlanHashOf(Client client, Func<Plan> plan) => worked[client.Id].PlanHash(plan);

    /// <summary>What there is to record of what was worked out of a client's sources; null where nothing is.</summary>
    public ClientRecord? RecordOf(ClientId id) =>
        keys is not null && worked.TryGetValue(id, out var client)
            ? client.Record(keys, StoppedOn(id) is null && Ready(id) is not null)
            : null;

    /// <summary>What would be recorded of a client whom <see cref="Ready"/> gave; null where the last edition is the
    /// same.</summary>
    public Edition? EditionOf(Client client, DateOnly on)
    {
        var hash = worked[client.Id].EditionHash;
        if (client.Editions is [.., var last] && last.PlanHash == hash)
            return null;
        var number = client.LastEdition + 1;
        return new(
            number,
            on,
            TrainingOf(client).Hash(),
            hash,
            ContentOf(client),
            Location.Whole(Edition.PathOf(client.Id, number))
        );
    }

    /// <summary>The clients whom the command is not about, who were published and would be published otherwise now.</summary>
    public IEnumerable<ClientId> Behind(DateOnly on) =>
        share is null ? Known.Where(id => !asked.Contains(id) && IsChanged(id, on)) : [];

    /// <summary>The clients whom the command is about, of whom publishing would record another edition than their last
    /// one.</summary>
    public IEnumerable<ClientId> Changed(DateOnly on) => Wanted.Where(id => IsChanged(id, on));

    private bool IsChanged(ClientId id, DateOnly on) =>
        StoppedOn(id) is null && Ready(id) is { Editions.Count: > 0 } client && EditionOf(client, on) is not null;

    /// <summary>What the sources ask of a client, and say, as an edition holds it.</summary>
    public EditionContent ContentOf(Client client) => worked[client.Id].Content;

    /// <summary>What is found of the theme that the sites are made with.</summary>
    public void Judge(Theme theme) => Findings.AddRange(RuleBook.Judge(theme.Seen));

    /// <summary>What is found on one client's finished site. Several may be asked about at the same time.</summary>
    public Series<Finding> FoundOn(Plan plan, Site site) => RuleBook.Audit(plan, site, run).ToSeries();

    /// <summary>Adds what was found on one client's finished site.</summary>
    public void Add(ClientId client, MadeSite made)
    {
        Findings.AddRange(made.Found);
        Lines.Keep(client, made.Lines);
    }

    /// <summary>What concerns the clients that the command is about: findings of files that none of them touches are left out.
    /// Warnings that the coach accepts are left out too, and what a shared file does to several clients is said once.</summary>
    public Series<Finding> Said()
    {
        var pages = Explanations.All();
        var said = new Findings();
        said.AddRange(RuleBook.Accept(Findings.InOrder(), Practice?.Accepted ?? [], pages, today));
        return OfAll(said.InOrder().Where(Concerns)).ToSeries();
    }

    /// <summary>The same for people: what is wrong with the same words on the pages of several is said once, because a theme or
    /// one text is the cause. A program is told of each client by itself.</summary>
    public Series<Finding> ForPeople(Series<Finding> said) =>
        (
            from finding in said
            group finding by (
                finding.Rule,
                finding.Level,
                Folder.Has(finding.At.File) ? finding.At : null,
                finding.Message
            ) into same
            let clients = ClientsOf(same)
            from finding in clients.Count < 2 || Folder.Has(same.First().At.File)
                ? same.AsEnumerable()
                : [same.First() with { Places = same.Sum(f => f.Places), Clients = clients }]
            select finding
        ).ToSeries();

    /// <summary>What a file that no client owns does to several is said once.</summary>
    private IEnumerable<Finding> OfAll(IEnumerable<Finding> findings) =>
        from finding in findings
        group finding by Folder.Has(finding.At.File) && Reach.OwnerOf(finding.At.File) is null
            ? finding with
            {
                Client = null,
            }
            : finding into same
        let clients = ClientsOf(same)
        select clients.Count < 2 ? same.First() : same.Key with { Clients = clients };

    private static Series<ClientId> ClientsOf(IEnumerable<Finding> findings) =>
        findings.Select(f => f.Client).OfType<ClientId>().Distinct().OrderBy(c => c.Text, StringComparer.Ordinal).ToSeries();

    private bool Concerns(Finding finding) =>
        finding.Client is { } client
            ? asked.Contains(client)
            : Wanted.Count == Known.Count
                || Wanted.Any(w => reach.Touches(finding.At.File, w))
                || (share?.IsFirst == true && !Known.Any(c => reach.Touches(finding.At.File, c)));
}
