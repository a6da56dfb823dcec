using System.Collections.Concurrent;
using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>How elements look that nothing in the style tells apart: the same names and attributes, in others that look the
/// same.</summary>
internal sealed class Look
{
    private readonly ConcurrentDictionary<(string Name, string Class, string More), Look> inside = new();

    private Look(IReadOnlyList<Style> styles, Series<PartLook> parts)
    {
        Styles = styles;
        Parts = parts;
        for (var i = 0; i < styles.Count; i++)
            if (styles[i].IsGone)
                Gone |= 1u << i;
    }

    /// <summary>On which screens it is not there, a bit for each.</summary>
    public uint Gone { get; }

    /// <summary>One for each screen.</summary>
    public IReadOnlyList<Style> Styles { get; }

    /// <summary>Text that the style itself puts there, or shows otherwise: before and after the element, its mark in a
    /// list.</summary>
    public Series<PartLook> Parts { get; }

    /// <param name="around">Null for the root of a page.</param>
    public static Look Of(Looks looks, Look? around, IElement element)
    {
        var rules = looks.Rules.Where(r => r.Means(element)).ToArray();
        var own = rules.Where(r => r.Of.Length == 0).ToArray();
        var attribute = StylePart.In(element.GetAttribute("style") ?? "").OfType<StylePart.Declared>().ToArray();
        var styles = looks
            .Screens.Select((screen, i) => new Style(around?.Styles[i], screen, Ordered(own, attribute, screen), looks.Scheme))
            .ToArray();
        var parts =
            from rule in rules
            where rule.Of.Length > 0
            group rule by rule.Of into part
            select new PartLook(
                part.Key,
                looks
                    .Screens.Select((screen, i) => new Style(styles[i], screen, Ordered([.. part], [], screen), looks.Scheme))
                    .ToSeries()
            );
        return new(styles, parts.Where(p => p.HasText).ToSeries());
    }

    public Look Child(Looks looks, IElement element) =>
        inside.GetOrAdd((element.LocalName, element.ClassName ?? "", looks.MoreOf(element)), _ => Of(looks, this, element));

    /// <summary>What is important wins, and among that what stands in an earlier layer.</summary>
    private static IEnumerable<StylePart.Declared> Ordered(LookRule[] rules, StylePart.Declared[] attribute, Screen screen)
    {
        var holding = rules.Where(r => r.Holds(screen)).ToArray();
        return holding
            .SelectMany(r => r.Says.Where(d => !d.IsImportant))
            .Concat(attribute.Where(d => !d.IsImportant))
            .Concat(holding.OrderByDescending(r => r.Layer).SelectMany(r => r.Says.Where(d => d.IsImportant)))
            .Concat(attribute.Where(d => d.IsImportant));
    }
}

/// <param name="Part">"before", "after", "marker" …</param>
internal sealed record PartLook(string Part, Series<Style> Styles)
{
    /// <summary>Whether there can be text in it: before and after an element only what the style says.</summary>
    public bool HasText =>
        Part is not ("before" or "after")
        || Styles.Any(s => s.Said("content") is { } content && content is not ("none" or "normal" or "\"\"" or "''" or "\" \""));
}
