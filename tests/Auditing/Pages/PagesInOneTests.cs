using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Tests.Auditing.Proof;

namespace Gradus.Tests.Auditing.Pages;

/// <summary>A flawless file is parsed once for all of its pages, any other once for each: what is seen is the same.</summary>
public sealed class PagesInOneTests
{
    private static readonly Page Whole = ProofSite
        .All.First(s => s.IsOneFile)
        .Site.Pages.Single(p => p.Path == PagePath.AllPages);

    [Fact]
    public void A_page_of_a_flawless_file_is_seen_as_though_it_were_parsed_by_itself()
    {
        var (once, apart) = (PagesInOne.Read(Whole), PagesInOne.ReadApart(CutOf(Whole), Whole.Path));
        Assert.True(once.Length > 4, $"{once.Length} pages");
        Assert.Equal(apart.Length, once.Length);
        foreach (var (one, other) in once.Zip(apart))
        {
            Assert.Equal(other.Path, one.Path);
            Assert.Equal(other.Lines, one.Lines);
            Assert.Equal(other.Lists, one.Lists);
            Assert.Equal(other.Times, one.Times);
            Assert.Equal(other.Links, one.Links);
            Assert.Equal(other.Loads, one.Loads);
            Assert.Equal(other.Guides, one.Guides);
            Assert.Equal(other.Signs, one.Signs);
            Assert.Equal(other.Shape.Headings, one.Shape.Headings);
            Assert.Equal(other.Shape.Strange, one.Shape.Strange);
            Assert.Equal(other.Shape.Words, one.Shape.Words);
            Assert.Equal(other.Shape.Weeks, one.Shape.Weeks);
            Assert.Equal(other.Ids.Order(StringComparer.Ordinal), one.Ids.Order(StringComparer.Ordinal));
        }
    }

    private static PagesCut CutOf(Page whole) => new(whole.Html, [.. PartsOf(whole.Html)]);

    /// <summary>By its letters: where each page's section begins, and the page that it says it is.</summary>
    private static IEnumerable<(string Path, int From)> PartsOf(string html)
    {
        const string said = " data-page=\"";
        for (
            var at = html.IndexOf(said, StringComparison.Ordinal);
            at >= 0;
            at = html.IndexOf(said, at + 1, StringComparison.Ordinal)
        )
        {
            var from = at + said.Length;
            yield return (html[from..html.IndexOf('"', from)], html.LastIndexOf("<section", at, StringComparison.Ordinal));
        }
    }
}
