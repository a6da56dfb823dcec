using Gradus.Auditing;

namespace Gradus.Tests.Auditing.Pages;

/// <summary>Of a file that holds several pages each has its own elements, and what all have before and behind.</summary>
public sealed class PageMarkupTests
{
    private static readonly PageTree Tree = PageTree.Of(
        "<!doctype html><html><head><title>x</title></head><body><h1>a</h1><section id=one><p>b</p></section>"
            + "<section id=two class='now part'><p id=deep>c</p></section><footer>d</footer></body></html>"
    );

    private static readonly PageElement One = ById("one");
    private static readonly PageElement Two = ById("two");

    /// <summary>The second of two pages.</summary>
    private static readonly PageMarkup Page = PageMarkup.Of(Tree, 0..One.Number, Two.Number..Two.End, Two.End..Tree.Count);

    [Fact]
    public void It_has_its_own_elements_and_those_of_all()
    {
        Assert.Equal(["html", "head", "title", "body", "h1", "section", "p", "footer"], Page.All.Select(e => e.LocalName));
        Assert.All(Page.All.Index(), e => Assert.Equal(e.Index, Page.NumberOf(e.Item)));
        Assert.All(One.Within().Prepend(One), e => Assert.Equal(-1, Page.NumberOf(e)));
    }

    [Fact]
    public void What_stands_in_another_page_is_not_its_own()
    {
        Assert.False(Page.Has(One));
        Assert.False(Page.Has(One.FirstChild!));
        Assert.True(Page.Has(Two));
        Assert.True(Page.Has(Two.FirstChild!));
        Assert.True(Page.Has(Tree.Elements.Last()));
    }

    [Fact]
    public void Each_stands_in_what_it_is_written_in()
    {
        Assert.Equal(-1, Page.ParentOf(0));
        Assert.All(Enumerable.Range(1, Page.All.Count - 1), number =>
            Assert.Same(Page.All[number].ParentElement, Page.All[Page.ParentOf(number)])
        );
    }

    [Fact]
    public void Elements_are_found_by_name_attribute_class_and_id()
    {
        Assert.Equal([Two], Page.Named("section"));
        Assert.Empty(Page.Named("table"));
        Assert.Equal(["two", "deep"], Page.With("id").Select(e => e.Id));
        Assert.Equal([Two], Page.OfClass("part"));
        Assert.Empty(Page.OfClass("par"));
        Assert.Equal("p", Page.ById("deep")?.LocalName);
        Assert.Null(Page.ById("one"));
    }

    private static PageElement ById(string id) => Tree.Elements.First(e => e.Id == id);
}
