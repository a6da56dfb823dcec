using System.Collections.Concurrent;
using System.Reflection;
using System.Text;
using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>How pages look that have the same styles. It fills up as pages are read: what one page has, the next need not work
/// out again.</summary>
internal sealed class Looks
{
    private static readonly string Browser = BuiltIn.Text(Assembly.GetExecutingAssembly(), "browser.css");

    private readonly AskedAttribute[] attributes;
    private readonly LookRule[] around;
    private readonly ConcurrentDictionary<string, Look> roots = new(StringComparer.Ordinal);

    /// <param name="sheets">In the order in which the page has them.</param>
    /// <param name="scheme">What the page says of light and dark in its head.</param>
    public Looks(IEnumerable<StyleSheet> sheets, string scheme)
    {
        Scheme = scheme;
        Rules = LookRules.Of(Browser, sheets);
        var asked = Rules.SelectMany(r => r.Attributes).Append(new("style", true)).ToArray();
        attributes =
        [
            .. asked
                .GroupBy(a => a.Name, StringComparer.Ordinal)
                .Select(a => new AskedAttribute(a.Key, a.Any(one => one.ByValue)))
                .OrderBy(a => a.Name, StringComparer.Ordinal),
        ];
        around = [.. Rules.Where(r => r.AsksAround)];
        Screens = Screen
            .All.DistinctBy(screen =>
                (screen.IsDark, string.Join(' ', Rules.Index().Where(r => r.Item.Holds(screen)).Select(r => r.Index)))
            )
            .ToSeries();
    }

    public Series<LookRule> Rules { get; }

    /// <summary>Those that show anything otherwise.</summary>
    public Series<Screen> Screens { get; }

    public string Scheme { get; }

    public Look Root(IElement element) =>
        roots.GetOrAdd($"{element.LocalName} {element.ClassName} {MoreOf(element)}", _ => Look.Of(this, null, element));

    /// <summary>What else can make two elements look different that have the same name and class.</summary>
    public string MoreOf(IElement element)
    {
        StringBuilder? more = null;
        if (element.Attributes.Length > (element.HasAttribute("class") ? 1 : 0))
        {
            foreach (var (name, byValue) in attributes)
                if (element.GetAttribute(name) is { } value)
                    (more ??= new()).Append(name).Append('=').Append(byValue ? value : "").Append('\n');
        }

        for (var i = 0; i < around.Length; i++)
            if (around[i].Means(element))
                (more ??= new()).Append(i).Append(' ');
        return more?.ToString() ?? "";
    }
}
