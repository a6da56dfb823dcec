using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>One of the few kinds of selector by which the list of known styles names a place: ".checklist li",
/// "dialog:not([open])", "[data-why]".</summary>
internal sealed class PlaceSelector
{
    private const string Without = ":not([",
        Having = ":has(";

    /// <summary>The last is what the selector is about.</summary>
    private readonly Series<Compound> compounds;

    private PlaceSelector(Series<Compound> compounds) => this.compounds = compounds;

    /// <exception cref="InvalidOperationException">It is of another kind.</exception>
    public static PlaceSelector Of(string selector) => new(selector.Split(' ').Select(Compound.Of).ToSeries());

    /// <summary>What an element has that it may be about: its name, else a class, else an attribute; the others are
    /// null.</summary>
    public string? Name => compounds[^1].Name is { Length: > 0 } name ? name : null;

    public string? Class => Name is null ? compounds[^1].Classes.FirstOrDefault() : null;

    public string? Attribute => Name is null && Class is null ? compounds[^1].Attributes[0] : null;

    public bool IsOf(PageElement element) => compounds[^1].IsOf(element) && Around(element.ParentElement, compounds.Count - 2);

    /// <summary>Whether elements around are what the parts before the last say. The nearest will do: a part says nothing of how
    /// far away it is.</summary>
    private bool Around(PageElement? element, int part)
    {
        for (var around = element; part >= 0 && around is not null; around = around.ParentElement)
            if (compounds[part].IsOf(around))
                part--;
        return part < 0;
    }

    /// <param name="Name">Empty for any element.</param>
    /// <param name="Missing">The attributes that it must not have.</param>
    private sealed record Compound(string Name, Series<string> Classes, Series<string> Attributes, Series<string> Missing)
    {
        public bool IsOf(PageElement element) =>
            (Name.Length == 0 || element.LocalName == Name)
            && Classes.All(element.Is)
            && Attributes.All(element.Has)
            && !Missing.Any(element.Has);

        public static Compound Of(string text)
        {
            var (classes, attributes, missing) = (new List<string>(), new List<string>(), new List<string>());
            var name = WordAt(text, 0);
            var at = name.Length;
            while (at < text.Length)
            {
                // What is filled in decides it: a place counts as left out where it may be.
                if (text.AsSpan(at).StartsWith(Having, StringComparison.Ordinal) && text[^1] == ')')
                    break;
                var isWithout = text.AsSpan(at).StartsWith(Without, StringComparison.Ordinal);
                var from = at + (isWithout ? Without.Length : 1);
                var word = WordAt(text, from);
                var (list, end) = (isWithout, text[at]) switch
                {
                    (true, _) => (missing, "])"),
                    (_, '.') => (classes, ""),
                    (_, '[') => (attributes, "]"),
                    _ => throw NotKnown(text),
                };
                at = from + word.Length + end.Length;
                if (word.Length == 0 || !text.AsSpan(from + word.Length).StartsWith(end, StringComparison.Ordinal))
                    throw NotKnown(text);
                list.Add(word);
            }

            return text.Length > 0 ? new(name, [.. classes], [.. attributes], [.. missing]) : throw NotKnown(text);
        }

        private static string WordAt(string text, int from)
        {
            var end = from;
            while (end < text.Length && (char.IsAsciiLetterOrDigit(text[end]) || text[end] == '-'))
                end++;
            return text[from..end];
        }

        private static InvalidOperationException NotKnown(string text) =>
            new($"'{text}' names no place that is known how to find.");
    }
}
