using AngleSharp.Dom;
using Gradus.Domain;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>One way to break a site, before it is known which site.</summary>
/// <param name="Operator">What is done, as the list of kinds calls it.</param>
/// <param name="Place">Where.</param>
/// <param name="Make">The site broken; null where it has no such place.</param>
/// <param name="Bytes">Whether by its nature only a comparison with what the sources make can see it.</param>
internal sealed record Sketch(string Operator, string Place, Func<ProofSite, Chance, Site?> Make, bool Bytes = false)
{
    /// <summary>Whether somebody has to look at it rather than that it blocks.</summary>
    public bool Warns { get; init; }

    /// <summary>Something done to an element of a page; false where that would change nothing.</summary>
    public static Sketch At(string name, Place place, Func<Spot, IElement, bool> change) =>
        new(name, place.Name, (site, chance) => Spot.Changed(site, chance, place.Pages, spot =>
            {
                var found = place.Find(spot).ToList();
                for (var tries = 0; tries < 3 && found.Count > 0; tries++)
                    if (change(spot, chance.Of(found)))
                        return true;
                return false;
            }));

    public static Sketch At(string name, Place place, Action<Spot, IElement> change) => At(name, place, (spot, element) =>
        {
            change(spot, element);
            return true;
        });

    /// <summary>The same in each of several places.</summary>
    public static IEnumerable<Sketch> AtEach(string name, IEnumerable<Place> places, Action<Spot, IElement> change) =>
        places.Select(place => At(name, place, change));

    public static IEnumerable<Sketch> AtEach(string name, IEnumerable<Place> places, Func<Spot, IElement, bool> change) =>
        places.Select(place => At(name, place, change));

    /// <summary>Two different elements of one place and a page.</summary>
    public static Sketch Pair(string name, Place place, Action<IElement, IElement> change) =>
        new(name, place.Name, (site, chance) => Spot.Changed(site, chance, place.Pages, spot =>
            {
                var found = place.Find(spot).ToList();
                if (found.Count < 2)
                    return false;
                var one = chance.Of(found);
                var others = found.Where(o => o.OuterHtml != one.OuterHtml && o.TextContent != one.TextContent).ToList();
                if (others.Count == 0)
                    return false;
                change(one, chance.Of(others));
                return true;
            }));

    /// <summary>Something done to the site as a whole.</summary>
    public static Sketch Whole(string name, string place, Func<ProofSite, Chance, Site?> make, bool bytes = false) =>
        new(name, place, make, bytes);
}

/// <summary>Where something is done.</summary>
/// <param name="Pages">Whether a page of that path may have it.</param>
internal sealed record Place(string Name, Func<string, bool> Pages, Func<Spot, IEnumerable<IElement>> Find)
{
    public static Place Of(string name, Func<string, bool> pages, string selector) =>
        new(name, pages, spot => spot.All(selector));

    public Place Where(string name, Func<IElement, bool> fits) => new(name, Pages, spot => Find(spot).Where(fits));
}
