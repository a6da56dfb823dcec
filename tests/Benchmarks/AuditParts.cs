using System.Globalization;
using AngleSharp.Html.Parser;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Trainings;

namespace Gradus.Tests.Benchmarks;

/// <summary>Where the audit of finished sites takes its time: each part of it run by itself over the same sites.</summary>
internal static class AuditParts
{
    private const string Whole = "audit, whole",
        Rendering = "rendering, beside it";

    /// <summary>The rules that take most of the time; the rest in one line.</summary>
    private const int Named = 6;

    public static void Run(TextWriter to, int clients)
    {
        var practice = PracticeReader.Read(SourceFolder.Of(MadePractice.Of(clients).Contents()), new Findings()).Practice
            ?? throw new InvalidOperationException("The made practice cannot be read.");
        var theme = ThemeFolder.Plain();
        // The first time is that of a program just started; then it is compiled.
        foreach (var (name, laps) in new[] { ("from a cold start", new Laps()), ("in steady state", new Laps()) })
        {
            var run = new AuditRun(practice.Clients.Select(c => c.Name));
            foreach (var client in practice.Clients)
            {
                var training = Training.Of(practice, client);
                var plan = Plan.For(training, Texts.Of(practice, client), ClientRanges.ForPages(practice, client, training));
                var site = laps.Time(Rendering, () => SiteRenderer.Render(plan, theme, new Findings()))
                    ?? throw new InvalidOperationException($"No site for {client.Id}.");
                Of(plan, site, run, laps);
            }

            Write(to, $"{clients} clients, {name}", [.. laps.All]);
        }
    }

    private static void Of(Plan plan, Site site, AuditRun run, Laps laps)
    {
        laps.Time(Whole, () => RuleBook.Audit(plan, site, run).Count());
        var pages = site.Pages.Where(p => p.Path != PagePath.AllPages).ToArray();
        var parser = new HtmlParser(new HtmlParserOptions { IsKeepingSourceReferences = true });
        laps.Time("pages through AngleSharp alone", () => pages.Sum(p => parser.ParseDocument(p.Html).All.Length));
        laps.Time("pages read, parsing with it", () => pages.Select(p => PageParser.Read(p)).Count());
        if (site.Pages.FirstOrDefault(p => p.Path == PagePath.AllPages) is { } whole)
        {
            laps.Time("the one file through AngleSharp alone", () => parser.ParseDocument(whole.Html).All.Length);
            laps.Time("the one file read, parsing with it", () => PagesInOne.Read(whole).Length);
        }

        laps.Time("what each page must say", () => PageWording.Of(plan).Count);
        var seen = laps.Time("sites read, all of that and more", () => SiteSeen.Of(plan, site, run).ToArray());
        laps.Time("lines held against what they must say", () =>
            PageWording.Of(plan) is var wordings
                ? seen.Sum(s => s.Pages.Sum(p => WordingReader.Read(p.Lines, Of(wordings[p.Path], s.IsInOne)).Planned.Count))
                : 0
        );
        laps.Time("cautions and notes looked for", () => seen.Sum(s => Sighting.Of(plan, s).Count()));
        foreach (var rule in RuleBook.Rules.OfType<ISiteRule>())
            laps.Time($"rule {rule.Id}", () => seen.Sum(s => rule.Check(plan, s).Count()));
    }

    private static Wording Of((Wording Apart, Wording InOne) page, bool inOne) => inOne ? page.InOne : page.Apart;

    private static void Write(TextWriter to, string title, Lap[] laps)
    {
        var whole = laps.Single(l => l.Stage == Whole);
        var rules = laps.Where(l => l.Stage.StartsWith("rule ", StringComparison.Ordinal))
            .OrderByDescending(l => l.Processor)
            .ToArray();
        var rest = rules
            .Skip(Named)
            .Aggregate(new Lap($"{rules.Length - Named} other rules", 0, 0, 0), (sum, lap) =>
                new(sum.Stage, sum.Seconds + lap.Seconds, sum.Processor + lap.Processor, sum.Megabytes + lap.Megabytes)
            );
        to.WriteLine($"{title, -42}{"processor", 10}{"share", 8}{"MB allocated", 14}");
        foreach (var lap in laps.Except(rules).Concat(rules.Take(Named)).Append(rest))
            to.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{lap.Stage, -42}{lap.Processor, 10:N3}{100 * lap.Processor / whole.Processor, 7:N0}%{lap.Megabytes, 14:N1}"
                )
            );
        to.WriteLine();
    }
}
