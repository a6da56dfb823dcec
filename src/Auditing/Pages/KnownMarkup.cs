using System.Collections.Frozen;
using System.Reflection;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>The list of what may stand in a page, read from <c>known-markup.txt</c> beside it.</summary>
internal sealed class KnownMarkup
{
    public static readonly KnownMarkup List = Read();

    /// <summary>The data attributes that the page contract names.</summary>
    private static readonly FrozenSet<string> Data = PageData.Told.Concat(PageData.OfScripts).ToFrozenSet(StringComparer.Ordinal);

    private readonly FrozenDictionary<string, KnownElement> elements;
    private readonly FrozenDictionary<string, KnownValue> everywhere;
    private readonly FrozenSet<string> shown;

    private KnownMarkup(
        FrozenDictionary<string, KnownElement> elements,
        FrozenDictionary<string, KnownValue> everywhere,
        FrozenSet<string> shown
    )
    {
        this.elements = elements;
        this.everywhere = everywhere;
        this.shown = shown;
    }

    /// <summary>The element of that name; null where there is none.</summary>
    public KnownElement? Element(string name) => elements.GetValueOrDefault(name);

    /// <summary>What that attribute may be on that element; null where it may not be there.</summary>
    public KnownValue? Attribute(KnownElement element, string name) =>
        element.Attributes.GetValueOrDefault(name) ?? everywhere.GetValueOrDefault(name);

    /// <summary>Whether it is a data attribute of the page contract.</summary>
    public static bool IsData(string name) => Data.Contains(name);

    /// <summary>Whether a script shows what has that attribute and is hidden.</summary>
    public bool IsShownAgain(string attribute) => shown.Contains(attribute);

    private static KnownMarkup Read()
    {
        using var file = Assembly.GetExecutingAssembly().GetManifestResourceStream("known-markup.txt")
            ?? throw new InvalidOperationException("The list of known markup is not in the program.");
        using var reader = new StreamReader(file);
        var (elements, everywhere, shown) = (
            new Dictionary<string, KnownElement>(StringComparer.Ordinal),
            new Dictionary<string, KnownValue>(StringComparer.Ordinal),
            new HashSet<string>(StringComparer.Ordinal)
        );
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '#')
                continue;
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words[0] == "shown")
                shown.UnionWith(words[1..]);
            else if (words[0] == "all")
                foreach (var (name, value) in words[1..].Select(KnownValue.Of))
                    everywhere[name] = value;
            else
                Add(elements, words[0], words[1], words[2..].Select(KnownValue.Of));
        }

        return new(
            elements.ToFrozenDictionary(StringComparer.Ordinal),
            everywhere.ToFrozenDictionary(StringComparer.Ordinal),
            shown.ToFrozenSet(StringComparer.Ordinal)
        );
    }

    private static void Add(
        Dictionary<string, KnownElement> elements,
        string place,
        string element,
        IEnumerable<(string Name, KnownValue Value)> attributes
    ) =>
        elements[element] = new(
            Enum.Parse<MarkupPlace>(place, ignoreCase: true)
                | (elements.TryGetValue(element, out var before) ? before.Places : MarkupPlace.None),
            attributes.ToFrozenDictionary(a => a.Name, a => a.Value, StringComparer.Ordinal)
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

internal sealed record KnownElement(MarkupPlace Places, FrozenDictionary<string, KnownValue> Attributes);

/// <summary>What an attribute may be.</summary>
/// <param name="Values">One of these, in lower case; none where they are not listed.</param>
internal sealed record KnownValue(KnownValueKind Kind, Series<string> Values)
{
    public static readonly KnownValue Any = new(KnownValueKind.Any, []);

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
