using System.Collections.Frozen;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>A finished site as the rules see it.</summary>
/// <param name="Files">The path of everything in it.</param>
/// <param name="Texts">The files that are neither pages nor pictures, as text: styles, scripts, data.</param>
public sealed record SiteSeen(Series<PageSeen> Pages, FrozenSet<string> Files, Series<TextFile> Texts)
{
    /// <summary>How each page keeps each part of its duty, judged once for all rules that speak of it.</summary>
    internal Series<Sighting> Sightings { get; private init; } = [];

    /// <summary>Each step that it shows beside the plan's, worked out once for all rules that speak of it.</summary>
    internal Series<StepPair> Steps { get; private init; } = [];

    private PlanAnswers? answers;

    /// <summary>What the rules ask of the plan that the site is held against.</summary>
    internal PlanAnswers Asked(Plan plan) => answers ??= new(plan);

    /// <summary>Every stylesheet, once, with what is wrong with it.</summary>
    internal Series<SheetSeen> Sheets { get; private init; } = [];

    /// <summary>The names of the practice's clients, this one's among them.</summary>
    internal ClientNames Names { get; private init; } = ClientNames.None;

    /// <summary>What it is made of, the heaviest first.</summary>
    public Series<WeightSeen> Weights { get; private init; } = [];

    /// <summary>What its pictures and clips say beside what they show.</summary>
    public Series<MetadataSeen> Metadata { get; private init; } = [];

    /// <summary>Whether all pages stand in one file that has no other beside it.</summary>
    public bool IsInOne { get; private init; }

    /// <summary>The page that asks for the passphrase; null where there is none to ask for.</summary>
    public LockSeen? Lock { get; private init; }

    /// <summary>What the list of its files has to say; empty where all pages stand in one file.</summary>
    public string FileList { get; private init; } = "";

    /// <summary>How the address begins of a calendar that is written out in it.</summary>
    internal const string CalendarData = "data:text/calendar;charset=utf-8;base64,";

    private static readonly string[] TextEndings =
    [
        ".css",
        ".js",
        ".mjs",
        ".json",
        ".svg",
        ".txt",
        ".ics",
        ".vtt",
        ".xml",
        ".webmanifest",
        ".csv",
    ];
    private static readonly string[] PageEndings = [".html", ".htm", ".xhtml"];

    public PageSeen? Page(string path) => Pages.FirstOrDefault(p => string.Equals(p.Path, path, StringComparison.Ordinal));

    /// <summary>Reads every page of a site once, and looks for what the plan says must be on it. A style file counts for every
    /// page, whichever of them asks for it.</summary>
    /// <returns>The pages, and where the site has one page that holds all of them, that one as a site of its own.</returns>
    internal static IEnumerable<SiteSeen> Of(Plan plan, Site site, AuditRun run)
    {
        var whole = site.Pages.FirstOrDefault(p => p.Path == PagePath.AllPages);
        var answers = new PlanAnswers(plan);
        var opener = site.Pages.FirstOrDefault(p => p.Path == PagePath.Lock);
        var others = site.Pages.Where(p => p != whole && p != opener).ToArray();
        if (whole is null || others.Length > 0)
            yield return Seen(plan, Of(site, others, run), answers);
        if (whole is not null)
            yield return Seen(plan, InOne(whole, SourcesOf(whole, site, run), run), answers) with
            {
                Lock = opener is null ? null : LockSeen.Of(opener.Html, whole.Html),
            };
    }

    private static SiteSeen Seen(Plan plan, SiteSeen reading, PlanAnswers answers)
    {
        var heard = reading with
        {
            answers = answers,
            Pages = reading
                .Pages.Select(p =>
                    answers.WordingOf(p.Path, reading.IsInOne) is { } wording
                        ? p with
                        {
                            Spoken = WordingReader.Read(p.Lines, wording),
                        }
                        : p
                )
                .ToSeries(),
        };
        return heard with { Sightings = Sighting.Of(plan, heard).ToSeries(), Steps = StepPair.Of(plan, heard).ToSeries() };
    }

    /// <summary>Its only file is itself; a calendar is written out in the link that offers it.</summary>
    /// <param name="sources">What its style may have been made from.</param>
    private static SiteSeen InOne(Page whole, Series<SourceText> sources, AuditRun run)
    {
        var apart = PagesInOne.Read(whole);
        var ids = apart.SelectMany(p => p.Ids).ToHashSet(StringComparer.Ordinal);
        var twice = Twice(apart).Select(id => MarkupParser.IdTwice(id, Location.Whole(whole.Path))).ToArray();
        var pages = apart
            .Select(
                (p, number) =>
                    (
                        number == 0
                            ? p with
                            {
                                Shape = p.Shape with { Strange = [.. p.Shape.Strange, .. twice] },
                            }
                            : p.Under(apart[0])
                    ) with
                    {
                        Ids = ids,
                        At = Location.Whole(whole.Path),
                    }
            )
            .ToSeries();
        var calendar = pages.SelectMany(p => p.Links).Select(l => CalendarOf(l.Address)).OfType<string>().FirstOrDefault();
        return new(
            pages,
            FrozenSet.ToFrozenSet([whole.Path], StringComparer.Ordinal),
            calendar is null ? [] : [run.Read(PagePath.Calendar, calendar)]
        )
        {
            Names = run.Names,
            Sheets = SheetsOf(pages, [], sources, run).ToSeries(),
            IsInOne = true,
            Weights = [new(whole.Path, Encoding.UTF8.GetByteCount(whole.Html))],
            Metadata = pages
                .SelectMany(p => p.Loads)
                .Select(l => l.Address)
                .Where(a => a.StartsWith("data:", StringComparison.Ordinal))
                .Distinct(StringComparer.Ordinal)
                .Select(a => MetadataSeen.InData(whole.Path, a))
                .OfType<MetadataSeen>()
                .Distinct()
                .ToSeries(),
        };
    }

    /// <summary>The ids that more than one page has; head and foot are everybody's.</summary>
    private static IEnumerable<string> Twice(PageSeen[] apart) =>
        apart
            .SelectMany(p => p.Ids)
            .GroupBy(id => id, StringComparer.Ordinal)
            .Where(id => id.Count() > 1 && id.Count() < apart.Length)
            .Select(id => id.Key)
            .Order(StringComparer.Ordinal);

    private static string? CalendarOf(string address)
    {
        if (!address.StartsWith(CalendarData, StringComparison.Ordinal))
            return null;
        var bytes = new byte[address.Length];
        return Convert.TryFromBase64String(address[CalendarData.Length..], bytes, out var written)
            ? Encoding.UTF8.GetString(bytes, 0, written)
            : null;
    }

    private static SiteSeen Of(Site site, IEnumerable<Page> pages, AuditRun run)
    {
        var texts = site
            .Assets.Where(a => TextEndings.Any(e => a.Path.EndsWith(e, StringComparison.OrdinalIgnoreCase)))
            .Select(run.Read)
            .ToSeries();
        var files = site.Pages.Select(p => p.Path).Concat(site.Assets.Select(a => a.Path)).ToFrozenSet(StringComparer.Ordinal);
        var own = pages.ToArray();
        var read = Read(own.Concat(OtherPages(site)), texts).ToSeries();
        return new(read, files, texts)
        {
            Sheets = SheetsOf(read, texts, [], run).ToSeries(),
            Names = run.Names,
            FileList = Planning.FileList.Of(site.Pages, site.Assets),
            Weights = own.Select(p => new WeightSeen(p.Path, Encoding.UTF8.GetByteCount(p.Html)))
                .Concat(site.Assets.Select(a => new WeightSeen(a.Path, a.Bytes.Length)))
                .OrderByDescending(w => w.Bytes)
                .ThenBy(w => w.Path, StringComparer.Ordinal)
                .ToSeries(),
            Metadata = site.Assets.Select(a => MetadataSeen.In(a.Path, a.Bytes)).OfType<MetadataSeen>().ToSeries(),
        };
    }

    /// <summary>What a script puts into the pages is judged once, in the first page that has a place for it.</summary>
    private static IEnumerable<PageSeen> Read(IEnumerable<Page> pages, Series<TextFile> texts)
    {
        var guide = texts.FirstOrDefault(t => t.Dialog is not null)?.Dialog;
        foreach (var page in pages)
        {
            var read = PageParser.Read(page, guide: guide);
            if (read.Guides.Count > 0)
                guide = null;
            yield return read;
        }
    }

    /// <summary>The stylesheets that the style of the one page was made from: those that its maker names, or those that lie
    /// beside it.</summary>
    private static Series<SourceText> SourcesOf(Page whole, Site site, AuditRun run) =>
        whole.Styles.Value.Count > 0
            ? whole.Styles.Value
            : (
                from path in PageStyle.InOne
                from asset in site.Assets
                where asset.Path == path
                select new SourceText(
                    path,
                    run.Read(asset).Text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal)
                )
            ).ToSeries();

    /// <summary>Those that are files, and those that stand in pages. What stands there and is made from files is judged as these
    /// are, so that what is wrong with it has one place.</summary>
    private static IEnumerable<SheetSeen> SheetsOf(
        IEnumerable<PageSeen> pages,
        IEnumerable<TextFile> texts,
        Series<SourceText> sources,
        AuditRun run
    )
    {
        foreach (var text in texts.Where(t => t.IsStyle))
            yield return new(Location.Whole(text.Path), true, run.Judge(text.Text));
        var made = sources.Count > 0 ? run.Written(sources) : null;
        foreach (var style in pages.SelectMany(p => p.Styles).DistinctBy(s => s.At).DistinctBy(s => s.Text))
            if (style.Text == made && made is not null)
                foreach (var source in sources)
                    yield return new(Location.Whole(source.Path), true, run.Judge(source.Text));
            else if (style.Text is { } written)
                yield return new(style.At, false, run.Judge(written));
    }

    /// <summary>Pages that a theme brought along as files.</summary>
    private static IEnumerable<Page> OtherPages(Site site) =>
        site
            .Assets.Where(a => PageEndings.Any(e => a.Path.EndsWith(e, StringComparison.OrdinalIgnoreCase)))
            .Select(a => new Page(a.Path, Encoding.UTF8.GetString(a.Bytes.Span)));
}
