using AngleSharp.Dom;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <param name="at">Where an element is written.</param>
internal sealed class ShapeParser(Func<IElement?, Location> at)
{
    public PageShape Read(IDocument document)
    {
        var told = Told(document).ToArray();
        var labels = new LabelParser(document);
        var (strange, words) = new MarkupParser(at).Read(document);
        return new(
            document.DocumentElement.GetAttribute("lang"),
            document.DocumentElement.GetAttribute("dir"),
            Spacing.Collapse(document.QuerySelector("head > title")?.TextContent ?? ""),
            told.Where(e => LevelOf(e) > 0).Select(e => new HeadingSeen(LevelOf(e), AccessibleName.Of(e), at(e))).ToSeries(),
            told.Select(e => (Element: e, What: labels.Fault(e)))
                .Where(f => f.What is not null)
                .Select(f => new Oddity(f.What ?? "", at(f.Element)))
                .ToSeries(),
            document.QuerySelectorAll("style").Select(e => new Oddity("the element 'style'", at(e))).ToSeries(),
            strange,
            words,
            // Data in a script element is no script: nothing runs it.
            document
                .All.Where(e => e.LocalName == "script" && e.GetAttribute("type") != "application/json")
                .Select(e => new ScriptSeen(e.GetAttribute("src")?.Trim(), e.TextContent, e.HasAttribute("defer"), at(e)))
                .ToSeries(),
            With(document, PageData.GoodUntil)
                .Select(e => new PastSeen(e.GetAttribute(PageData.GoodUntil) ?? "", Spacing.Collapse(e.TextContent), at(e)))
                .ToSeries(),
            new(
                With(document, PageData.Course)
                    .Select(e => new CourseSeen(
                        PageData.OfCourse.Select(name => (name, e.GetAttribute(name) ?? "")).ToSeries(),
                        at(e)
                    ))
                    .ToSeries(),
                With(document, PageData.Weeks)
                    .Select(e => new WeekPartSeen(
                        e.GetAttribute(PageData.Weeks) ?? "",
                        Spacing.Collapse((e.QuerySelector("h2,h3,h4,th") ?? e).TextContent),
                        at(e)
                    ))
                    .ToSeries(),
                With(document, PageData.Due)
                    .Select(e => new DueSeen(
                        e.GetAttribute(PageData.Due) ?? "",
                        e.GetAttribute(PageData.Weekdays) ?? "",
                        e.QuerySelector("a[href]")?.GetAttribute("href") ?? "",
                        at(e)
                    ))
                    .ToSeries(),
                With(document, PageData.Planned)
                    .Select(e => new PlannedSeen(
                        e.LocalName == "article" ? e.GetAttribute(PageData.About) ?? "" : "",
                        e.GetAttribute(PageData.Planned) ?? "",
                        e.QuerySelector($"[{PageData.Dose}]")?.GetAttribute(PageData.Dose) ?? "",
                        at(e)
                    ))
                    .ToSeries(),
                With(document, PageData.Doses)
                    .Select(e => new DosesSeen(
                        e.GetAttribute(PageData.Doses) ?? "",
                        Spacing.Collapse(e.QuerySelector("tr")?.TextContent ?? ""),
                        at(e)
                    ))
                    .ToSeries()
            )
        );
    }

    private static IEnumerable<IElement> With(IDocument document, string attribute) =>
        document.All.Where(e => e.HasAttribute(attribute));

    /// <summary>The elements that a screen reader gets, in order.</summary>
    private static IEnumerable<IElement> Told(IDocument document)
    {
        var kept = new HashSet<IElement>();
        foreach (var element in document.All)
        {
            if (AccessibleName.IsKept(element) || (element.ParentElement is { } parent && kept.Contains(parent)))
                kept.Add(element);
            else
                yield return element;
        }
    }

    private static int LevelOf(IElement element) =>
        element.LocalName is ['h', >= '1' and <= '6' and var level] ? level - '0'
        : element.GetAttribute("role") != "heading" ? 0
        : int.TryParse(element.GetAttribute("aria-level"), out var said) ? Math.Clamp(said, 1, 6)
        : 2;
}
