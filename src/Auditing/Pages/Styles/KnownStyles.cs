using System.Reflection;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>The list of what a stylesheet may say, <c>known-styles.txt</c>, as it is read once.</summary>
internal sealed partial class KnownStyles
{
    [GeneratedRegex(@"""[^""]+""|\S+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();

    [GeneratedRegex(@"<([a-z-]+)>", RegexOptions.CultureInvariant)]
    private static partial Regex Kind();

    private static readonly string[] Places = ["in print", "in screen", "in wide", "in forced", "in nothing"];

    private readonly Dictionary<string, IReadOnlyList<IReadOnlyList<StylePattern>>> kinds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, HashSet<string>> words = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<KnownStyle>> styles = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> instead = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> said = new(StringComparer.Ordinal)
    {
        ["text"] = "the role of a text",
        ["ground"] = "the role of a ground",
        ["role"] = "a role",
        ["fonts"] = "fonts of the list, the last of them 'serif', 'sans-serif' or 'system-ui'",
    };
    private readonly List<StyleRequired> required = [];
    private readonly StyleSelectorReader places = new(null, new HashSet<string>(StringComparer.Ordinal));

    private KnownStyles(string text)
    {
        var group = new StyleGroup(StyleReach.General, []);
        foreach (var line in text.Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0 && l[0] != '#'))
            group = Read(line, group);
        Words = words.ToDictionary(w => w.Key, IReadOnlySet<string> (w) => w.Value, StringComparer.Ordinal);
        Values = new(kinds, Words);
        var data = PageData.Told.Concat(PageData.OfScripts).ToHashSet(StringComparer.Ordinal);
        Selectors = () => new(Words, data);
        LeftOut = styles["display"]
            .Concat(styles["position"])
            .Where(s => s.Text is "none" or "absolute" && s.Group.Reach == StyleReach.Place)
            .SelectMany(s =>
                s.Group.Selectors.Where(place => place.Pseudo.Length == 0).Select(place => (place.Text, s.Where == "in print"))
            )
            .ToSeries();
    }

    public static KnownStyles List { get; } = new(Resource());

    public IReadOnlyDictionary<string, IReadOnlySet<string>> Words { get; }

    public StyleValues Values { get; }

    /// <summary>A reader of selectors.</summary>
    public Func<StyleSelectorReader> Selectors { get; }

    /// <summary>What a style may keep from somebody, as selectors: nothing that everybody must see stands in it.</summary>
    public Series<(string Selector, bool IsOnPaper)> LeftOut { get; }

    public IReadOnlyList<StyleRequired> Required => required;

    /// <summary>What may be said of a property, in the order of the list; none of one that is not known.</summary>
    public IReadOnlyList<KnownStyle> Of(string property) => styles.TryGetValue(property, out var known) ? known : [];

    /// <summary>What to write instead of a property that is not on the list; null where nobody has said.</summary>
    public string? Instead(string property) => instead.GetValueOrDefault(property);

    /// <summary>What to write instead, in the words of the list, with its kinds spelt out.</summary>
    public string Help(IEnumerable<KnownStyle> known) =>
        known.Select(k => Kind().Replace(k.Words, m => said.GetValueOrDefault(m.Groups[1].Value, m.Value))).ToArray()
            is [_, ..] ways
            ? $"It may be: {string.Join("; ", ways.Take(6))}."
            : "Leave it out.";

    private StyleGroup Read(string line, StyleGroup group)
    {
        if (line.StartsWith("word ", StringComparison.Ordinal))
            ReadWords(line[5..]);
        else if (line.StartsWith("instead ", StringComparison.Ordinal))
        {
            foreach (var property in Head(line[8..]).Split(", "))
                instead.Add(property, Tail(line));
        }
        else if (line.StartsWith("for ", StringComparison.Ordinal))
            return new(line == "for any" ? StyleReach.General : Reach(line), line == "for any" ? [] : Selected(line[4..]));
        else if (line.StartsWith("only for ", StringComparison.Ordinal))
            return new(StyleReach.Only, Selected(line[9..]));
        else if (line.StartsWith("require ", StringComparison.Ordinal))
            ReadRequired(line[8..]);
        else if (line.IndexOf(" = ", StringComparison.Ordinal) is > 0 and var equals && !line[..equals].Contains(' '))
        {
            kinds.Add(line[..equals], StylePattern.Alternatives(line[(equals + 3)..]));
            said.Add(line[..equals], line[(equals + 3)..]);
        }
        else
            ReadStyle(line, group);
        return group;
    }

    /// <summary>What has any class is as good as anything; it gives way to 'only'.</summary>
    private static StyleReach Reach(string line) =>
        line.StartsWith("for " + StyleCompound.Any, StringComparison.Ordinal) ? StyleReach.General : StyleReach.Place;

    private void ReadWords(string line)
    {
        var known = words.TryGetValue(Head(line), out var already) ? already : words[Head(line)] = new(StringComparer.Ordinal);
        known.UnionWith(Word().Matches(Tail(line)).Select(m => m.Value.Trim('"')));
    }

    private void ReadStyle(string line, StyleGroup group)
    {
        var (value, needs, important) = (Tail(line), Array.Empty<string>(), StyleWeight.Plain);
        foreach (var (ending, weight) in new[] { (" must be important", StyleWeight.Must), (" important", StyleWeight.May) })
            if (value.EndsWith(ending, StringComparison.Ordinal))
                (value, important) = (value[..^ending.Length], weight);
        if (value.IndexOf(" needs ", StringComparison.Ordinal) is > 0 and var at)
            (value, needs) = (value[..at], value[(at + 7)..].Split(", "));
        var where = Places.FirstOrDefault(p => value.EndsWith(" " + p, StringComparison.Ordinal)) ?? "";
        value = where.Length > 0 ? value[..^(where.Length + 1)] : value;
        var known = new KnownStyle(group, value, StylePattern.Alternatives(value), where, needs.ToSeries(), important);
        if (!styles.TryGetValue(Head(line), out var all))
            styles[Head(line)] = all = [];
        all.Add(known);
    }

    /// <summary><c>SELECTOR { PROPERTY: VALUE } with PROPERTY: VALUE</c></summary>
    private void ReadRequired(string line)
    {
        var (open, close) = (line.IndexOf(" { ", StringComparison.Ordinal), line.IndexOf(" } with ", StringComparison.Ordinal));
        var (says, with) = (line[(open + 3)..close], line[(close + 8)..]);
        required.Add(
            new(
                Selected(line[..open])[0].Text,
                Head(says),
                StylePattern.Alternatives(Tail(says)),
                Tail(says).Trim('\''),
                Head(with),
                with.Contains(':', StringComparison.Ordinal) ? Tail(with) : ""
            )
        );
    }

    private IReadOnlyList<StyleSelector> Selected(string selectors) =>
        places.Read(selectors, CssTokens.Of(selectors), out var why) ?? throw new InvalidOperationException(why);

    private static string Head(string line) => line.Split(':', 2)[0].Trim();

    private static string Tail(string line) => line.Split(':', 2) is [_, var tail] ? tail.Trim() : "";

    private static string Resource()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("known-styles.txt")
            ?? throw new InvalidOperationException("The list of known styles is not built in.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
