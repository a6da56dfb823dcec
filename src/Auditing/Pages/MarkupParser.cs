using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Finds whatever of a page is not on the list of known markup, in one walk.</summary>
/// <param name="list">What may stand in it.</param>
/// <param name="at">Where an element is written.</param>
internal sealed class MarkupParser(KnownMarkup list, Func<PageElement?, Location> at)
{
    private readonly List<StrangeMarkup> strange = [];
    private readonly List<WordsAttribute> words = [];
    private readonly HashSet<string> ids = new(StringComparer.Ordinal);
    private readonly HashSet<string> alone = new(StringComparer.Ordinal);

    /// <summary>A script, a link and a screen reader find the first of them only.</summary>
    public static StrangeMarkup IdTwice(string id, Location at) =>
        new($"the id '{id}' a second time", "Give each place an id of its own: links lead to the first alone.", at);

    public (Series<StrangeMarkup> Strange, Series<WordsAttribute> Words) Read(PageMarkup page)
    {
        var inside = new MarkupPlace[page.All.Count];
        for (var number = 0; number < page.All.Count; number++)
        {
            var element = page.All[number];
            var place = page.ParentOf(number) is >= 0 and var parent ? inside[parent] : MarkupPlace.Page;
            Judge(element, place);
            JudgePlace(element, place);
            // A template may become one at once, and no element of it is left to be seen.
            if (element.HasShadow)
                Say(element, "a shadow root", "Take it away: a browser shows it in place of what stands in the element.");
            inside[number] = Inside(element, place);
        }

        return (strange.ToSeries(), words.ToSeries());
    }

    /// <summary>What the children of an element stand in.</summary>
    private static MarkupPlace Inside(PageElement element, MarkupPlace place) =>
        element.LocalName switch
        {
            "head" => MarkupPlace.Head,
            "svg" => MarkupPlace.Drawing,
            _ when element.Has(PageData.Guide) || element.Has(PageData.LogPage) => MarkupPlace.Page | MarkupPlace.Guide,
            _ => place,
        };

    private void Judge(PageElement element, MarkupPlace place)
    {
        var name = element.LocalName;
        var own = element.LocalName is "dialog" && element.Has(PageData.Guide) ? MarkupPlace.Guide : place;
        if (name == "head")
            own = MarkupPlace.Head;
        if (list.Element(name) is not { } known)
        {
            Say(element, $"the element '{name}'", "Use another element: known-markup.txt lists those that may stand in a page.");
            return;
        }

        if ((known.Places & own) == 0)
            Say(element, $"the element '{name}' in this place", Place(known.Places));
        for (var i = 0; i < known.Needed.Count; i++)
            if (!element.Has(known.Needed[i]))
                Say(
                    element,
                    $"the element '{name}' without '{known.Needed[i]}'",
                    "Give it the attribute: known-markup.txt says what an element must have."
                );
        if (element.Attributes.Length == 0)
            return;
        // A style in an attribute is told by the list of known styles.
        for (var i = 0; i < element.Attributes.Length; i++)
            if (element.Attributes[i] is { Name: not "style" } attribute)
                Judge(element, known, place, attribute.Name.ToLowerInvariant(), attribute.Value);
        if (element.Has("hidden") && !element.Attributes.Any(a => list.IsShownAgain(a.Name, a.Value)))
            Say(
                element,
                "the attribute 'hidden' where no script shows it again",
                "Take it away; the page contract names the parts that scripts show and hide."
            );
        if (
            known.Attributes.ContainsKey("aria-hidden")
            && element.Has("aria-hidden")
            && element.TextContent.Any(c => !char.IsWhiteSpace(c))
        )
            Say(element, "the attribute 'aria-hidden' around words", "Take it away: it keeps them from a screen reader.");
    }

    private void Judge(PageElement element, KnownElement known, MarkupPlace place, string name, string value)
    {
        // What a page tells its scripts is judged beside the plan.
        if (name.StartsWith("data-", StringComparison.Ordinal) && !known.Attributes.ContainsKey(name))
        {
            words.Add(new(name, value, at(element)));
            if (place.HasFlag(MarkupPlace.Guide) && list.IsOutside(name))
                Say(element, $"the attribute '{name}' in the guided session or the log", "Leave it out there.");
            return;
        }

        var may = name == "content" && element.Value("name") is { } meant ? list.Named(meant) : list.Attribute(known, name);
        var fits = may?.Kind switch
        {
            KnownValueKind.Any => true,
            KnownValueKind.Empty => value.Length == 0 || string.Equals(value, name, StringComparison.OrdinalIgnoreCase),
            KnownValueKind.Number => value.Length is > 0 and <= 5 && value.All(char.IsAsciiDigit),
            KnownValueKind.Listed => may.Values.Contains(value.ToLowerInvariant(), StringComparer.Ordinal),
            KnownValueKind.Words => Told(element, name, value) || !known.Needed.Contains(name, StringComparer.Ordinal),
            _ => false,
        };
        if (!fits)
            Say(
                element,
                may is null
                    ? $"the attribute '{name}' on '{element.LocalName}'"
                    : $"{name}=\"{Short(value)}\" on '{element.LocalName}'",
                "Leave it out: known-markup.txt lists what an element may have."
            );
    }

    /// <summary>Whether it is the only one of its kind, where there may be one alone, and in what it stands.</summary>
    private void JudgePlace(PageElement element, MarkupPlace place)
    {
        var name = element.LocalName;
        if (element.Value("id") is { Length: > 0 } id && !ids.Add(id))
            strange.Add(IdTwice(id, at(element)));
        if (place != MarkupPlace.Drawing && list.IsAlone(name) && !alone.Add(name))
            Say(element, $"the element '{name}' a second time", "Leave one of them: a page has one alone.");
        if (element.ParentElement is { } around && !list.MayHold(around.LocalName, name))
            Say(
                element,
                $"the element '{name}' in '{around.LocalName}'",
                "Take it out: known-markup.txt lists what that may hold."
            );
        if (element.Value(PageData.Page) is { } path && element.Id != PageId.Page(path))
            Say(
                element,
                $"the page '{path}' under the id '{element.Id}'",
                $"Give it the id '{PageId.Page(path)}': links lead there."
            );
        if (name == "head" && element.FirstElementChild?.Has("charset") != true)
            Say(element, "a head that does not begin with its charset", "Write <meta charset=\"utf-8\"> first in it.");
    }

    private bool Told(PageElement element, string name, string value)
    {
        if (Spacing.Collapse(value) is not { Length: > 0 } said)
            return false;
        words.Add(new(name, said, at(element)));
        return true;
    }

    private void Say(PageElement element, string what, string help) => strange.Add(new(what, help, at(element)));

    private static string Place(MarkupPlace places) =>
        places.HasFlag(MarkupPlace.Head) ? "Put it into the head of the page."
        : places.HasFlag(MarkupPlace.Drawing) ? "Put it into a drawing."
        : "Put it into the guided session or the log; elsewhere nothing is filled in, opened or closed.";

    private static string Short(string value) => value.Length <= 40 ? value : value[..37] + "...";
}

/// <param name="What">As it is called in a sentence.</param>
public sealed record StrangeMarkup(string What, string Help, Location At);

/// <summary>Words that stand in an attribute, for somebody who hears the page, or for a script.</summary>
public sealed record WordsAttribute(string Name, string Said, Location At);
