using AngleSharp.Css.Dom;
using AngleSharp.Css.Parser;
using AngleSharp.Dom;

namespace Gradus.Auditing;

/// <summary>The places of a page that a style may leave out. Each selector is read once, and asked only of the elements that have
/// what its last part is about: a name, a class or an attribute.</summary>
internal static class LeftOutPlaces
{
    private static readonly ILookup<(Key, string), Place> Known = Read().ToLookup(p => p.By);

    private enum Key
    {
        Name,
        Class,
        Attribute,
    }

    /// <summary>Each such element, with the words for what hides it: anywhere, and on a screen.</summary>
    public static (Dictionary<IElement, string> Anywhere, Dictionary<IElement, string> OnScreen) In(PageMarkup page)
    {
        var (anywhere, onScreen) = (new Dictionary<IElement, string>(), new Dictionary<IElement, string>());
        foreach (var (element, place) in Found(page).OrderBy(f => f.Place.Number))
        {
            anywhere.TryAdd(element, place.Words);
            if (!place.IsOnPaper)
                onScreen.TryAdd(element, place.Words);
        }

        return (anywhere, onScreen);
    }

    private static IEnumerable<(IElement Element, Place Place)> Found(PageMarkup page) =>
        from places in Known
        from element in places.Key.Item1 switch
        {
            Key.Name => page.Named(places.Key.Item2),
            Key.Class => page.OfClass(places.Key.Item2),
            _ => page.With(places.Key.Item2),
        }
        from place in places
        where place.Selector.Match(element, null)
        select (element, place);

    private static IEnumerable<Place> Read()
    {
        var parser = new CssSelectorParser();
        foreach (var (number, (text, isOnPaper)) in KnownStyles.List.LeftOut.Index())
        {
            var last = text[(text.LastIndexOfAny([' ', '>']) + 1)..];
            var selector = parser.ParseSelector(text) ?? throw new InvalidOperationException($"'{text}' is no selector.");
            yield return new(number, $"what a style may do with '{text}'", isOnPaper, selector, KeyOf(last));
        }
    }

    /// <summary>"nav", ".skip", "[data-why]", "li.done"</summary>
    private static (Key, string) KeyOf(string compound)
    {
        var end = compound.IndexOfAny(['.', '[', ':', '#'], 1) is > 0 and var at ? at : compound.Length;
        return compound[0] switch
        {
            '.' => (Key.Class, compound[1..end]),
            '[' => (Key.Attribute, compound[1..compound.IndexOfAny(['=', ']', '~', '^', '$', '*', '|'])]),
            >= 'a' and <= 'z' => (Key.Name, compound[..end]),
            _ => throw new InvalidOperationException($"'{compound}' names neither an element, nor a class, nor an attribute."),
        };
    }

    private sealed record Place(int Number, string Words, bool IsOnPaper, ISelector Selector, (Key, string) By);
}
