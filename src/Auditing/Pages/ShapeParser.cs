using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <param name="at">Where an element is written.</param>
internal sealed class ShapeParser(Func<PageElement?, Location> at)
{
    /// <param name="textOf">What stands in a style or a script.</param>
    public PageShape Read(PageMarkup page, Func<PageElement, string> textOf)
    {
        var told = Told(page).ToArray();
        var names = new AccessibleName(page);
        var labels = new LabelParser(page, names);
        var (strange, words) = new MarkupParser(KnownMarkup.List, at).Read(page);
        return new(
            page.All[0].Value("lang"),
            page.All[0].Value("dir"),
            Spacing.Collapse(page.Named("title").FirstOrDefault(t => t.ParentElement?.LocalName == "head")?.TextContent ?? ""),
            told.Where(e => LevelOf(e) > 0).Select(e => new HeadingSeen(LevelOf(e), names.Of(e), at(e))).ToSeries(),
            told.Select(e => (Element: e, What: labels.Fault(e)))
                .Where(f => f.What is not null)
                .Select(f => new Oddity(f.What ?? "", at(f.Element)))
                .ToSeries(),
            page.Named("style").Select(e => new Oddity("the element 'style'", at(e))).ToSeries(),
            strange,
            words,
            // Data in a script element is no script: nothing runs it.
            page.Named("script")
                .Where(e => e.Value("type") != "application/json")
                .Select(e => new ScriptSeen(e.Value("src")?.Trim(), textOf(e), e.Has("defer"), at(e)))
                .ToSeries(),
            page.With(PageData.GoodUntil)
                .Select(e => new PastSeen(e.Value(PageData.GoodUntil) ?? "", Spacing.Collapse(e.TextContent), at(e)))
                .ToSeries(),
            new(
                page.With(PageData.Course)
                    .Select(e => new CourseSeen(PageData.OfCourse.Select(name => (name, e.Value(name) ?? "")).ToSeries(), at(e)))
                    .ToSeries(),
                page.With(PageData.Weeks)
                    .Select(e => new WeekPartSeen(
                        e.Value(PageData.Weeks) ?? "",
                        Spacing.Collapse(
                            (e.Within().FirstOrDefault(i => i.LocalName is "h2" or "h3" or "h4" or "th") ?? e).TextContent
                        ),
                        at(e)
                    ))
                    .ToSeries(),
                page.With(PageData.Due)
                    .Select(e => new DueSeen(
                        e.Value(PageData.Due) ?? "",
                        e.Value(PageData.Weekdays) ?? "",
                        e.Within().FirstOrDefault(i => i.LocalName == "a" && i.Has("href"))?.Value("href") ?? "",
                        at(e)
                    ))
                    .ToSeries(),
                page.With(PageData.Planned)
                    .Select(e => new PlannedSeen(
                        e.LocalName == "article" ? e.Value(PageData.About) ?? "" : "",
                        e.Value(PageData.Planned) ?? "",
                        e.Within().FirstOrDefault(i => i.Has(PageData.Dose))?.Value(PageData.Dose) ?? "",
                        at(e)
                    ))
                    .ToSeries(),
                page.With(PageData.Doses)
                    .Select(e => new DosesSeen(
                        e.Value(PageData.Doses) ?? "",
                        Spacing.Collapse(e.Within().FirstOrDefault(i => i.LocalName == "tr")?.TextContent ?? ""),
                        at(e)
                    ))
                    .ToSeries()
            )
        );
    }

    /// <summary>The elements that a screen reader gets, in order.</summary>
    private static IEnumerable<PageElement> Told(PageMarkup page)
    {
        var kept = new bool[page.All.Count];
        for (var number = 0; number < kept.Length; number++)
        {
            kept[number] =
                (page.ParentOf(number) is >= 0 and var parent && kept[parent]) || AccessibleName.IsKept(page.All[number]);
            if (!kept[number])
                yield return page.All[number];
        }
    }

    private static int LevelOf(PageElement element) =>
        element.LocalName is ['h', >= '1' and <= '6' and var level] ? level - '0'
        : element.Value("role") != "heading" ? 0
        : int.TryParse(element.Value("aria-level"), out var said) ? Math.Clamp(said, 1, 6)
        : 2;
}
