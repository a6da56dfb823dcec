using System.Net;
using System.Text.RegularExpressions;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>The demonstration practice in the plain theme: nothing is found in it, and no caution of it can go without being
/// missed.</summary>
[Trait("Slow", "yes")]
public sealed class DemonstrationTests(ITestOutputHelper output)
{
    private static readonly DateOnly Today = new(2026, 12, 7);

    private static readonly Findings Read = [];

    private static readonly Practice Practice = PracticeReader
        .Read(SourceFolder.Open(Repository.Path("content")), Read)
        .Practice!;

    private static readonly Theme Plain = ThemeFolder.Plain();

    public static TheoryData<string> Clients => new(Practice.Clients.Select(c => c.Id.Text));

    [Fact]
    public void Nothing_is_found_in_the_practice_but_what_its_next_programmes_have_to_add()
    {
        Assert.NotEmpty(Practice.Clients);
        Assert.Equal(
            "",
            Example.Written(
                Read.Concat(RuleBook.Check(Practice, Planned.Trainings(Practice), Today))
                    .Where(f => (f.Rule.Text, f.Level) != ("gain-without-control", Level.Note))
                    .Where(f => (f.Rule.Text, f.Level) != ("work-without-demand", Level.Note))
                    .Where(f => !f.Message.StartsWith("In its 1 full week 'Seated chest turn", StringComparison.Ordinal))
            )
        );
    }

    [Theory]
    [MemberData(nameof(Clients))]
    public void Nothing_is_found_in_a_site(string client)
    {
        var (plan, site) = Made(client);
        Assert.Equal("", Example.Written(Audit(plan, site)));
    }

    [Theory]
    [MemberData(nameof(Clients))]
    public void Every_caution_is_missed_on_every_page_that_needs_it(string client)
    {
        var (plan, site) = Made(client);
        var planted = 0;
        foreach (var line in LongProof.Cases(plan.Cautions.SelectMany(c => c.Lines()).Distinct(StringComparer.Ordinal)))
        {
            var needed = site
                .Pages.Select(p => p.Path)
                .Where(path => plan.CautionsFor(ShownOn(plan, path)).Any(c => c.Lines().Contains(line)))
                .ToArray();
            var shortened = new Site(
                site.Client,
                site.Pages.Select(p => needed.Contains(p.Path) ? p with { Html = Without(p.Html, line) } : p),
                site.Assets
            );
            var missed = Audit(plan, shortened)
                .Where(f => f.Rule.Text is "caution-altered" or "page-without-cautions")
                .Select(f => f.At.File);
            Assert.Equal(needed, missed.Distinct().Order(StringComparer.Ordinal));
            planted += needed.Length;
        }

        output.WriteLine($"{client}: {planted} lines of cautions shortened on {site.Pages.Count} pages, each missed.");
        Assert.True(planted > LongProof.Cases(100), "Too few to prove anything.");
    }

    private static IEnumerable<ExerciseId> ShownOn(Plan plan, string path) =>
        path == PagePath.BeforeYouStart
            ? plan.Exercises.Select(e => e.Id)
            : plan.Sessions.FirstOrDefault(s => s.Path == path)?.Exercises
                ?? plan.Exercises.Where(e => e.Path == path).Select(e => e.Id);

    private static string Written(string text) => Regex.Escape(WebUtility.HtmlEncode(text));

    /// <summary>The page with the last word of that line taken out.</summary>
    private static string Without(string html, string line)
    {
        // A number that can be called is a link.
        const string tags = "(?:<[^>]+>)*";
        var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(word => (Bare: word.TrimEnd('.', ',', ';', ':'), Word: word))
            .Select(w => $"{tags}{Written(w.Bare)}{tags}{Written(w.Word[w.Bare.Length..])}{tags}");
        var shortened = Regex.Replace(html, string.Join(@"\s+", words), match =>
            Regex.Replace(match.Value, @"\s+(?:<[^>]+>)*[^\s<>]+(?:<[^>]+>[^\s<>]*)*\z", "")
        );
        Assert.NotEqual(html, shortened);
        return shortened;
    }

    private static (Plan Plan, Site Site) Made(string client)
    {
        var plan = Planned.For(Practice, Practice.Find(new ClientId(client))!);
        return (plan, SiteRenderer.Render(plan, Plain, [])!);
    }

    private static Series<Finding> Audit(Plan plan, Site site) =>
        RuleBook.Audit(plan, site, Practice.Clients.Where(c => c.Id != plan.Client).Select(c => c.Name)).ToSeries();
}
