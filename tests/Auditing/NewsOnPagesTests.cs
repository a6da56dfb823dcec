using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What a page says of an edition before is planned like any other word of it: the little practice with the record that
/// the page of past-week-changed has.</summary>
[Trait("Slow", "yes")]
public sealed class NewsOnPagesTests
{
    private static readonly Series<Edit> Recorded = Example
        .On(RuleBook.Pages().First(p => p.Rule == RuleId.Of(typeof(PastWeekChanged))))
        .First(e => !e.IsFound)
        .Edits;

    private static string Found(params string[] home) =>
        Example.Written(Trial.Of(Recorded.Append(Edit.Of("site/tess/index.html", home)).ToSeries()));

    [Fact]
    public void The_news_stand_on_page_one()
    {
        Assert.Equal("", Example.Written(Trial.Of(Recorded)));
        Assert.Equal("", Found("- <p>New since 30 November 2026</p>", "+ <p>New since 30 November 2026</p>"));
    }

    [Theory]
    [InlineData("New since 30 November 2026", "")]
    [InlineData("New since 30 November 2026", "<p>New since 1 December 2026</p>")]
    [InlineData("Other numbers in Ankles: Wall calf stretch", "")]
    [InlineData("Other numbers in Ankles: Wall calf stretch", "<p>Other numbers in Ankles: Calf press</p>")]
    public void News_that_are_missing_or_other_are_found(string line, string instead) =>
        Assert.Contains("plan-words-altered [tess]", Found($"- <p>{line}</p>", "+ " + instead), StringComparison.Ordinal);
}
