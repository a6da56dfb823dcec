using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What readers ask of the files of one kind, noted while they read examples of it.</summary>
internal sealed class FileNotes
{
    private readonly Dictionary<YamlNode, ValueNotes> nodes = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Location, ValueNotes> texts = [];

    private readonly Dictionary<string, GroupNotes> groups = new(StringComparer.Ordinal);

    public ValueNotes Root { get; } = new();

    /// <summary>Another file of that kind begins: places are those of this one.</summary>
    public void Begin(YamlNode root)
    {
        nodes.Clear();
        texts.Clear();
        Take(root, Root);
    }

    /// <summary>From now on that node is the value that those notes are of.</summary>
    public void Take(YamlNode? node, ValueNotes notes)
    {
        if (node is null)
            return;
        nodes[node] = notes;
        if (node is YamlNode.Text)
            texts[node.At] = notes;
        if (node is YamlNode.Listing list)
            foreach (var item in list.Items)
                Take(item, notes.AsList());
    }

    public void Add(YamlNode? node, ValueKind kind)
    {
        if (node is not null && nodes.TryGetValue(node, out var notes))
            notes.Add(kind);
    }

    /// <summary>Of the text that begins there.</summary>
    public void Add(Location at, ValueKind kind)
    {
        if (texts.TryGetValue(at, out var notes))
            notes.Add(kind);
    }

    /// <summary>Null for a node of which nobody knows whose value it is.</summary>
    public GroupNotes? Group(YamlNode.Map map, string name)
    {
        if (!nodes.TryGetValue(map, out var notes))
            return null;
        var group = notes.AsGroup(() => IsOutermost(notes) ? new(name) : Known(name));
        group.Begin();
        return group;
    }

    private bool IsOutermost(ValueNotes notes) => notes == Root || notes == Root.Items;

    /// <summary>Wherever a group stands, it has the same keys.</summary>
    private GroupNotes Known(string name) => groups.TryGetValue(name, out var known) ? known : groups[name] = new(name);
}

/// <summary>The same for each kind of file in a practice.</summary>
internal sealed class ReadingNotes
{
    private readonly Dictionary<string, FileNotes> kinds = new(StringComparer.Ordinal);

    /// <summary>Null where such a file is no YAML and has no header.</summary>
    public FileNotes? Of(string path) =>
        SchemaKind.Of(path) is not { } kind ? null
        : kinds.TryGetValue(kind.Name, out var known) ? known
        : kinds[kind.Name] = new();
}
