using System.Reflection;
using System.Text.RegularExpressions;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

[Trait("Slow", "yes")]
public sealed class RulePagesTests
{
    private static readonly string[] Folders = ["src/Auditing/Rules", "src/Reading/Faults", "src/Rendering/Faults"];

    public static TheoryData<string> Ids =>
        new(Faults.All.Concat(RuleBook.Rules.Select(r => r.Id)).Append(SiteRenderer.ThemeBroken).Select(id => id.Text));

    [Fact]
    public void Nothing_is_found_in_the_little_practice() => Assert.Equal("", Example.Written(Trial.Of([])));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_example_comes_true(string rule)
    {
        var page = PageOf(rule);
        var examples = Example.On(page).ToArray();
        Assert.Contains(examples, e => e.IsFound);
        Assert.Contains(examples, e => !e.IsFound);
        Assert.All(examples, e => Assert.NotEmpty(e.Edits));
        var faults = examples.Select(e => e.Fault(page.Rule)).OfType<string>().ToArray();
        Assert.True(faults.Length == 0, "\n" + string.Join("\n\n", faults));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_page_begins_with_its_rule_and_one_sentence_about_it(string rule)
    {
        var page = PageOf(rule);
        Assert.StartsWith($"# {rule}\n\n", page.Text, StringComparison.Ordinal);
        Assert.Matches(@"\A[A-Z][^\n]{10,110}\.\z", page.Summary);
        Assert.Contains($"\n{page.Summary}\n\nLevel: ", page.Text, StringComparison.Ordinal);
        Assert.EndsWith("\n", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("\r", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_page_says_every_level_that_its_examples_have(string rule)
    {
        var page = PageOf(rule);
        var line = page.Text.Split('\n').Single(l => l.StartsWith("Level: ", StringComparison.Ordinal)).Split("Blocks:")[0];
        var levels = Example
            .On(page)
            .SelectMany(e => e.Finds.Split('\n'))
            .Select(l => Regex.Match(l, $@" (error|warning|note) {rule}( |\z)"))
            .Where(m => m.Success)
            .Select(m => m.Groups[1].Value);
        Assert.All(levels, level => Assert.Contains(level, line, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("hold 90 s, the exercise", "hold 91 s, the exercise")]
    [InlineData("programme.md:12:14 error", "programme.md:12:15 error")]
    [InlineData("programme.md:12:14 error", "programme.md:12:14 warning")]
    [InlineData("Stay inside", "Remain inside")]
    [InlineData("error dose-outside-envelope [tess]", "error dose-too-long [tess]")]
    [InlineData("## Found", "## Not found")]
    [InlineData("+ 1: 2 x hold 90 s", "+ 1: 2 x hold 60 s")]
    [InlineData("- 1: 2 x hold 30 s", "- 1: 2 x hold 31 s")]
    [InlineData("- 1: 2 x hold 30 s", "1: 2 x hold 30 s")]
    [InlineData("```edit ", "```change ")]
    public void A_page_that_says_something_else_fails(string said, string instead)
    {
        var page = PageOf("dose-outside-envelope");
        Assert.Contains(said, page.Text, StringComparison.Ordinal);
        Assert.False(
            IsTrue(page with { Text = page.Text.Replace(said, instead, StringComparison.Ordinal) }),
            "The altered page comes true."
        );
        Assert.True(IsTrue(page), "The page as it is does not come true.");
    }

    [Fact]
    public void Every_rule_is_in_the_book_once()
    {
        var written = typeof(RuleBook)
            .Assembly.GetTypes()
            .Where(t => t is { IsClass: true, IsAbstract: false } && t.IsAssignableTo(typeof(IRule)));
        Assert.Equal(
            written.Select(t => t.Name).Order(StringComparer.Ordinal),
            RuleBook.Rules.Select(r => r.GetType().Name).Order(StringComparer.Ordinal)
        );
        Assert.Equal(RuleBook.Rules.Count, RuleBook.Rules.Select(r => r.Id).Distinct().Count());
    }

    [Fact]
    public void Every_fault_of_reading_is_in_its_list()
    {
        var fields = typeof(Faults)
            .GetFields(BindingFlags.Public | BindingFlags.Static)
            .Where(f => f.FieldType == typeof(RuleId))
            .ToArray();
        Assert.Equal(fields.Select(f => (RuleId)f.GetValue(null)!), Faults.All);
        Assert.All(fields, f => Assert.Equal(Kebab.Of(f.Name), ((RuleId)f.GetValue(null)!).Text));
    }

    [Fact]
    public void List_classes_and_pages_correspond_one_to_one()
    {
        var pages = Folders.SelectMany(f => Repository.Files(f, ".md")).ToArray();
        Assert.Equal(
            Ids.Select(row => row.Data).Order(StringComparer.Ordinal),
            pages.Select(p => Kebab.Of(Path.GetFileNameWithoutExtension(p))).Order(StringComparer.Ordinal)
        );
        var rules = RuleBook.Rules.Select(r => r.GetType().Name).Order(StringComparer.Ordinal).ToArray();
        var withClass = pages
            .Where(p => File.Exists(Path.ChangeExtension(p, ".cs")))
            .Select(p => Path.GetFileNameWithoutExtension(p));
        Assert.Equal(rules, withClass.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_rule_is_named_after_its_class() =>
        Assert.All(RuleBook.Rules, rule => Assert.Equal(Kebab.Of(rule.GetType().Name), rule.Id.Text));

    [Fact]
    public void The_built_in_pages_are_the_ones_beside_the_classes() =>
        Assert.All(Folders.SelectMany(f => Repository.Files(f, ".md")), file =>
            Assert.Equal(File.ReadAllText(file), PageOf(Kebab.Of(Path.GetFileNameWithoutExtension(file))).Text)
        );

    private static RulePage PageOf(string rule)
    {
        return RuleBook.Pages().Concat(SiteRenderer.Pages()).Concat(Faults.Pages()).First(p => p.Rule.Text == rule);
    }

    private static bool IsTrue(RulePage page)
    {
        try
        {
            return Example.On(page).All(e => e.Fault(page.Rule) is null);
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }
}
