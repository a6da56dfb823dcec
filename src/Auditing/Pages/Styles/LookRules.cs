using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The styles of a page, in the order in which they come → every selector with what it says, the weakest first (CSS
/// Cascading 5).</summary>
internal sealed class LookRules
{
    /// <summary>What stands in no layer wins over every layer.</summary>
    private const int NoLayer = int.MaxValue;

    private static readonly string[] Looked =
    [
        "color",
        "background",
        "background-color",
        "background-image",
        "opacity",
        "display",
        "font",
        "font-size",
        "font-weight",
        "line-height",
        "content",
        "color-scheme",
        "box-sizing",
        "-webkit-text-fill-color",
        "height",
        "block-size",
        "min-height",
        "min-block-size",
        "max-height",
        "max-block-size",
        "width",
        "inline-size",
        "max-width",
        "max-inline-size",
        "min-width",
        "min-inline-size",
        "border",
        "border-width",
        "border-block",
        "border-block-width",
        "border-top",
        "border-bottom",
        "padding",
        "padding-block",
        "padding-block-start",
        "padding-block-end",
        "padding-top",
        "padding-bottom",
    ];

    private static readonly HashSet<string> Looks = new(Looked, StringComparer.Ordinal);

    private readonly Dictionary<string, int> layers = new(StringComparer.Ordinal);
    private readonly List<LookRule> rules = [];

    private LookRules() { }

    public static Series<LookRule> Of(string browser, IEnumerable<StyleSheet> sheets)
    {
        var all = new LookRules();
        all.Add(StylePart.In(browser), new(0, "", null, []));
        foreach (var sheet in sheets)
            all.Add(StylePart.In(sheet.Text), new(NoLayer, "", null, [sheet.Media]));
        return all.rules.OrderBy(r => r.Layer).ThenBy(r => r.Weight).ToSeries();
    }

    /// <summary>Where a part of a style stands.</summary>
    /// <param name="Around">The selector that it stands in.</param>
    private sealed record Place(int Layer, string LayerName, string? Around, Series<string> Media);

    private void Add(IReadOnlyList<StylePart> parts, Place place)
    {
        var own = parts
            .OfType<StylePart.Declared>()
            .Where(d => Looks.Contains(d.Name) || d.Name.StartsWith("--", StringComparison.Ordinal))
            .ToSeries();
        if (place.Around is { } selector && own.Count > 0)
            rules.AddRange(
                StyleValue.Parts(selector, ',').Select(s => LookRule.For(s, place.Layer, place.Media, own)).OfType<LookRule>()
            );
        foreach (var part in parts)
        {
            if (part is StylePart.Block block)
                Add(block.Inside, Inside(block.Head, place));
            else if (
                part is StylePart.Statement { Head: var head }
                && head.StartsWith("@layer", StringComparison.OrdinalIgnoreCase)
            )
                foreach (var name in StyleValue.Parts(head[6..], ','))
                    LayerOf(place, name);
        }
    }

    /// <summary>Of @supports, @container and the like we judge what stands inside, as though they held.</summary>
    private Place Inside(string head, Place place)
    {
        if (!head.StartsWith('@'))
            return place with { Around = place.Around is { } around ? Nested(around, head) : head };
        var word = head.Split([' ', '(', '\t', '\n'], 2)[0].ToLowerInvariant();
        return word switch
        {
            "@media" => place with { Media = place.Media.Append(head[6..]).ToSeries() },
            "@layer" => LayerOf(place, head[6..].Trim()),
            "@supports" or "@container" or "@scope" => place,
            // Frames of animations, fonts, paper: no rules about elements.
            _ => place with { Media = ["print"], Around = null },
        };
    }

    private Place LayerOf(Place place, string name)
    {
        if (place.Layer == 0)
            return place;
        var full = place.LayerName + "." + (name.Length > 0 ? name : $"#{layers.Count}");
        layers.TryAdd(full, layers.Count + 1);
        return place with { Layer = layers[full], LayerName = full };
    }

    private static string Nested(string around, string head) =>
        string.Join(
            ", ",
            StyleValue
                .Parts(head, ',')
                .Select(part =>
                    part.Contains('&', StringComparison.Ordinal)
                        ? part.Replace("&", $":is({around})", StringComparison.Ordinal)
                        : $":is({around}) {part}"
                )
        );
}

/// <summary>One style that a page is shown with.</summary>
/// <param name="Media">As its link or its element says it; empty for all.</param>
internal sealed record StyleSheet(string Text, string Media);
