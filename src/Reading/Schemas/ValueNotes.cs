namespace Gradus.Reading;

/// <summary>What readers have asked of one value: the kinds it may be of.</summary>
internal sealed class ValueNotes
{
    private readonly List<ValueKind> kinds = [];

    /// <summary>In the order in which they were first asked for.</summary>
    public IReadOnlyList<ValueKind> Kinds => kinds;

    /// <summary>Of the items, where it may be a list.</summary>
    public ValueNotes? Items { get; private set; }

    /// <summary>Of the keys, where it may be a group of them.</summary>
    public GroupNotes? Group { get; private set; }

    public bool IsEmpty => kinds.Count == 0 && Items is null && Group is null;

    public void Add(ValueKind kind)
    {
        if (!kinds.Contains(kind))
            kinds.Add(kind);
    }

    public ValueNotes AsList() => Items ??= new();

    public GroupNotes AsGroup(Func<GroupNotes> made) => Group ??= made();
}

/// <summary>What readers have asked of a group of keys.</summary>
/// <param name="name">As it is called in a sentence: "a session".</param>
internal sealed class GroupNotes(string name)
{
    private readonly Dictionary<string, ValueNotes> keys = new(StringComparer.Ordinal);
    private readonly List<string> order = [];
    private readonly List<HashSet<string>> needed = [];

    public string Name => name;

    /// <summary>The keys that a reader knows, in the order in which it asks for them.</summary>
    public IEnumerable<(string Key, ValueNotes Value)> Keys => order.Select(key => (key, keys[key]));

    /// <summary>Of the values of keys that are the practice's own words; null where there are none.</summary>
    public ValueNotes? Own { get; private set; }

    /// <summary>Of those keys themselves.</summary>
    public ValueNotes? OwnNames { get; private set; }

    /// <summary>What was needed each time that such a group was read.</summary>
    public IReadOnlyList<IReadOnlySet<string>> Needed => needed;

    public void Begin() => needed.Add(new(StringComparer.Ordinal));

    public ValueNotes Take(string key)
    {
        if (keys.TryGetValue(key, out var known))
            return known;
        order.Add(key);
        return keys[key] = new();
    }

    public void Need(string key)
    {
        Take(key);
        needed[^1].Add(key);
    }

    public bool Knows(string key) => keys.ContainsKey(key);

    public (ValueNotes Names, ValueNotes Values) AsOwn() => (OwnNames ??= new(), Own ??= new());
}
