namespace Gradus.Auditing;

/// <summary>Finds what a screen reader can only call "link", "button" or "picture".</summary>
internal sealed class LabelParser(PageMarkup page, AccessibleName names)
{
    private static readonly string[] NamedRoles =
    [
        "button",
        "link",
        "checkbox",
        "radio",
        "switch",
        "tab",
        "menuitem",
        "option",
        "slider",
        "spinbutton",
        "textbox",
        "searchbox",
        "combobox",
        "listbox",
        "meter",
        "progressbar",
        "img",
        "region",
        "dialog",
        "alertdialog",
        "tabpanel",
        "radiogroup",
        "form",
    ];

    private readonly bool severalNavs =
        page.Named("nav").Concat(page.With("role").Where(e => e.Value("role") == "navigation")).Distinct().Count() > 1;

    private readonly HashSet<string> labelled = page.Named("label")
        .Where(l => l.Has("for") && names.Of(l).Length > 0)
        .Select(l => l.Value("for") ?? "")
        .ToHashSet(StringComparer.Ordinal);

    /// <summary>What has no name, as it is called in a sentence; null where nothing is amiss.</summary>
    public string? Fault(PageElement element)
    {
        if (names.ByOthers(element) is { } words && string.IsNullOrWhiteSpace(words))
            return $"an element '{element.LocalName}' whose 'aria-labelledby' leads to no words";
        if (element.LocalName == "img" && element.Has("alt"))
            return null;
        return WhatNeedsName(element) is { } what && !IsNamed(element) ? what : null;
    }

    private string? WhatNeedsName(PageElement element) =>
        element.Value("role") switch
        {
            "presentation" or "none" => null,
            { } role when NamedRoles.Contains(role, StringComparer.Ordinal) => $"an element with the role '{role}'",
            "navigation" => severalNavs ? "one of several navigations" : null,
            _ => element.LocalName switch
            {
                "img" => "a picture without 'alt'",
                "video" or "audio" => "a clip",
                "a" or "area" when element.Has("href") => "a link",
                "button" or "summary" => "a button",
                "input" => Input(element.Value("type")?.ToLowerInvariant()),
                "select" or "textarea" or "meter" or "progress" => "a field",
                "nav" when severalNavs => "one of several navigations",
                _ => null,
            },
        };

    /// <summary>Buttons that send or reset a form have a name of the browser's own.</summary>
    private static string? Input(string? type) =>
        type switch
        {
            "hidden" or "submit" or "reset" => null,
            "button" or "image" => "a button",
            _ => "a field",
        };

    private bool IsNamed(PageElement element) =>
        element switch
        {
            { LocalName: "input" } when Input(element.Value("type")?.ToLowerInvariant()) == "a button" => names.Of(element).Length
                > 0,
            { LocalName: "input" or "select" or "textarea" or "meter" or "progress" } => IsLabelled(element),
            { LocalName: "nav" or "section" or "form" } or { LocalName: "div" } when !IsActed(element) => IsTitled(element),
            _ => names.Of(element).Length > 0,
        };

    private bool IsLabelled(PageElement field) =>
        IsTitled(field)
        || (field.Id is { } id && labelled.Contains(id))
        || (field.Closest("label") is { } around && names.Of(around).Length > 0);

    /// <summary>Regions are not named by what stands in them.</summary>
    private bool IsTitled(PageElement element) =>
        !string.IsNullOrWhiteSpace(names.ByOthers(element) ?? element.Value("aria-label") ?? element.Value("title"));

    private static bool IsActed(PageElement element) =>
        element.Value("role") is "button" or "link" or "checkbox" or "radio" or "switch" or "tab" or "menuitem" or "option";
}
