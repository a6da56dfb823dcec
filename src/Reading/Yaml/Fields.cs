using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The keys of one group, taken one by one; whatever nobody took is unknown. Every mistake is a finding, and reading
/// goes on.</summary>
internal sealed class Fields
{
    private readonly YamlNode.Map map;
    private readonly string group;
    private readonly HashSet<string> known = new(StringComparer.Ordinal);
    private readonly List<string> missing = [];
    private readonly GroupNotes? notes;

    private Fields(SourceFile sheet, YamlNode.Map map, string group)
    {
        SourceFile = sheet;
        this.map = map;
        this.group = group;
        notes = sheet.Notes?.Group(map, group);
    }

    public SourceFile SourceFile { get; }

    public Location At => map.At;

    public IEnumerable<YamlEntry> Entries => map.Entries;

    /// <summary>The keys of a node, or null (and a finding) where it is no group of keys.</summary>
    /// <param name="group">What the group is called in a sentence: "an exercise", "a session".</param>
    public static Fields? Of(SourceFile sheet, YamlNode? node, string group)
    {
        if (node is YamlNode.Map map)
            return new(sheet, map, group);
        if (node is not null)
            sheet.Fault(
                Faults.ValueWrong,
                node.At,
                $"Here should stand the keys of {group}, but there is {node.Kind}.",
                "Write each key on its own line, with a colon and its value."
            );
        return null;
    }

    public static Fields? OfHeader(SourceFile sheet, Headed headed, string group) =>
        Of(sheet, YamlReader.Read(sheet, headed.Header, headed.HeaderLine), group);

    /// <summary>Those of which the keys are the practice's own words.</summary>
    public IEnumerable<YamlEntry> OwnEntries
    {
        get
        {
            if (notes?.AsOwn() is (var names, var values))
                foreach (var entry in map.Entries.Where(e => !notes.Knows(e.Key)))
                {
                    SourceFile.Notes?.Take(entry.Name, names);
                    SourceFile.Notes?.Take(entry.Value, values);
                }

            return map.Entries;
        }
    }

    public bool Has(string key) => map.Entries.Any(e => string.Equals(e.Key, key, StringComparison.Ordinal));

    /// <summary>The value of a key that may be left out.</summary>
    public YamlNode? Take(string key)
    {
        known.Add(key);
        var value = map.Entries.FirstOrDefault(e => string.Equals(e.Key, key, StringComparison.Ordinal))?.Value;
        if (notes is not null)
            SourceFile.Notes?.Take(value, notes.Take(key));
        return value;
    }

    /// <summary>The value of a key that must be there; null is always a finding once all is done.</summary>
    public YamlNode? Need(string key)
    {
        var value = Take(key);
        notes?.Need(key);
        if (value is null)
            missing.Add(key);
        return value;
    }

    public string? Text(string key) => Mention(key)?.Value;

    public string? NeedText(string key) => NeedMention(key)?.Value;

    public Mention<string>? Mention(string key) => MentionIn(key, Take(key, ValueKind.Any));

    public Mention<string>? NeedMention(string key) => MentionIn(key, Need(key, ValueKind.Any));

    /// <param name="ever">The most that it may be in any file of the kind, where this one's own most is less.</param>
    public int? Whole(string key, int least, int most, int? ever = null) =>
        Values.Whole(SourceFile, key, Take(key, new ValueKind.Whole(least, ever ?? most)), least, most, ever);

    public int? NeedWhole(string key, int least, int most) =>
        Values.Whole(SourceFile, key, Need(key, new ValueKind.Whole(least, most)), least, most);

    public decimal? Number(string key) => Values.Number(SourceFile, key, Take(key, new ValueKind.Number()));

    public decimal? NeedNumber(string key) => Values.Number(SourceFile, key, Need(key, new ValueKind.Number()));

    public Seconds? Span(string key, int least, int mostMinutes = Values.UsualMinutes) =>
        Values.Span(SourceFile, key, Take(key, ValueKind.Time), least, mostMinutes);

    public int? Percent(string key, int most = 100) => Values.Percent(SourceFile, key, Take(key, ValueKind.Share(most)), most);

    public int? Days(string key) => Values.Days(SourceFile, key, Take(key, ValueKind.DayCount));

    public DateOnly? NeedDate(string key) => Values.Date(SourceFile, key, Need(key, ValueKind.Day));

    public DateOnly? Date(string key) => Values.Date(SourceFile, key, Take(key, ValueKind.Day));

    public bool Flag(string key) => Choice(key, Values.YesOrNo) ?? false;

    public T? Choice<T>(string key, IReadOnlyList<(string Word, T Value)> words)
        where T : struct => Values.Choice(SourceFile, key, Take(key, ValueKind.Of(words.Select(w => w.Word))), words);

    public T? NeedChoice<T>(string key, IReadOnlyList<(string Word, T Value)> words)
        where T : struct => Values.Choice(SourceFile, key, Need(key, ValueKind.Of(words.Select(w => w.Word))), words);

    /// <summary>The texts of a list; a list that is left out is empty.</summary>
    public Series<Mention<string>> Texts(string key)
    {
        notes?.Take(key).AsList().Add(ValueKind.Any);
        return Values.Texts(SourceFile, key, Take(key));
    }

    public Series<Mention<string>> NeedTexts(string key)
    {
        notes?.Need(key);
        notes?.Take(key).AsList().Add(ValueKind.Any);
        return Values.Texts(SourceFile, key, Need(key));
    }

    /// <summary>The items of a list of groups.</summary>
    public IEnumerable<Fields> Groups(string key, string item, bool needed = false)
    {
        var value = needed ? Need(key) : Take(key);
        if (value is null)
            yield break;
        if (value is not YamlNode.Listing list)
        {
            SourceFile.Fault(
                Faults.ValueWrong,
                value.At,
                $"'{key}' is a list, but here is {value.Kind}.",
                "Begin each item on its own line with a hyphen."
            );
            yield break;
        }

        foreach (var node in list.Items)
            if (Of(SourceFile, node, item) is { } fields)
                yield return fields;
    }

    public Fields? Group(string key, string name) => Of(SourceFile, Take(key), name);

    public Fields? NeedGroup(string key, string name) => Of(SourceFile, Need(key), name);

    private Mention<string>? MentionIn(string key, YamlNode? node) =>
        Values.Shown(SourceFile, key, node) is { } text ? new(text.Value, text.At) : null;

    /// <param name="kind">What a reader takes for it, to be noted.</param>
    private YamlNode? Take(string key, ValueKind kind)
    {
        notes?.Take(key).Add(kind);
        return Take(key);
    }

    private YamlNode? Need(string key, ValueKind kind)
    {
        notes?.Take(key).Add(kind);
        return Need(key);
    }

    /// <summary>Says every key that nobody took, and every key that is missing. One that is there with a slip of the pen is one
    /// mistake, and is said once.</summary>
    public void Done()
    {
        foreach (var entry in map.Entries.Where(e => !known.Contains(e.Key)))
        {
            SourceFile.Fault(
                Faults.KeyUnknown,
                entry.KeyAt,
                $"{Quote.Of(entry.Key)} is no key of {group}.",
                Nearest.Ask(entry.Key, known, $"Take it out. The keys here are: {string.Join(", ", known)}."),
                entry.Key.Length
            );
            if (Nearest.To(entry.Key, known) is { } meant)
                missing.Remove(meant);
        }

        foreach (var key in missing)
            SourceFile.Fault(
                Faults.KeyMissing,
                map.Entries.Count > 0 ? map.Entries[0].KeyAt : map.At,
                $"'{key}' is missing: {group} needs it.",
                $"Add a line '{key}:' with its value."
            );
    }
}
