using System.Collections.Concurrent;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.Auditing.Proof;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing.Pages.Trees;

/// <summary>The strict reader is held against the parser of the whole standard (AngleSharp): it may give up on any page, and must
/// never read one in another way.</summary>
[Trait("Slow", "yes")]
public sealed class StrictReaderTests(ITestOutputHelper output)
{
    /// <summary>Pages that are longer are mutated less often: they take the time of many.</summary>
    private const int Long = 60_000;

    private static readonly Series<Page> Written =
    [
        .. ProofSite.All.SelectMany(s => s.Site.Pages),
        .. Sites(Repository.Path("content")).SelectMany(s => s.Pages).Where(p => p.Path == PagePath.AllPages),
    ];

    private static readonly string[] Guides =
    [
        .. ProofSite
            .All.Select(s => s.Text(GuideFile.Path))
            .OfType<string>()
            .Select(GuideFile.DialogIn)
            .OfType<string>()
            .Distinct(),
    ];

    [Fact]
    public void Every_page_that_Gradus_writes_is_read_and_as_the_standard_has_it()
    {
        Assert.NotEmpty(Guides);
        foreach (var page in Written)
        foreach (var guide in Guides.Take(1).Prepend(null))
        {
            // The little theme leaves out what begins the body of a table, which a browser puts in.
            var isRead = StrictReader.Read(page.Html, guide) is not null;
            Assert.True(isRead || page.Html.Contains("<table>\n<tr>", StringComparison.Ordinal), $"{page.Path} is given up");
            Assert.Null(Difference(page.Html, guide));
        }

        Assert.All(Guides, guide => Assert.Null(Difference(Written.First(p => HasPlace(p.Html)).Html, guide)));
    }

    /// <summary>That the slow way is the standard's own, place for place, is held too: the rest leans on it.</summary>
    [Fact]
    public void What_the_standard_s_parser_has_is_kept_place_for_place()
    {
        foreach (var page in Written.Select(p => p.Html).Append("<p>a\r\nb<b>c\rd<i>\n\r<u>").Append("<frameset>").Append(""))
            Assert.Equal(TreeTexts.Standard(page), TreeTexts.Ours(StandardReader.Read(page)));
    }

    [Fact]
    public void What_waits_in_a_template_is_seen_aside_however_deep()
    {
        var deep = string.Concat(Enumerable.Repeat("<template><i>", 4000));
        var tree = StandardReader.Read($"<!doctype html><body><template><img src=a><template><b></template></template>{deep}");
        var aside = tree.Elements.First(e => e.LocalName == "template").Aside;
        Assert.Equal(["img", "template", "b"], aside.Select(e => e.LocalName));
        Assert.Equal(7999, tree.Elements.Last(e => e.LocalName == "template").Aside.Count);
    }

    [Theory]
    [InlineData("<!DOCTYPE html PUBLIC \"-//W3C//DTD HTML 3.2//EN\"><html><head></head><body></body></html>")]
    [InlineData("<!doctype html><html><head></head><body><p><b>x</p>y</b></body></html>")]
    [InlineData("<!doctype html><html><head></head><body><table>x</table></body></html>")]
    [InlineData("<!doctype html><html><head></head><body><a>x<a>y</a></a></body></html>")]
    [InlineData("<!doctype html><html><head></head><body><p><span><div></div></span></p></body></html>")]
    [InlineData("<!doctype html><html><head></head><body><svg><p>x</p></svg></body></html>")]
    [InlineData("<!doctype html><html><head></head><body class=a class=b></body></html>")]
    [InlineData("<!doctype html><html><head></head><body>&notin;</body></html>")]
    [InlineData("<!doctype html><html><head></head><body><div/></body></html>")]
    [InlineData("<!doctype html><html><head></head><body><!-- x --></body></html>")]
    [InlineData("<!doctype html><html><head></head><body><template></template></body></html>")]
    public void What_is_more_than_nested_is_given_up(string html) => Assert.Null(StrictReader.Read(html));

    [Fact]
    public void No_broken_and_no_harmless_page_is_read_otherwise()
    {
        var sketches = ProofKinds.Listed.SelectMany(k => ProofKinds.Tried[k.Kind]).Concat(HarmlessChanges.All);
        var (tally, _) = (new Tally(), ProofSite.All);
        Parallel.ForEach(LongProof.Cases(sketches.Index()), s =>
        {
            foreach (var site in ProofSite.All.Take(ProofSite.Small))
            foreach (var page in Changed(site, s.Item.Make(site, new Chance((ulong)s.Index + 16))))
                tally.Add(s.Item.Operator, page.Html, null);
        });
        tally.Tell(output);
        Assert.True(tally.Accepted > 10 && tally.Read > LongProof.Cases(500), $"{tally.Accepted} of {tally.Read}");
        Assert.Equal("", tally.Wrong);
    }

    /// <summary>20,000 mutants, of each kind as many; the table says how many of them were read and how many given up.</summary>
    [Fact]
    public void No_mutant_is_read_otherwise()
    {
        var (tally, pages) = (new Tally(), Written.Select(p => p.Html).ToArray());
        Parallel.For(0, LongProof.Cases(20_000), number =>
        {
            var chance = new Chance((ulong)number + 20);
            var kind = PageMutants.Kinds[number % PageMutants.Kinds.Length];
            var page = chance.Of(pages);
            for (var tries = 0; page.Length > Long && tries < 6; tries++)
                page = chance.Of(pages);
            var mutant = PageMutants.Of(page, chance.Of(pages), kind, chance);
            for (var more = chance.Below(3) == 0 ? 1 : 0; more > 0; more--)
                mutant = PageMutants.Of(mutant, page, kind, chance);
            tally.Add(kind, mutant, chance.Below(4) == 0 ? chance.Of(Guides) : null);
        });
        // A guide that is broken itself.
        Parallel.For(0, LongProof.Cases(1000), number =>
        {
            var chance = new Chance((ulong)number + 21);
            var guide = PageMutants.Of(chance.Of(Guides), chance.Of(pages), chance.Of(PageMutants.Kinds), chance);
            tally.Add("in the guide", chance.Of(pages.Where(HasPlace).ToArray()), guide);
        });
        tally.Tell(output);
        Assert.True(tally.Accepted > LongProof.Cases(2000), $"{tally.Accepted} of {tally.Read}");
        Assert.Equal("", tally.Wrong);
    }

    private static bool HasPlace(string html) => html.Contains("data-guide=", StringComparison.Ordinal);

    /// <summary>Null where the strict reader gives up or reads what the standard's parser reads.</summary>
    private static string? Difference(string html, string? guide)
    {
        if (StrictReader.Read(html, guide) is not { } strict)
            return null;
        var (ours, theirs) = (TreeTexts.Of(strict).Split('\n'), TreeTexts.Of(StandardReader.Read(html, guide)).Split('\n'));
        var at = Enumerable
            .Range(0, Math.Max(ours.Length, theirs.Length))
            .FirstOrDefault(i => Line(ours, i) != Line(theirs, i), -1);
        return at < 0 ? null : $"read    {Line(ours, at)}\ninstead {Line(theirs, at)}";

        static string Line(string[] lines, int at) => at < lines.Length ? lines[at] : "nothing";
    }

    private static IEnumerable<Page> Changed(ProofSite site, Site? broken) =>
        broken is null ? [] : broken.Pages.Except(site.Site.Pages);

    private static IEnumerable<Site> Sites(string folder)
    {
        var practice = PracticeReader.Read(SourceFolder.Open(folder), []).Practice!;
        return practice.Clients.Select(c => SiteRenderer.Render(Planned.For(practice, c), ThemeFolder.Plain(), [])!);
    }

    /// <summary>What became of the pages that were tried.</summary>
    private sealed class Tally
    {
        private readonly ConcurrentBag<(string Kind, bool IsAccepted)> tried = [];
        private readonly ConcurrentBag<string> wrong = [];

        public int Read => tried.Count;

        public int Accepted => tried.Count(t => t.IsAccepted);

        public string Wrong => string.Join('\n', wrong.Take(5));

        public void Add(string kind, string html, string? guide)
        {
            tried.Add((kind, StrictReader.Read(html, guide) is not null));
            if (Difference(html, guide) is { } difference)
                wrong.Add($"{kind}\n{difference}");
        }

        public void Tell(ITestOutputHelper output)
        {
            output.WriteLine($"{"kind", -30}{"read", 8}{"given up", 10}");
            foreach (var kind in tried.GroupBy(t => t.Kind).OrderBy(k => k.Key, StringComparer.Ordinal))
                output.WriteLine($"{kind.Key, -30}{kind.Count(t => t.IsAccepted), 8}{kind.Count(t => !t.IsAccepted), 10}");
            output.WriteLine($"{"all", -30}{Accepted, 8}{Read - Accepted, 10}\n{Wrong}");
        }
    }
}
