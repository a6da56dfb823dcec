using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What was read of a practice before, part by part, for whoever reads the same practice again and again: a part whose
/// files are the same is not read, and what was found in it is said again. One thread at a time.</summary>
public sealed class KeptReadings
{
    private Dictionary<string, KeptPart> parts = new(StringComparer.Ordinal);
    private Series<(string Path, object? Version)> media = [];

    internal KeptPictures Pictures { get; } = new();

    /// <summary>How many parts were read anew the last time.</summary>
    public int ReadAnew { get; private set; }

    internal ReadingRun Begin(SourceFolder folder)
    {
        // Which other texts there are is all that a text may ask of them.
        var listed = folder.Paths.Select(path => (path, SourceFolder.IsText(path) ? null : folder.Version(path))).ToSeries();
        var isSame = listed.Equals(media);
        media = listed;
        return new(folder, this, parts, isSame);
    }

    /// <summary>Keeps what a run read. False where it has to be done again: what is wrong with a clip is said to the first text
    /// that shows it, so all that show clips are read together.</summary>
    internal bool Keep(ReadingRun run)
    {
        var disturbed =
            run.Anew.Values.Any(p => p.ShowsClips) || parts.Any(p => p.Value.ShowsClips && !run.Again.ContainsKey(p.Key));
        var torn = disturbed && run.Again.Values.Any(p => p.ShowsClips);
        parts = run.Again.Concat(run.Anew).Where(p => !(torn && p.Value.ShowsClips)).ToDictionary(StringComparer.Ordinal);
        ReadAnew = run.Anew.Count;
        return !torn;
    }
}

/// <summary>One reading of a practice.</summary>
/// <param name="before">What was read of it before.</param>
/// <param name="isMediaSame">Whether the same files are there as then, and the pictures and clips are the same.</param>
internal sealed class ReadingRun(
    SourceFolder folder,
    KeptReadings kept,
    IReadOnlyDictionary<string, KeptPart> before,
    bool isMediaSame
)
{
    public SourceFolder Folder { get; } = folder;

    public Findings Findings { get; } = [];

    /// <summary>Parts that were not read again, by name.</summary>
    public Dictionary<string, KeptPart> Again { get; } = new(StringComparer.Ordinal);

    /// <summary>Parts that were read now, by name.</summary>
    public Dictionary<string, KeptPart> Anew { get; } = new(StringComparer.Ordinal);

    public MediaFiles Media => field ??= new(Folder, Findings, kept.Pictures);

    /// <summary>A part of the practice: as it was read before where it was made from the same, or read now.</summary>
    /// <param name="read">Is given where to say what it finds, and asks for no other picture or clip than
    /// <see cref="Media"/>.</param>
    /// <param name="from">All that it is made from beside pictures and clips; compared one by one.</param>
    public T Part<T>(string name, Func<Findings, T> read, params IEnumerable<object?> from)
    {
        object?[] inputs = [.. from];
        if (
            before.GetValueOrDefault(name) is KeptPart<T> known
            && known.From.SequenceEqual(inputs)
            && (isMediaSame || known.Media.Count == 0)
        )
        {
            Again[name] = known;
            foreach (var use in known.Media)
                Media.FindAgain(use);
            Findings.AddRange(known.Said);
            return known.Value;
        }

        var said = new Findings();
        var asked = Media.Uses.Count;
        var value = read(said);
        Anew[name] = new KeptPart<T>(inputs, value, said.ToSeries(), Media.Uses.Skip(asked).ToSeries());
        Findings.AddRange(said);
        return value;
    }

    /// <summary>Each file below a folder of the practice, and its version; the coach's own notes on a client, which nobody opens,
    /// are none of them.</summary>
    /// <param name="beginning">Of their paths.</param>
    public IEnumerable<object?> VersionsBelow(string beginning) =>
        Folder
            .Below(beginning)
            .Where(path => !path.EndsWith("/notes.md", StringComparison.Ordinal))
            .SelectMany(path => new[] { path, Folder.Version(path) });

    /// <summary>The version of a file, null where there is none.</summary>
    public object? Version(string path) => Folder.Has(path) ? Folder.Version(path) : null;
}

/// <param name="From">What it was made from.</param>
/// <param name="Media">What it asked for of pictures and clips.</param>
internal abstract record KeptPart(object?[] From, Series<Finding> Said, Series<MediaUse> Media)
{
    public bool ShowsClips { get; } = Media.Any(use => use.Mention.IsClip);
}

internal sealed record KeptPart<T>(object?[] From, T Value, Series<Finding> Said, Series<MediaUse> Media)
    : KeptPart(From, Said, Media);
