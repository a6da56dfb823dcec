using System.Text.RegularExpressions;

namespace Gradus.Tests.House;

/// <summary>Every decision says which tests hold it, and they are there; every page that a comment cites is there too.</summary>
public sealed partial class DecisionsTests
{
    /// <summary>Names in comments that stand for any file, or for one of an example.</summary>
    private static readonly string[] Stand = ["ID.md", "ID.LANG.md", "cramp.en.md"];

    private static readonly HashSet<string> TestClasses = Repository
        .Files("tests", "Tests.cs")
        .Select(f => Path.GetFileNameWithoutExtension(f))
        .ToHashSet(StringComparer.Ordinal);

    [GeneratedRegex("`([A-Za-z]+Tests)`", RegexOptions.CultureInvariant)]
    private static partial Regex TestName();

    [GeneratedRegex(@"^\s*//.*?\b([A-Za-z][A-Za-z.-]*\.md)\b", RegexOptions.CultureInvariant)]
    private static partial Regex CitedPage();

    public static TheoryData<string> Pages =>
        new(
            new[] { "src", "themes", "tests" }
                .SelectMany(folder => Repository.Files(folder, "decisions.md"))
                .Select(file => Path.GetRelativePath(Repository.Root, file))
        );

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_decision_names_tests_that_there_are_or_says_that_nobody_holds_it(string page) =>
        Assert.Empty(Faults(File.ReadAllText(Repository.Path(page))));

    [Theory]
    [InlineData("# Decisions\n\n## One\n\nWhy.\n")]
    [InlineData("# Decisions\n\n## One\n\nWhy.\n\nHeld by: `NoSuchTests`.\n")]
    [InlineData("# Decisions\n\n## One\n\nWhy.\n\nHeld by: care.\n")]
    [InlineData("# Decisions\n\n## One\n\nWhy.\n\n## Two\n\nHeld by: `DecisionsTests`.\n")]
    public void A_decision_that_nothing_holds_would_be_found(string page) => Assert.NotEmpty(Faults(page));

    [Fact]
    public void There_are_decisions_in_every_part_of_the_house() =>
        Assert.All(new[] { "src/Auditing", "src/Reading", "src/Rendering", "themes/plain", "tests" }, part =>
            Assert.Contains(Pages, row => row.Data.StartsWith(part, StringComparison.Ordinal))
        );

    [Fact]
    public void Every_page_that_a_comment_cites_is_there()
    {
        var there = new[] { "src", "content", "themes", "tests" }
            .SelectMany(folder => Repository.Files(folder, ".md"))
            .Select(f => Path.GetFileName(f))
            .Concat(["README.md", "DEVELOPERS.md"])
            .ToHashSet(StringComparer.Ordinal);
        var cited = new[] { "src", "tests" }
            .SelectMany(folder => Repository.Files(folder, ".cs"))
            .Concat(Repository.Files("themes", ".js"))
            .SelectMany(file => File.ReadLines(file).Select(line => (file, CitedPage().Match(line))))
            .Where(c => c.Item2.Success)
            .Select(c => (c.file, Page: c.Item2.Groups[1].Value))
            .ToArray();
        Assert.Contains(cited, c => c.Page == "dose-line.md");
        Assert.DoesNotContain(cited, c => !there.Contains(c.Page) && !Stand.Contains(c.Page));
    }

    private static IEnumerable<string> Faults(string page)
    {
        foreach (var decision in page.Split("\n## ").Skip(1))
        {
            var title = decision.Split('\n')[0];
            var held = decision.Split('\n').LastOrDefault(l => l.StartsWith("Held by: ", StringComparison.Ordinal)) ?? "";
            var named = TestName().Matches(held).Select(m => m.Groups[1].Value).ToArray();
            if (named.Length == 0 && !held.Contains("nobody", StringComparison.Ordinal))
                yield return $"{title}: nothing says which tests hold it.";
            foreach (var missing in named.Where(n => !TestClasses.Contains(n)))
                yield return $"{title}: there is no {missing}.";
        }
    }
}
