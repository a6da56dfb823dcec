using System.Diagnostics;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary>A practice that is looked at again and again. The pages that somebody looks at are made first, then everything
/// else. Any thread may ask.</summary>
/// <param name="folder">The practice's.</param>
/// <param name="themeFolder">Null for the theme that comes with Gradus.</param>
/// <param name="today">Null for each day as it comes.</param>
internal sealed class WatchedPractice(string folder, string? themeFolder, DateOnly? today, Viewers viewers)
{
    /// <summary>What looks broken may be half saved: it is told once it has stayed so for this long.</summary>
    private static readonly TimeSpan Settled = TimeSpan.FromMilliseconds(250);

    /// <summary>And after this long whatever happens.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(1);

    private readonly Lock gate = new();
    private readonly WatchedFolder files = new(folder);
    private readonly WatchedFolder? themeFiles = themeFolder is null ? null : new(themeFolder);
    private readonly KeptReadings kept = new();
    private readonly Dictionary<ClientId, Watched> clients = [];
    private Theme theme = ThemeFolder.Plain();
    private volatile ReadState? read;
    private volatile bool isLooking;

    /// <summary>Whether it changed and could not be opened since: whoever writes a file may hold it.</summary>
    private bool isThemeOld;
    private Series<string> unsettled = [];
    private long firstUnsettled;
    private long lastUnsettled;

    /// <summary>As it was read last; what looks half saved is not in it yet.</summary>
    public ReadState Read => read ?? throw new InvalidOperationException("Nothing was read yet.");

    /// <summary>Whether the folder is not there any more.</summary>
    public bool IsGone { get; private set; }

    /// <summary>When something changed last and was shown, as a timestamp.</summary>
    public long LastChange { get; private set; }

    /// <summary>Whether somebody looks at the disk, or makes pages, right now.</summary>
    public bool IsLooking => isLooking;

    /// <summary>Called with the files that changed and the clients whose pages were shown again.</summary>
    public Action<Series<string>, Series<ClientId>, TimeSpan> Shown { get; set; } = (_, _, _) => { };

    /// <summary>Looks at the disk and shows what changed. True where something did.</summary>
    /// <param name="wait">How long to wait at most before looking again; null where there is no hurry.</param>
    public bool Look(out TimeSpan? wait)
    {
        isLooking = true;
        try
        {
            return LookNow(out wait);
        }
        finally
        {
            isLooking = false;
        }
    }

    private bool LookNow(out TimeSpan? wait)
    {
        lock (gate)
        {
            wait = null;
            var now = Stopwatch.GetTimestamp();
            var look = files.Again();
            if (look == WatchedFolder.Look.Gone)
            {
                var news = !IsGone;
                IsGone = true;
                return news;
            }

            var isBack = IsGone;
            IsGone = false;
            var changed = look == WatchedFolder.Look.Changed ? files.Changed : [];
            var isThemeNew = LookAtTheme();
            var day = today ?? Clock.Today();
            if (changed.Count > 0)
                Unsettle(changed, now);
            if (unsettled.Count == 0 && !isThemeNew && read?.Today == day)
                return isBack;
            var findings = new Findings();
            var reading = PracticeReader.Read(files.Files, findings, kept);
            var next = new ReadState(files.Files, reading, findings.ToSeries(), theme, day);
            if (
                read is not null
                && IsHalf(next)
                && Stopwatch.GetElapsedTime(lastUnsettled, now) < Settled
                && Stopwatch.GetElapsedTime(firstUnsettled, now) < Longest
            )
            {
                wait = Settled;
                return isBack;
            }

            (changed, unsettled) = (unsettled, []);
            read = next;
            var shown = viewers.Looking.Where(See).ToSeries();
            LastChange = Stopwatch.GetTimestamp();
            Shown(changed, shown, Stopwatch.GetElapsedTime(now));
            return true;
        }
    }

    /// <summary>What is known of a client now, with a site where one could be made; null where there is no such client.</summary>
    public (Watched Of, Site? Site)? Find(ClientId id)
    {
        lock (gate)
        {
            if (!Read.Reading.Clients.Contains(id) && !clients.ContainsKey(id))
                return null;
            See(id);
            var of = clients[id];
            return (of, of.Good?.Site([]));
        }
    }

    /// <summary>What is known of a client, as it is.</summary>
    public Watched Peek(ClientId id)
    {
        lock (gate)
            return clients.GetValueOrDefault(id) ?? Unseen(id);
    }

    /// <summary>Changes what is known of a client, unless it was read anew meanwhile.</summary>
    public bool Change(ReadState of, ClientId id, Func<Watched, Watched> change)
    {
        lock (gate)
        {
            if (!ReferenceEquals(of, read))
                return false;
            clients[id] = change(clients.GetValueOrDefault(id) ?? Unseen(id));
            return true;
        }
    }

    private static Watched Unseen(ClientId id) => new(id, id.Text, null, false, null, 0, null);

    private void Unsettle(Series<string> changed, long now)
    {
        if (unsettled.Count == 0)
            firstUnsettled = now;
        lastUnsettled = now;
        unsettled = unsettled.Union(changed).Order(StringComparer.Ordinal).ToSeries();
    }

    /// <summary>Whether something is wrong that was not before.</summary>
    private bool IsHalf(ReadState next)
    {
        var known = Read.Found.Select(f => (f.Rule, f.At.File, f.Message)).ToHashSet();
        return next.Found.Any(f => f.Level == Level.Error && !known.Contains((f.Rule, f.At.File, f.Message)));
    }

    private bool LookAtTheme()
    {
        isThemeOld |= themeFiles?.Again() == WatchedFolder.Look.Changed;
        if (themeFolder is null || !isThemeOld)
            return false;
        try
        {
            theme = ThemeFolder.Open(themeFolder);
            isThemeOld = false;
            return true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Makes the client's site from what was read last, unless that was done. True where it is another now.</summary>
    private bool See(ClientId id)
    {
        var before = clients.GetValueOrDefault(id) ?? Unseen(id);
        if (ReferenceEquals(before.SeenIn, Read))
            return false;
        var (stopped, name) = (Read.StoppedOn(id), Read.Bound(id)?.Name ?? before.Name);
        var now = before with { SeenIn = Read, Name = name, Stopped = stopped, IsNow = false, Told = null };
        var (good, isNow) = stopped is null && Read.FirstPlanOf(id) is { } plan ? Made(before.Good, plan) : (before.Good, false);
        var isOther = isNow && !ReferenceEquals(good, before.Good);
        clients[id] = now with { Good = good, IsNow = isNow, Version = before.Version + (isOther ? 1 : 0) };
        if (isOther)
            viewers.Tell(id, "page", Changes.Between(before.Good?.Site([]), good?.Site([])).Prepend($"{before.Version + 1}"));
        else
            viewers.Tell(id, "found", "first");
        return isOther;
    }

    private (Good?, bool) Made(Good? before, Plan plan)
    {
        if (before is not null && before.IsOf(plan, theme))
            return (before, true);
        var made = new Good(plan, theme);
        return made.Site([]) is null ? (before, false) : (made, true);
    }
}
