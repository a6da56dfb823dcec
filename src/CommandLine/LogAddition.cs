using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>What is added to one client's log, while nobody else can add to it.</summary>
internal sealed class LogAddition : IDisposable
{
    private readonly KeptLog log;
    private readonly byte[] before;
    private readonly Dictionary<object, List<LogEntry>> told = [];
    private readonly Dictionary<object, int> places = [];
    private readonly List<LogEntry> added = [];
    private byte[] after;

    private LogAddition(Client client, KeptLog log)
    {
        (Client, this.log) = (client, log);
        before = after = log.Read();
    }

    public Client Client { get; }

    /// <exception cref="HandOverException">The log cannot be used, or somebody else is adding to it.</exception>
    public static LogAddition Begin(string practice, Client client)
    {
        var log = KeptLog.Open(practice, client.Id);
        try
        {
            var addition = new LogAddition(client, log);
            foreach (var entry in LogReader.Read(log.Place, addition.before).Entries)
                addition.TellingsOf(entry).Add(entry);
            return addition;
        }
        catch
        {
            log.Dispose();
            throw;
        }
    }

    /// <summary>Adds what is not known of a session. What was told before, of whatever line, is not told again.</summary>
    public Addition Add(LogEntry entry)
    {
        var tellings = TellingsOf(entry);
        if (tellings.Any(t => t.Tells(entry)))
            return Addition.Known;
        var whole = tellings is [.., var last] ? last.With(entry) : entry;
        tellings.Add(whole);
        // What is received at once of a session is one line of it.
        if (places.TryAdd(LogBook.KeyOf(whole), added.Count))
            added.Add(whole);
        else
            added[places[LogBook.KeyOf(whole)]] = whole;
        return tellings.Count == 1 ? Addition.New : Addition.More;
    }

    /// <exception cref="HandOverException">Nothing can be written behind the log as it stands.</exception>
    public void Prepare()
    {
        if (added.Count == 0)
            return;
        after = LogWriter.Behind(before, added)
            ?? throw new HandOverException(
                $"Nothing can be written behind '{log.Place}' as it stands: it is no log in UTF-8 or UTF-16, or ends inside a cell.",
                "Mend it, or move it away; nothing was received."
            );
        if (after.Length > LogReader.MostBytes)
            throw new HandOverException(
                $"'{log.Place}' would be larger than 4 MiB, the most that is read.",
                "Move what is old in it to a file of another name; nothing was received."
            );
    }

    public void Write()
    {
        if (added.Count > 0)
            log.Replace(after);
    }

    public void Dispose() => log.Dispose();

    private List<LogEntry> TellingsOf(LogEntry entry)
    {
        var session = LogBook.KeyOf(entry);
        if (!told.TryGetValue(session, out var tellings))
            told[session] = tellings = [];
        return tellings;
    }
}

/// <summary>What an entry adds to a log.</summary>
internal enum Addition
{
    New,

    /// <summary>The session is known, and more is said of it, or other things.</summary>
    More,
    Known,
}
