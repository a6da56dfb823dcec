using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Rendering;

/// <summary>A word of the glossary in the plain theme: a link to its explanation at the foot of the page.</summary>
public sealed class TermsTests
{
    private static readonly Inline.Term Term = new(3, "Flèches & co", "flèche", "A <run>.");

    private static readonly Plan Plan = PlainTheme.Plan with
    {
        Programme = PlainTheme.Plan.Programme with
        {
            Letter = new([new Block.Paragraph([new Inline.Plain("Of "), Term], Location.Whole("clients/ansel/programme.md"))]),
        },
    };

    [Fact]
    public void The_word_leads_to_its_explanation_and_everything_is_escaped()
    {
        var page = new PlainTheme().Page("index.html", Plan);
        Assert.Contains("<p>Of <a class=\"term\" href=\"#word-3\">Flèches &amp; co</a></p>", page, StringComparison.Ordinal);
        Assert.Contains("<dt id=\"word-3\"><dfn>flèche</dfn></dt>\n<dd>A &lt;run&gt;.</dd>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void In_the_page_that_holds_all_others_it_leads_to_the_foot_of_its_own_part()
    {
        var page = new PlainTheme().Page("all-pages.html", Plan);
        Assert.Contains("<a class=term href=#index-word-3>", page, StringComparison.Ordinal);
        Assert.Contains("<dt id=index-word-3>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_with_no_such_word_has_no_list() =>
        Assert.DoesNotContain("class=\"terms\"", new PlainTheme().Page("weeks.html", Plan), StringComparison.Ordinal);
}
