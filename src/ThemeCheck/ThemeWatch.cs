using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Microsoft.Playwright;

namespace Gradus.ThemeCheck;

/// <summary>Finished sites → everything that is not seen on their pages as it should be.</summary>
internal static class ThemeWatch
{
    /// <summary>How many pages are open at a time.</summary>
    private const int AtOnce = 2;

    private const string Day = "2026-12-14T10:00:00";

    /// <summary>What is looked at: one page of each kind, the largest, of a client.</summary>
    internal sealed record Visit(Plan Plan, string Path, Series<Sight> Sights);

    /// <param name="sites">Each with its plan.</param>
    /// <param name="chosen">The sights in which that page of that client is looked at; none to leave it out.</param>
    public static async Task<Series<Fault>> Of(
        IBrowser browser,
        IEnumerable<(Plan Plan, Site Site)> sites,
        Func<Plan, string, Series<Sight>> chosen
    )
    {
        var folder = Directory.CreateTempSubdirectory("gradus-theme-").FullName;
        try
        {
            var open = new Queue<Visit>(
                sites
                    .SelectMany(s =>
                    {
                        var place = Publication.Write(s.Site, folder).Place;
                        return OfEveryKind(s.Site)
                            .Select(p => new Visit(s.Plan, Path.Combine(place, p.Path), chosen(s.Plan, p.Path)));
                    })
                    .Where(t => t.Sights.Count > 0)
                    .OrderByDescending(t => new FileInfo(t.Path).Length * t.Sights.Count)
            );
            var found = await Task.WhenAll(Enumerable.Range(0, AtOnce).Select(_ => Worker(browser, open)));
            return found.SelectMany(f => f).OrderBy(f => f.Page, StringComparer.Ordinal).ToSeries();
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Every look at each kind of page of the first client: each look at each width on the three kinds that have all
    /// cautions. Of one file, and of the client who reads from right to left, a few.</summary>
    public static Series<Sight> Whole(Plan plan, string path) =>
        plan.Words.Language != "en"
            ? (KindOf(path) is "session" or "index" ? Sight.Few : [])
            : KindOf(path) switch
            {
                "all" => [Sight.Few[0], Sight.Print],
                "session" => Sight.Turned(1, Look.Dark),
                "exercise" => Sight.Turned(2, Look.Light),
                "weeks" => Sight.Turned(2, Look.Dark),
                _ => Sight.Turned(0, Look.Light),
            };

    /// <summary>Of those the session's page alone, and one look at each other kind of the first client: what a change of Gradus
    /// breaks first.</summary>
    public static Series<Sight> Sample(Plan plan, string path) =>
        plan.Words.Language != "en" ? []
        : KindOf(path) == "session" ? Whole(plan, path)
        : [Sight.Few[0]];

    private static string KindOf(string path) => path.Split('-', '.')[0];

    private static IEnumerable<Page> OfEveryKind(Site site) =>
        site.Pages.GroupBy(p => KindOf(p.Path)).Select(kind => kind.MaxBy(p => p.Html.Length) ?? kind.First());

    private static async Task<List<Fault>> Worker(IBrowser browser, Queue<Visit> open)
    {
        await using var context = await browser.NewContextAsync(new() { Offline = true });
        await context.Clock.SetFixedTimeAsync(Day);
        var faults = new List<Fault>();
        while (Next(open) is { } visit)
        {
            var page = await context.NewPageAsync();
            faults.AddRange(await Watched(page, visit));
            await page.CloseAsync();
        }

        return faults;
    }

    private static Visit? Next(Queue<Visit> open)
    {
        lock (open)
            return open.TryDequeue(out var visit) ? visit : null;
    }

    private static async Task<List<Fault>> Watched(IPage page, Visit visit)
    {
        var name = Path.GetFileName(visit.Path);
        var lines = WatchedLines.On(visit.Plan, name);
        var watch = await PageWatch.Open(page, visit.Path, lines, visit.Plan.Client.Text);
        var faults = new List<Fault>();
        foreach (var sight in visit.Sights)
        {
            faults.AddRange(await watch.Look(sight));
            if (sight.Axe)
                faults.AddRange((await Barriers.In(page)).Select(b => new Fault(visit.Plan.Client.Text, name, sight, "", b)));
            if (sight.OnPaper && visit.Plan.Words.Direction == "ltr")
            {
                var text = await PrintedText.Of(page);
                faults.AddRange(
                    lines
                        .SelectMany(g => g)
                        .Distinct()
                        .Where(line => !PrintedText.Has(text, line))
                        .Select(line => new Fault(
                            visit.Plan.Client.Text,
                            name,
                            sight,
                            line,
                            "it is not in the PDF that is printed."
                        ))
                );
            }
        }

        return faults;
    }
}
