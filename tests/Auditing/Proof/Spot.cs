using System.Globalization;
using AngleSharp;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>One page of a site under change.</summary>
/// <param name="root">The page's own part where all pages are one.</param>
internal sealed class Spot(ProofSite of, IHtmlDocument document, IElement root, string path, Chance chance)
{
    /// <summary>A page ends where this is written.</summary>
    public const string Cut = "\uE002";

    private static readonly HtmlParser Parser = new();

    private readonly List<string> written = [];

    public ProofSite Of => of;

    public Plan Plan => of.Plan;

    public IHtmlDocument Document => document;

    public IElement Root => root;

    public string Path => path;

    public Chance Chance => chance;

    public IElement Head => document.Head!;

    /// <summary>Another file of the site as a link names it.</summary>
    public string To(string page) => of.IsOneFile ? "#" + page.Replace(".html", "", StringComparison.Ordinal) : page;

    public IEnumerable<IElement> All(string selector) => root.QuerySelectorAll(selector);

    public IElement? First(string selector) => root.QuerySelector(selector);

    /// <summary>The innermost elements that say just that, outside the guided session.</summary>
    public IEnumerable<IElement> Saying(params IEnumerable<string> texts)
    {
        var wanted = texts.Select(Spacing.Collapse).Where(t => t.Length > 0).ToHashSet(StringComparer.Ordinal);
        return root.QuerySelectorAll("*")
            .Where(e => e.LocalName is not ("option" or "button") && e.Closest("dialog") is null)
            .Where(e => wanted.Contains(Spacing.Collapse(e.TextContent)))
            .Where(e => !e.Children.Any(c => Spacing.Collapse(c.TextContent) == Spacing.Collapse(e.TextContent)));
    }

    /// <summary>Markup as it is written, which a parser would not keep so.</summary>
    public IText Raw(string markup)
    {
        written.Add(markup);
        return document.CreateTextNode(Token(written.Count - 1));
    }

    public void Before(IElement element, string markup) => element.Before(Raw(markup));

    public void After(IElement element, string markup) => element.After(Raw(markup));

    public void Inside(IElement element, string markup) => element.Append(Raw(markup));

    /// <summary>Around the element, or what it holds where it must stay in its list or table.</summary>
    public void Around(IElement element, string opens, string closes)
    {
        if (element.LocalName is "li" or "dt" or "dd" or "td" or "th" or "body")
        {
            element.Prepend(Raw(opens));
            element.Append(Raw(closes));
        }
        else
        {
            element.Before(Raw(opens));
            element.After(Raw(closes));
        }
    }

    /// <summary>The first text inside, from a chosen one on, that the change makes another; false where there is none.</summary>
    public bool Say(IElement element, Func<string, string> change)
    {
        var texts = element.Descendants<IText>().Where(t => t.Data.Trim().Length > 0).ToArray();
        if (texts.Length == 0)
            return false;
        var from = chance.Below(texts.Length);
        foreach (var text in texts.Skip(from).Concat(texts.Take(from)))
        {
            var said = change(text.Data);
            if (said == text.Data)
                continue;
            text.Data = said;
            return true;
        }

        return false;
    }

    /// <summary>The same for whichever of the pairs is met.</summary>
    public bool Say(IElement element, params (string Said, string Instead)[] pairs) =>
        pairs.Any(p => Say(element, text => Once(text, p.Said, p.Instead)));

    public static string Once(string text, string said, string instead) =>
        text.IndexOf(said, StringComparison.Ordinal) is >= 0 and var at
            ? text[..at] + instead + text[(at + said.Length)..]
            : text;

    /// <summary>A page of the site changed; null where none of them has what is needed.</summary>
    public static Site? Changed(ProofSite of, Chance chance, Func<string, bool> pages, Func<Spot, bool> change)
    {
        var paths = of.Paths.Where(pages).ToList();
        for (var tries = 0; tries < 4 && paths.Count > 0; tries++)
        {
            var path = chance.Of(paths);
            paths.Remove(path);
            var file = of.FileOf(path);
            var before = of.Site.Pages.Single(p => p.Path == file).Html;
            var document = Parser.ParseDocument(before);
            var root = of.IsOneFile ? document.QuerySelector($"main > section[data-page='{path}']")! : (IElement)document.Body!;
            var spot = new Spot(of, document, root, path, chance);
            var untouched = document.ToHtml();
            if (!change(spot))
                continue;
            var html = spot.Html();
            if (html != untouched)
                return of.With(file, html);
        }

        return null;
    }

    private string Html()
    {
        var html = document.ToHtml();
        foreach (var (number, markup) in written.Index())
            html = html.Replace(Token(number), markup, StringComparison.Ordinal);
        return html.Split(Cut)[0];
    }

    private static string Token(int number) => $"\uE000{number.ToString(CultureInfo.InvariantCulture)}\uE001";
}
