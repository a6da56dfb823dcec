using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>The clients of a practice, as far as a log finds its own among them.</summary>
internal sealed class ReceivingPractice
{
    private readonly Practice practice;
    private readonly Dictionary<string, Client> owners;
    private readonly Client? wanted;

    private ReceivingPractice(Practice practice, Client? wanted)
    {
        this.practice = practice;
        this.wanted = wanted;
        owners = practice
            .Clients.SelectMany(c => CourseKey.KnownOf(c).Select(key => (key, c)))
            .ToDictionary(o => o.key, o => o.c, StringComparer.Ordinal);
    }

    /// <param name="wanted">Whose all that is received is said to be; null where the logs say it.</param>
    /// <exception cref="IOException">There is no such practice, it cannot be read, or it has no such client.</exception>
    public static ReceivingPractice Open(string path, string? wanted)
    {
        var folder = SourceFolder.Open(path);
        if (!folder.Has("practice.md"))
            throw new IOException($"'{path}' is no practice: there is no practice.md in it.");
        var reading = PracticeReader.Read(folder, []);
        var known = reading.Clients.Select(c => c.Text).ToArray();
        if (wanted is not null && !known.Contains(wanted, StringComparer.Ordinal))
            throw new IOException(
                $"There is no client '{wanted}' in '{path}'. "
                    + $"{Nearest.Ask(wanted, known, $"The clients are: {string.Join(", ", known)}.")}"
            );
        var client = reading.Practice?.Clients.FirstOrDefault(c => c.Id.Text == wanted);
        if (reading.Practice is not { } practice || (wanted is not null && client is null))
            throw new IOException($"{wanted ?? "The practice"} cannot be read; 'gradus audit {path}' says why.");
        return new(practice, client);
    }

    /// <summary>Whose a log is, and what of it is taken. What several sent and somebody put together is taken apart by the key
    /// of each session; what has none there is nobody's.</summary>
    public IEnumerable<OwnedLog> Owned(string name, LogReading reading)
    {
        var told = reading.Entries.Select(OwnerOf).OfType<Client>().Distinct().ToArray();
        return told.Length < 2 || wanted is not null ? [Whole(name, reading, told)] : Apart(name, reading, told);
    }

    private Client? OwnerOf(LogEntry entry) => entry.Course is { } key ? owners.GetValueOrDefault(key) : null;

    private IEnumerable<OwnedLog> Apart(string name, LogReading reading, Client[] told)
    {
        var remarks = reading.Remarks;
        foreach (var owner in told)
        {
            yield return Taken(name, Of(owner) with { Remarks = remarks }, owner);
            remarks = [];
        }

        if (Of(null) is { Entries.Count: > 0 } nobodys)
            yield return new(
                name,
                nobodys,
                null,
                [],
                [
                    $"{Counted(nobodys.Entries.Count, "session does", "sessions do")} not say whose, among those of "
                        + $"{string.Join(" and ", told.Select(c => c.Id.Text))}, and nothing of that was taken. Receive it by "
                        + "itself, with --client ID",
                ]
            );

        LogReading Of(Client? owner) =>
            reading with
            {
                Entries = reading.Entries.Where(e => OwnerOf(e) == owner).ToSeries(),
                Remarks = [],
            };
    }

    private OwnedLog Whole(string name, LogReading reading, Client[] told)
    {
        var keys = reading.Entries.Select(e => e.Course).OfType<string>().Distinct(StringComparer.Ordinal).ToArray();
        if (reading.Form is null || reading.Entries.Count == 0)
            return new(name, reading, wanted, [], []);
        if (told.FirstOrDefault(c => wanted is not null && c.Id != wanted.Id) is { } other)
            return Refused($"this is the log of {other.Id}, not of {wanted?.Id}; nothing of it was taken");
        return (told.FirstOrDefault() ?? wanted) is { } owner
            ? Taken(name, reading, owner)
            : Refused(
                keys.Length > 0
                    ? "nobody here has the programme that it is of; nothing of it was taken. Say whose it is with --client ID"
                    : "it does not say whose it is; nothing of it was taken. Say it with --client ID"
            );

        OwnedLog Refused(string why) => new(name, reading, null, [], [why]);
    }

    /// <summary>What has a key of the owner's is the owner's. Anything else is where somebody says so, or where it lies without
    /// a key beside what has one, and only where the owner does every exercise in it.</summary>
    private OwnedLog Taken(string name, LogReading reading, Client owner)
    {
        var done = ExercisesOf(owner);
        var open = reading.Entries.Where(IsOpen).ToArray();
        var others = open.SelectMany(e => e.Exercises).Select(e => e.Exercise).Where(e => !done.Contains(e)).Distinct().ToArray();
        var strange = reading.Entries.Count(e => !IsOwn(e) && !IsOpen(e));
        var refusals = new List<string>();
        if (strange > 0)
            refusals.Add(
                $"{Counted(strange, "session is", "sessions are")} of a programme that nobody here has, and not taken. Say whose "
                    + "with --client ID"
            );
        if (others.Length > 0)
            refusals.Add(
                $"{Counted(open.Length, "session has", "sessions have")} no key that is known here, and nothing of that was "
                    + $"taken: the programme of {owner.Id} does not have "
                    + string.Join(", ", others.Take(20).Select(e => e.Text))
            );
        var taken = reading.Entries.Where(e => IsOwn(e) || (others.Length == 0 && IsOpen(e)));
        return new(name, reading, owner, taken.ToSeries(), refusals.ToSeries()) { Done = done };

        bool IsOwn(LogEntry entry) => entry.Course is { } key && owners.TryGetValue(key, out var one) && one.Id == owner.Id;

        bool IsOpen(LogEntry entry) => !IsOwn(entry) && (wanted is not null || entry.Course is null);
    }

    /// <summary>All that the programme has, in some week.</summary>
    private HashSet<ExerciseId> ExercisesOf(Client client) =>
        [
            .. from session in client.Programme.AllSessions
            from use in session.Do
            from id in use
                .Versions.Select(v => practice.Find(use.Exercise.Value)?.Named(v.Version)?.Value)
                .OfType<ExerciseId>()
                .Prepend(use.Exercise.Value)
            select id,
        ];

    internal static string Counted(int count, string one, string more) =>
        FormattableString.Invariant($"{count} {(count == 1 ? one : more)}");
}

/// <summary>A log and whose it is.</summary>
/// <param name="Owner">Null where nobody knows.</param>
/// <param name="Taken">What of it goes into the owner's log.</param>
/// <param name="Refusals">Why the rest does not.</param>
internal sealed record OwnedLog(string Name, LogReading Reading, Client? Owner, Series<LogEntry> Taken, Series<string> Refusals)
{
    /// <summary>The exercises of the owner's programme.</summary>
    public IReadOnlySet<ExerciseId> Done { get; init; } = new HashSet<ExerciseId>();
}
