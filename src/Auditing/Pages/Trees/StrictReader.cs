using System.Collections.Frozen;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Reads the kind of page that Gradus writes, and gives up at the first thing in which the HTML Standard asks for more
/// than to nest what is nested. What it does read, it reads as the standard has it; the tests hold it against a parser of the
/// whole standard.</summary>
internal sealed class StrictReader
{
    private static readonly string[] Doctypes = ["<!doctype html>", "<!DOCTYPE html>"];

    /// <summary>Names that most pages have are not made anew for each.</summary>
    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> Names = KnownMarkup
        .List.Names.ToFrozenSet(StringComparer.Ordinal)
        .GetAlternateLookup<ReadOnlySpan<char>>();

    private readonly string html;
    private readonly string? guide;
    private readonly PageTree.Builder tree;
    private readonly StrictNesting nesting;
    private readonly List<PageAttribute> attributes = [];
    private int at;

    /// <summary>Whether it reads what a script puts in, and not the page.</summary>
    private bool isPutIn;

    private StrictReader(string html, string? guide) => (this.html, this.guide, tree, nesting) = (html, guide, new(html), new());

    /// <param name="guide">See <see cref="PageTree.Of"/>.</param>
    /// <returns>Null where it gives up.</returns>
    public static PageTree? Read(string html, string? guide = null) => new StrictReader(html, guide).Page();

    private StrictReader(string guide, PageTree.Builder tree, StrictNesting nesting) =>
        (html, this.tree, this.nesting, isPutIn) = (guide, tree, nesting, true);

    private PageTree? Page()
    {
        if (!Doctypes.Any(d => html.StartsWith(d, StringComparison.Ordinal)) || StrictText.IsOdd(html))
            return null;
        at = Doctypes[0].Length;
        return All() && nesting.IsDone ? tree.Done(nesting.Body, isFlawless: true) : null;
    }

    private bool All()
    {
        while (at < html.Length)
            if (!(html[at] == '<' ? Tag() : Text()))
                return false;
        return true;
    }

    private bool Text()
    {
        var end = html.IndexOf('<', at);
        end = end < 0 ? html.Length : end;
        if (StrictText.Of(html.AsSpan(at, end - at)) is not { } text)
            return false;
        at = end;
        return nesting.Takes(text) is { } takes && (!takes || Added(text));
    }

    private bool Added(string text)
    {
        tree.Text(text);
        return true;
    }

    private bool Tag()
    {
        var from = at++;
        var isEnd = at < html.Length && html[at] == '/';
        if (isEnd)
            at++;
        var name = Name();
        if (name is null)
            return false;
        return isEnd ? End(name) : Begin(name, from);
    }

    /// <summary>An end tag has nothing but its name.</summary>
    private bool End(string name)
    {
        if (at >= html.Length || html[at++] != '>' || nesting.End(name) is not { } ended)
            return false;
        for (; ended > 0; ended--)
            tree.End();
        return true;
    }

    private bool Begin(string name, int from)
    {
        if (Attributes() is not { } isClosed || nesting.Begin(name) is not { } ended)
            return false;
        for (; ended > 0; ended--)
            tree.End();
        PageAttribute[] own = attributes.Count == 0 ? [] : [.. attributes];
        if (!nesting.Allows(name, own) || (isClosed && !nesting.MayBeClosed(name)))
            return false;
        if (name == "dialog" && !isPutIn && !PutIn(own))
            return false;
        // The parser of the standard keeps no place of a drawing.
        var element = tree.Begin(name, own, name == "svg" ? -1 : from, isPutIn);
        if (isClosed || StrictNesting.IsVoid(name))
            tree.End();
        else
            nesting.Begun(name, element);
        return !StrictNesting.IsRaw(name) || nesting.IsDrawing || Raw(name);
    }

    /// <summary>A script puts the guide before the first dialog that is a place for it.</summary>
    private bool PutIn(PageAttribute[] own)
    {
        if (guide is null || nesting.HasGuide || !own.Any(a => a.Name == PageData.Guide))
            return true;
        nesting.HasGuide = true;
        var depth = nesting.Depth;
        return !StrictText.IsOdd(guide) && new StrictReader(guide, tree, nesting).All() && nesting.Depth == depth;
    }

    /// <summary>Up to the end tag of the same name nothing is a tag.</summary>
    private bool Raw(string name)
    {
        var end = html.IndexOf("</", at, StringComparison.Ordinal);
        while (end >= 0 && !html.AsSpan(end + 2).StartsWith(name, StringComparison.OrdinalIgnoreCase))
            end = html.IndexOf("</", end + 2, StringComparison.Ordinal);
        if (end < 0)
            return false;
        var inside = html.AsSpan(at, end - at);
        at = end;
        var text = name is "style" or "script" ? StrictText.Raw(inside) : StrictText.Words(inside);
        return text is not null && Added(text);
    }

    /// <summary>Letters in lower case, digits and hyphens; null where it is anything else.</summary>
    private string? Name()
    {
        var from = at;
        while (at < html.Length && (char.IsAsciiLetter(html[at]) || char.IsAsciiDigit(html[at]) || html[at] is '-' or ':'))
            at++;
        var name = html.AsSpan(from, at - from);
        if (Names.TryGetValue(name, out var known))
            return known;
        return name.Length > 0 && char.IsAsciiLetterLower(name[0]) && !name.ContainsAnyInRange('A', 'Z') ? name.ToString() : null;
    }

    /// <summary>Whether the tag closes itself; null where it is written in a way that Gradus does not write.</summary>
    private bool? Attributes()
    {
        attributes.Clear();
        while (at < html.Length)
        {
            var from = at;
            while (at < html.Length && html[at] is ' ' or '\n')
                at++;
            if (at < html.Length && html[at] == '>')
            {
                at++;
                return false;
            }

            if (html.AsSpan(at).StartsWith("/>"))
            {
                at += 2;
                return true;
            }

            if (at == from || Name() is not { } name || IsTwice(name) || Value() is not { } value)
                return null;
            attributes.Add(new(name, value));
        }

        return null;
    }

    private bool IsTwice(string name)
    {
        foreach (var attribute in attributes)
            if (attribute.Name == name)
                return true;
        return false;
    }

    /// <summary>Between quotation marks, or one plain word.</summary>
    private string? Value()
    {
        if (at >= html.Length || html[at] != '=')
            return "";
        at++;
        if (at < html.Length && html[at] == '"')
        {
            var end = html.IndexOf('"', ++at);
            if (end < 0)
                return null;
            var quoted = StrictText.Value(html.AsSpan(at, end - at));
            at = end + 1;
            return quoted;
        }

        var from = at;
        while (at < html.Length && (char.IsAsciiLetterOrDigit(html[at]) || html[at] is '#' or '.' or '-' or '_'))
            at++;
        return at > from && at < html.Length && html[at] is ' ' or '\n' or '>' ? html[from..at] : null;
    }
}
