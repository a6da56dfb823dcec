using System.Text.RegularExpressions;
using Gradus.Auditing;
using Gradus.Planning;
using Gradus.Tests.House;

namespace Gradus.Tests.Planning;

/// <summary><c>page-contract.md</c> held against what it speaks of.</summary>
public sealed partial class PageContractPageTests
{
    private static readonly string Page = File.ReadAllText(Repository.Path("src", "Planning", "Contract", "page-contract.md"));

    [GeneratedRegex("(?<![a-z])data-[a-z-]+", RegexOptions.CultureInvariant)]
    private static partial Regex Attribute();

    [GeneratedRegex(@"[(,] ?`([a-z]+(?:-[a-z]+)+)`", RegexOptions.CultureInvariant)]
    private static partial Regex Rule();

    [Fact]
    public void Every_rule_about_pages_is_named_and_no_other()
    {
        var judged = RuleBook.Rules.Where(r => r is ISiteRule or IPublishedRule).Select(r => r.Id.Text);
        var prose = string.Join(
            '\n',
            Page.Split('\n').Where(l => !l.StartsWith("| ", StringComparison.Ordinal) || l.Contains('('))
        );
        Assert.Equal(
            judged.Order(StringComparer.Ordinal),
            Rule()
                .Matches(prose)
                .Select(m => m.Groups[1].Value)
                .Where(r => !r.StartsWith("data-", StringComparison.Ordinal))
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Every_attribute_on_it_is_one_that_the_theme_or_the_plan_writes()
    {
        var written = string.Concat(Repository.Files("themes/plain", ".html").Select(File.ReadAllText));
        var all = Attribute()
            .Matches(written)
            .Select(m => m.Value)
            .Concat(PageData.OfCourse)
            .Append(PageData.ByWeek)
            .Append(PageData.Letters);
        Assert.Subset(
            all.ToHashSet(StringComparer.Ordinal),
            Attribute().Matches(Page).Select(m => m.Value).ToHashSet(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Every_attribute_of_a_step_and_of_the_course_is_on_it() =>
        Assert.All(PageData.OfCourse.Append(PageData.Step), name => Assert.Contains($"`{name}`", Page, StringComparison.Ordinal));

    [Fact]
    public void Every_page_of_a_site_is_on_it()
    {
        string[] paths =
        [
            PagePath.Home,
            PagePath.BeforeYouStart,
            PagePath.Weeks,
            PagePath.Calendar,
            PagePath.AllPages,
            PagePath.FileList,
        ];
        Assert.All(paths, path => Assert.Contains($"| `{path}` |", Page, StringComparison.Ordinal));
    }
}
