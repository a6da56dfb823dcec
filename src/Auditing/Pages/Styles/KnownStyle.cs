using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>For whom a part of the list is.</summary>
internal enum StyleReach
{
    /// <summary>For anything, or for what is not named further.</summary>
    General,

    /// <summary>For some places, beside what holds for anything.</summary>
    Place,

    /// <summary>For some places, and there in place of what holds for anything.</summary>
    Only,
}

internal enum StyleWeight
{
    Plain,
    May,
    Must,
}

/// <param name="Selectors">Those places; none for anything.</param>
internal sealed record StyleGroup(StyleReach Reach, IReadOnlyList<StyleSelector> Selectors)
{
    public bool Holds(StyleSelector selector) =>
        Selectors.Count == 0
            ? selector.Pseudo.Length == 0 && !selector.IsEverything
            : Selectors.Any(place => (selector.IsEverything || !place.IsEverything) && selector.IsWithin(place));
}

/// <summary>What may be said of a property.</summary>
/// <param name="Text">The values as the list has them.</param>
/// <param name="Where">"in print" …; empty for everywhere.</param>
/// <param name="Needs">What must be said in the same block.</param>
internal sealed record KnownStyle(
    StyleGroup Group,
    string Text,
    IReadOnlyList<IReadOnlyList<StylePattern>> Values,
    string Where,
    Series<string> Needs,
    StyleWeight Weight
)
{
    public bool HoldsIn(StyleMedium medium) =>
        Where switch
        {
            "" => true,
            "in print" => medium.Medium == "print",
            "in screen" => medium.Medium == "screen",
            "in wide" => medium.IsWide,
            "in forced" => medium.IsForced,
            _ => false,
        };

    /// <summary>As it is said in a sentence: "1..2 in print, important".</summary>
    public string Words =>
        Text
        + (Where.Length > 0 ? " " + Where : "")
        + (Needs.Count > 0 ? $", with {string.Join(" and ", Needs)} in the same block" : "")
        + (Weight == StyleWeight.Must ? ", important" : "");
}

/// <summary>What some stylesheet of a site must say where that property is used in one.</summary>
/// <param name="Selector">The selector to the letter.</param>
/// <param name="With">A property; "*" for every site, "roles" for one whose styles have colours, "guide" for
/// one whose styles name a part of the guided session.</param>
/// <param name="WithValue">Empty for any value but "none".</param>
internal sealed record StyleRequired(
    string Selector,
    string Property,
    IReadOnlyList<IReadOnlyList<StylePattern>> Values,
    string Text,
    string With,
    string WithValue
)
{
    public string Words => $"{Selector} {{ {Property}: {Text} }}";
}
