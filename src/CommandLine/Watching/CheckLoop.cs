using System.Collections.Concurrent;
using System.Diagnostics;
using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>Behind the pages: the rules on all sources, then the audit of each client's finished site, who is looked at first.
/// What did not change is not audited again, and a change in between begins it anew.</summary>
internal sealed class CheckLoop(WatchedPractice practice, Viewers viewers, string? themeFolder, WatchText text) : IDisposable
{
    /// <summary>A browser that is showing a page needs the processor first.</summary>
    private static readonly TimeSpan Shown = TimeSpan.FromMilliseconds(150);

    /// <summary>While a coach saves again and again, those who are not looked at wait.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(400);

    /// <summary>After so many sites what they share is worked out anew, so that it does not grow without end.</summary>
    private const int MostOfOneRun = 1000;

    private readonly AutoResetEvent wake = new(false);
    private readonly ConcurrentQueue<ClientId> asked = new();
    private readonly ConcurrentDictionary<ClientId, Series<Finding>> onPages = new();
    private readonly WholeCheck whole = new();
    private readonly PageLines lines = new();
    private AuditRun run = new([]);
    private Series<string> names = [];
    private int audited;
    private volatile Progressed progress = new(0, 0, null);

    /// <summary>How far it has come, with what is said of all.</summary>
    /// <param name="Done">How many clients' sites have been audited, or cannot be made.</param>
    internal sealed record Progressed(int Done, int Of, Told? Told)
    {
        public bool IsDone => Told is not null && Done == Of;

        /// <summary>How many errors each client has alone; who has none is not in it.</summary>
        public IReadOnlyDictionary<ClientId, int> Errors { get; init; } = new Dictionary<ClientId, int>();
    }

    public Progressed Progress => progress;

    /// <summary>Something changed.</summary>
    public void Wake() => wake.Set();

    /// <summary>Somebody looks at a client of whom nothing is told yet.</summary>
    public void Ask(ClientId client)
    {
        asked.Enqueue(client);
        wake.Set();
    }

    public void Dispose() => wake.Dispose();

    /// <summary>Until somebody cancels.</summary>
    public void Run(CancellationToken end)
    {
        CheckedState? done = null;
        while (!end.IsCancellationRequested)
        {
            var read = practice.Read;
            bool IsStale()
            {
                while (practice.IsLooking && !end.IsCancellationRequested)
                    Thread.Sleep(2);
                return end.IsCancellationRequested || !ReferenceEquals(read, practice.Read);
            }

            if (done is null || !ReferenceEquals(done.Read, read))
            {
                Pause(Shown, IsStale);
                if (!First(read, IsStale) || Check(read, null, IsStale) is not { } state || !All(state, IsStale))
                    continue;
                done = state;
            }

            Asked(done, IsStale);
            wake.WaitOne();
        }
    }

    /// <summary>Those who are looked at, before the rules are asked of anybody else.</summary>
    private bool First(ReadState read, Func<bool> isStale)
    {
        var looking = viewers.Looking;
        if (looking.Count == 0)
            return true;
        if (Check(read, looking, isStale) is not { } state)
            return false;
        Renew(state);
        return looking.All(id => One(state, id, isStale));
    }

    private CheckedState? Check(ReadState read, Series<ClientId>? alone, Func<bool> isStale) =>
        whole.Of(read, alone, themeFolder is not null, isStale);

    private bool All(CheckedState state, Func<bool> isStale)
    {
        Renew(state);
        var looking = viewers.Looking;
        foreach (var id in looking)
            if (!One(state, id, isStale))
                return false;
        var all = state.Read.Reading.Clients;
        var told = Stopwatch.GetTimestamp();
        foreach (var (index, id) in all.Index())
        {
            Asked(state, isStale);
            if (!looking.Contains(id) && !Unseen(state, id, isStale))
                return false;
            if (Stopwatch.GetElapsedTime(told) < TimeSpan.FromSeconds(1) && index + 1 < all.Count)
                continue;
            told = Stopwatch.GetTimestamp();
            Tell(state, index + 1);
        }

        text.Settled(state, state.Said(all, onPages.Values.SelectMany(f => f)), lines);
        return true;
    }

    /// <summary>What is said of all so far.</summary>
    private void Tell(CheckedState state, int done)
    {
        var all = state.Read.Reading.Clients;
        var said = state.Said(all, onPages.Values.SelectMany(f => f));
        var own =
            from finding in state.Findings.Concat(onPages.Values.SelectMany(f => f)).Distinct()
            where finding.Level == Level.Error
            let client = finding.Client?.Text ?? Reach.OwnerOf(finding.At.File)
            where client is not null
            group finding by new ClientId(client);
        progress = new(done, all.Count, Told.Of(said, new Excerpts(state.Read.Folder, lines, themeFolder)))
        {
            Errors = own.ToDictionary(g => g.Key, g => g.Count()),
        };
        viewers.Tell(null, "found", "all");
    }

    /// <summary>Those who were asked for meanwhile.</summary>
    private void Asked(CheckedState state, Func<bool> isStale)
    {
        while (asked.TryDequeue(out var id))
            if (practice.Peek(id).Told is null)
                One(state, id, isStale);
    }

    /// <summary>A client who is looked at.</summary>
    private bool One(CheckedState state, ClientId id, Func<bool> isStale)
    {
        if (!Audit(state, id, isStale))
            return false;
        var said = state.Said([id], onPages.GetValueOrDefault(id) ?? []);
        var told = Told.Of(said, new Excerpts(state.Read.Folder, lines, themeFolder));
        if (practice.Peek(id).Told == told)
            return !isStale();
        if (!practice.Change(state.Read, id, before => before with { Told = told }))
            return false;
        viewers.Tell(id, "found", "all");
        text.News(state, said, lines);
        return true;
    }

    private bool Unseen(CheckedState state, ClientId id, Func<bool> isStale)
    {
        if (practice.Peek(id).Good is { Found: not null })
            return Audit(state, id, isStale);
        Pause(Quiet, isStale);
        return Audit(state, id, isStale);
    }

    private bool Audit(CheckedState state, ClientId id, Func<bool> isStale)
    {
        if (isStale())
            return false;
        var before = practice.Peek(id);
        var plan = state.PlanOf(id);
        var good = before.Good;
        if (plan is not null && good?.IsOf(plan, state.Read.Theme) != true)
            good = new(plan, state.Read.Theme);
        var findings = new Findings();
        if (plan is not null && good is not null && (good.Found is null || !ReferenceEquals(good.AuditedWith, names)))
        {
            if (good.Site(findings) is { } site)
            {
                good.Found = RuleBook.Audit(plan, site, run).ToSeries();
                good.AuditedWith = names;
                lines.Keep(id, PageLines.Of(site, good.Found));
                audited++;
            }
            else
                good = before.Good;
        }

        onPages[id] =
            plan is null ? []
            : findings.Count > 0 ? findings.ToSeries()
            : good?.Found ?? [];
        if (!viewers.Looking.Contains(id))
            good?.LetGo();
        return practice.Change(state.Read, id, now =>
            ReferenceEquals(now.SeenIn, state.Read) || ReferenceEquals(now.Good, good)
                ? now
                : now with
                {
                    Good = good,
                    Version = now.Version + 1,
                }
        );
    }

    /// <summary>Other names are looked for on every site.</summary>
    private void Renew(CheckedState state)
    {
        var now = (state.Read.Reading.Practice?.Clients ?? []).Select(c => c.Name).ToSeries();
        foreach (var gone in onPages.Keys.Except(state.Read.Reading.Clients))
            onPages.TryRemove(gone, out _);
        if (now.Equals(names) && audited < MostOfOneRun)
            return;
        if (!now.Equals(names))
            names = now;
        (run, audited) = (new(now), 0);
    }

    private void Pause(TimeSpan quiet, Func<bool> isStale)
    {
        while (!isStale() && Stopwatch.GetElapsedTime(practice.LastChange) is var since && since < quiet)
            Thread.Sleep(quiet - since < TimeSpan.FromMilliseconds(20) ? quiet - since : TimeSpan.FromMilliseconds(20));
    }
}
