using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>How the text of a page looks, and how large what somebody can press is made.</summary>
/// <param name="at">Where an element is written.</param>
internal sealed class LookParser(Looks looks, Func<IElement?, Location> at)
{
    private const int DepthLimit = 200;

    /// <summary>What shows no text on a ground that a style gives it.</summary>
    private static readonly HashSet<string> Apart = new(StringComparer.Ordinal)
    {
        "head",
        "script",
        "style",
        "template",
        "noscript",
        "svg",
        "math",
        "iframe",
        "object",
        "canvas",
        "video",
        "audio",
        "datalist",
        "meter",
        "progress",
    };

    private readonly List<TextLook> texts = [];
    private readonly List<TargetSeen> targets = [];
    private readonly HashSet<(Look Look, uint Shown, bool IsText)> seen = [];

    public (Series<TextLook> Texts, Series<TargetSeen> Targets) Read(IDocument document)
    {
        if (document.DocumentElement is { } root)
            Walk(root, looks.Root(root), (1u << looks.Screens.Count) - 1, 0);
        return (texts.ToSeries(), targets.ToSeries());
    }

    /// <param name="shown">On which of the screens it is there at all, a bit for each.</param>
    private void Walk(IElement element, Look look, uint shown, int depth)
    {
        if (look.Gone != 0 && !element.HasAttribute("hidden"))
            shown &= ~look.Gone;
        if (depth > DepthLimit || shown == 0)
            return;
        if (HasText(element) && seen.Add((look, shown, true)))
            texts.Add(new(Sample(element), at(element), Shades(look.Styles, shown)));
        if (look.Parts.Count > 0 && seen.Add((look, shown, false)))
            texts.AddRange(
                look.Parts.Select(part => new TextLook(
                    $"what the style puts at '{part.Part}' of {element.LocalName}",
                    at(element),
                    Shades(part.Styles, shown)
                ))
            );
        if (Targets.What(element) is { } what)
            targets.Add(
                new(
                    what,
                    at(element),
                    Targets.IsButton(element),
                    Targets.IsInSentence(element),
                    On(shown).Select(s => Targets.Sized(element, s.Item, look.Styles[s.Index])).ToSeries()
                )
            );
        foreach (var node in element.ChildNodes)
            if (node is IElement child && !Apart.Contains(child.LocalName))
                Walk(child, look.Child(looks, child), shown, depth + 1);
    }

    private IEnumerable<(int Index, Screen Item)> On(uint shown) =>
        looks.Screens.Index().Where(s => (shown & (1u << s.Index)) != 0);

    private Series<Shade> Shades(IReadOnlyList<Style> styles, uint shown) =>
        On(shown)
            .Select(s =>
            {
                var style = styles[s.Index];
                var (text, ground) = style.Pair();
                return new Shade(s.Item.Name, text, ground, style.Size, style.Weight, style.Open);
            })
            .ToSeries();

    /// <summary>Whether text stands directly in an element, or somebody writes into it. What cannot be used need not be read
    /// (WCAG 2.2, 1.4.3, "Incidental").</summary>
    private static bool HasText(IElement element)
    {
        if (element.HasAttribute("disabled"))
            return false;
        if (IsWritten(element))
            return true;
        foreach (var node in element.ChildNodes)
            if (node is IText text && !string.IsNullOrWhiteSpace(text.Data))
                return true;
        return false;
    }

    private static bool IsWritten(IElement element) =>
        element.LocalName == "textarea"
        || (
            element.LocalName == "input"
            && element.GetAttribute("type") is not ("hidden" or "checkbox" or "radio" or "range" or "color" or "file" or "image")
        );

    private static string Sample(IElement element)
    {
        if (IsWritten(element))
            return $"what is written in {element.GetAttribute("name") ?? element.LocalName}";
        var text = Spacing.Collapse(element.ChildNodes.OfType<IText>().First(t => !string.IsNullOrWhiteSpace(t.Data)).Data);
        return text.Length > 40 ? text[..40] + "…" : text;
    }
}
