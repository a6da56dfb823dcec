using System.Collections.Frozen;
using System.Reflection;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>The list of what may stand in a page, read from <c>known-markup.txt</c> beside it.</summary>
internal sealed class KnownMarkup
{
    /// <summary>Before a line of what an intake sheet may have.</summary>
    private const string OfSheet = "sheet ";

    public static readonly KnownMarkup List = Read(line => line.StartsWith(OfSheet, StringComparison.Ordinal) ? "" : line);

    /// <summary>What may stand in an intake sheet, which is no page of a site.</summary>
    public static readonly KnownMarkup Sheet = Read(line =>
        line.StartsWith(OfSheet, StringComparison.Ordinal) ? line[OfSheet.Length..] : ""
    );

    /// <summary>The data attributes that the page contract names.</summary>
    private static readonly FrozenSet<string> Data = PageData.Told.Concat(PageData.OfScripts).ToFrozenSet(StringComparer.Ordinal);

    private readonly Dictionary<string, KnownElement> elements = new(StringComparer.Ordinal);
    private readonly Dictionary<string, KnownValue> everywhere = new(StringComparer.Ordinal);
    private readonly Dictionary<string, KnownValue> named = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Series<string>> holding = new(StringComparer.Ordinal);
    private readonly HashSet<string> shown = new(StringComparer.Ordinal);
    private readonly HashSet<string> outside = new(StringComparer.Ordinal);
    private readonly HashSet<string> alone = new(StringComparer.Ordinal);

    private KnownMarkup() { }

    /// <summary>The element of that name; null where there is none.</summary>
    public KnownElement? Element(string name) => elements.GetValueOrDefault(name);

    /// <summary>All names of elements and attributes in it, and those that a drawing writes with large letters.</summary>
    public IEnumerable<string> Names =>
        elements
            .Keys.Concat(elements.Values.SelectMany(e => e.Attributes.Keys))
            .Concat(everywhere.Keys)
            .Concat(PageData.Told)
            .Concat(PageData.OfScripts)
            .Concat(["viewBox", "preserveAspectRatio"]);

    /// <summary>What that attribute may be on that element; null where it may not be there.</summary>
    public KnownValue? Attribute(KnownElement element, string name) =>
        element.Attributes.GetValueOrDefault(name) ?? everywhere.GetValueOrDefault(name);

    /// <summary>Whether it is a data attribute of the page contract.</summary>
    public static bool IsData(string name) => Data.Contains(name);

    /// <summary>Whether a script shows what has that attribute and is hidden, or that attribute with that value.</summary>
    public bool IsShownAgain(string attribute, string value) =>
        shown.Contains(attribute) || shown.Contains($"{attribute}={value}");

    /// <summary>Whether it may not stand in the guided session.</summary>
    public bool IsOutside(string attribute) => outside.Contains(attribute);

    /// <summary>Whether a page may have one of them alone.</summary>
    public bool IsAlone(string element) => alone.Contains(element);

    /// <summary>What the meta element of that name may say; null where there may be none.</summary>
    public KnownValue? Named(string meta) => named.GetValueOrDefault(meta);

    /// <summary>Whether an element may stand in another.</summary>
    public bool MayHold(string around, string element) =>
        !holding.TryGetValue(around, out var may) || may.Contains(element, StringComparer.Ordinal);

    /// <param name="meant">What of a line is said for that list; empty for none of it.</param>
    private static KnownMarkup Read(Func<string, string> meant)
    {
        using var file = Assembly.GetExecutingAssembly().GetManifestResourceStream("known-markup.txt")
            ?? throw new InvalidOperationException("The list of known markup is not in the program.");
        using var reader = new StreamReader(file);
        var list = new KnownMarkup();
        while (reader.ReadLine() is { } line)
            if (meant(line) is [not '#', ..] said)
                list.Add(said.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return list;
    }

    private void Add(string[] words)
    {
        if (words[0] == "shown")
            shown.UnionWith(words[1..]);
        else if (words[0] == "outside")
            outside.UnionWith(words[1..]);
        else if (words[0] == "alone")
            alone.UnionWith(words[1..]);
        else if (words[0] == "holds")
            holding[words[1]] = words[2..].ToSeries();
        else if (words[0] == "named")
            named[words[1]] = KnownValue.Of("content=" + words[2]).Value;
        else if (words[0] == "all")
            foreach (var (name, value) in words[1..].Select(KnownValue.Of))
                everywhere[name] = value;
        else
            Add(Enum.Parse<MarkupPlace>(words[0], ignoreCase: true), words[1], words[2..]);
    }

    private void Add(MarkupPlace place, string element, string[] attributes) =>
        elements[element] = new(
            place | (elements.TryGetValue(element, out var before) ? before.Places : MarkupPlace.None),
            attributes
                .Select(a => KnownValue.Of(a.TrimEnd(KnownValue.Needed)))
                .ToFrozenDictionary(a => a.Name, a => a.Value, StringComparer.Ordinal),
            attributes.Where(a => a[^1] == KnownValue.Needed).Select(a => a.TrimEnd(KnownValue.Needed).Split('=')[0]).ToSeries()
        );
}

/// <summary>Where an element may stand.</summary>
[Flags]
internal enum MarkupPlace
{
    None = 0,
    Page = 1,
    Head = 2,
    Guide = 4,
    Drawing = 8,
}

/// <param name="Needed">The attributes that it must have.</param>
internal sealed record KnownElement(MarkupPlace Places, FrozenDictionary<string, KnownValue> Attributes, Series<string> Needed);

/// <summary>What an attribute may be.</summary>
/// <param name="Values">One of these, in lower case; none where they are not listed.</param>
internal sealed record KnownValue(KnownValueKind Kind, Series<string> Values)
{
    public static readonly KnownValue Any = new(KnownValueKind.Any, []);

    /// <summary>Behind the name of an attribute that must be there.</summary>
    public const char Needed = '!';

    public static readonly KnownValue Words = new(KnownValueKind.Words, []);

    /// <summary>"name", "name=", "name=#", "name=words", "name=a|b"</summary>
    public static (string Name, KnownValue Value) Of(string written) =>
        written.Split('=', 2) is [var name, var value]
            ? (
                name,
                value switch
                {
                    "" => new(KnownValueKind.Empty, []),
                    "#" => new(KnownValueKind.Number, []),
                    "words" => Words,
                    _ => new(KnownValueKind.Listed, value.Split('|').Select(v => v.Replace('_', ' ')).ToSeries()),
                }
            )
            : (written, Any);
}

internal enum KnownValueKind
{
    Any,
    Empty,
    Number,
    Words,
    Listed,
}
