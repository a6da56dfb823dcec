using AngleSharp.Dom;

namespace Gradus.Auditing;

/// <summary>What is asked of single elements again and again, without the letters made small and the lists made anew that the
/// parser's own answers cost. Names of attributes are in small letters, as the parser keeps them.</summary>
internal static class MarkupReading
{
    /// <summary>What parts the classes of an element.</summary>
    public static readonly char[] Blanks = [' ', '\t', '\n', '\f', '\r'];

    public static bool Has(this IElement element, string attribute) => element.Attributes.GetNamedItem(attribute) is not null;

    /// <summary>Null where it has no such attribute.</summary>
    public static string? Value(this IElement element, string attribute) => element.Attributes.GetNamedItem(attribute)?.Value;

    /// <summary>Whether it has that class.</summary>
    public static bool Is(this IElement element, string name)
    {
        if (element.Value("class") is not { } classes)
            return false;
        foreach (var range in classes.AsSpan().SplitAny(Blanks))
            if (classes.AsSpan(range).SequenceEqual(name))
                return true;
        return false;
    }

    /// <summary>What stands in a style or a script, which is one text mostly, and a long one: it is not copied.</summary>
    public static string RawText(this IElement element) =>
        element.ChildNodes is { Length: 1 } inside && inside[0] is IText text ? text.Data : element.TextContent;

    /// <summary>The elements that stand in it, at any depth, in the order in which they are written.</summary>
    public static IEnumerable<IElement> Within(this IElement element)
    {
        var open = new Stack<INode>();
        Push(element);
        while (open.TryPop(out var node))
            if (node is IElement inner)
            {
                yield return inner;
                Push(inner);
            }

        void Push(IElement outer)
        {
            for (var i = outer.ChildNodes.Length - 1; i >= 0; i--)
                open.Push(outer.ChildNodes[i]);
        }
    }
}
