using System.Collections.Frozen;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The places of a page that a style may leave out. Each selector is read once, and asked only of the elements that have
/// what its last part is about: a name, a class or an attribute.</summary>
internal static class LeftOutPlaces
{
    private static readonly Series<Place> Known = KnownStyles
        .List.LeftOut.Select(
            (place, number) =>
                new Place(
                    number,
                    $"what a style may do with '{place.Selector}'",
                    place.IsOnPaper,
                    PlaceSelector.Of(place.Selector)
                )
        )
        .ToSeries();

    private static readonly FrozenDictionary<string, Place[]> ByName = By(s => s.Name);
    private static readonly FrozenDictionary<string, Place[]> ByAttribute = By(s => s.Attribute);
    private static readonly FrozenDictionary<string, Place[]>.AlternateLookup<ReadOnlySpan<char>> ByClass = By(s => s.Class)
        .GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>For each element, the words for what hides it, null where nothing does: anywhere, and on a screen.</summary>
    public static (string?[] Anywhere, string?[] OnScreen) In(PageMarkup page)
    {
        var (anywhere, onScreen) = (new string?[page.All.Count], new string?[page.All.Count]);
        for (var number = 0; number < anywhere.Length; number++)
        {
            var (any, screen) = Of(page.All[number]);
            (anywhere[number], onScreen[number]) = (any?.Words, screen?.Words);
        }

        return (anywhere, onScreen);
    }

    /// <summary>The first of the list that names the element, and the first that is not for paper alone.</summary>
    private static (Place? Any, Place? OnScreen) Of(PageElement element)
    {
        var first = default((Place? Any, Place? OnScreen));
        if (ByName.TryGetValue(element.LocalName, out var named))
            first = Sooner(first, named, element);
        foreach (var attribute in element.Attributes)
        {
            if (ByAttribute.TryGetValue(attribute.Name, out var with))
                first = Sooner(first, with, element);
            if (attribute.Name == "class")
                foreach (var range in attribute.Value.AsSpan().SplitAny(PageTree.Blanks))
                    if (ByClass.TryGetValue(attribute.Value.AsSpan(range), out var classed))
                        first = Sooner(first, classed, element);
        }

        return first;
    }

    private static (Place?, Place?) Sooner((Place? Any, Place? OnScreen) first, Place[] places, PageElement element)
    {
        foreach (var place in places)
            if (place.Selector.IsOf(element))
            {
                if (first.Any is null || place.Number < first.Any.Number)
                    first.Any = place;
                if (!place.IsOnPaper && (first.OnScreen is null || place.Number < first.OnScreen.Number))
                    first.OnScreen = place;
            }

        return first;
    }

    private static FrozenDictionary<string, Place[]> By(Func<PlaceSelector, string?> key) =>
        Known
            .Where(place => key(place.Selector) is not null)
            .GroupBy(place => key(place.Selector) ?? "", StringComparer.Ordinal)
            .ToFrozenDictionary(same => same.Key, same => same.ToArray(), StringComparer.Ordinal);

    private sealed record Place(int Number, string Words, bool IsOnPaper, PlaceSelector Selector);
}
