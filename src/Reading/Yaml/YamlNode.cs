using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>YAML as far as a practice needs it: texts, lists and keys with values, each with its place.</summary>
internal abstract record YamlNode(Location At)
{
    /// <summary>What a coach calls this kind of thing.</summary>
    public abstract string Kind { get; }

    /// <param name="IsPlain">Written without quotation marks.</param>
    /// <param name="End">The place behind its last character, or behind its closing quotation mark.</param>
    public sealed record Text(string Value, bool IsPlain, Location At, Location End) : YamlNode(At)
    {
        public override string Kind => Value.Length == 0 ? "nothing" : "a text";
    }

    public sealed record Listing(Series<YamlNode> Items, Location At) : YamlNode(At)
    {
        public override string Kind => "a list";
    }

    public sealed record Map(Series<YamlEntry> Entries, Location At) : YamlNode(At)
    {
        public override string Kind => "a group of keys";
    }
}

internal sealed record YamlEntry(YamlNode.Text Name, YamlNode Value)
{
    public string Key => Name.Value;

    public Location KeyAt => Name.At;
}
