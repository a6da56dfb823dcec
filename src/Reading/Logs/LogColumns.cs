using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The columns that a head of a log names, in whatever order.</summary>
internal sealed class LogColumns
{
    /// <summary>In the order in which they are written.</summary>
    public static readonly Series<string> All =
    [
        "date",
        "start",
        "session",
        "week",
        "kind",
        "edition",
        "course",
        "exercise",
        "side",
        "sets",
        "repetitions",
        "load",
        "steps-done",
        "steps-planned",
        "minutes",
        "effort",
        "pain-before",
        "pain-during",
        "pain-morning",
        "worse-next-morning",
        "stopped",
        "stopped-for",
        "where",
        "not-today",
        "alarm",
        "measured",
        "note",
    ];

    private readonly Dictionary<string, int> places;

    private LogColumns(Dictionary<string, int> places, int count, Series<(int, string)> others)
    {
        this.places = places;
        Count = count;
        Others = others;
        HasPain = places.ContainsKey("pain");
        IsOld = HasPain && !places.ContainsKey("pain-during");
    }

    public int Count { get; }

    /// <summary>Those that nobody here knows, with their places.</summary>
    public Series<(int Place, string Name)> Others { get; }

    /// <summary>Whether there is one number for the worst pain of a session, whose place and side stand beside it.</summary>
    public bool HasPain { get; }

    /// <summary>Whether side and where tell of the worst pain of a line, and not of its exercise.</summary>
    public bool IsOld { get; }

    /// <summary>Null where the line is no head.</summary>
    public static LogColumns? In(IReadOnlyList<string> cells)
    {
        var names = cells.Select(c => c.Trim().ToLowerInvariant()).ToArray();
        if (!names.Contains("date") || !names.Contains("session"))
            return null;
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        var others = new List<(int, string)>();
        foreach (var (place, name) in names.Index())
            if ((name != "pain" && !All.Contains(name)) || !places.TryAdd(name, place))
                others.Add((place, name));
        return new(places, names.Length, others.ToSeries());
    }

    /// <summary>Empty where the head has no such column, or the line ends before it.</summary>
    public string Of(string[] cells, string name) =>
        places.TryGetValue(name, out var place) && place < cells.Length ? cells[place] : "";
}
