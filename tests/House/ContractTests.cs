using System.Text.RegularExpressions;
using Gradus.Planning;
using Microsoft.CodeAnalysis.CSharp;

namespace Gradus.Tests.House;

/// <summary>What pages, auditor and scripts share by name stands in <c>src/Planning/Contract</c>: no other code writes such a
/// name out, and no template, style or script has one that is not there.</summary>
public sealed partial class ContractTests
{
    private static readonly string[] Paths =
    [
        PagePath.Home,
        PagePath.BeforeYouStart,
        PagePath.Weeks,
        PagePath.Calendar,
        PagePath.AllPages,
        PagePath.FileList,
        PagePath.Manifest,
    ];

    private static readonly string[] CoachPages =
    [
        "CoachPage",
        "FigureSheet",
        "FindingHtml",
        "GroupHtml",
        "ReviewHtml",
        "Watching/WatchPages",
    ];

    /// <summary>Every file of the theme, whole.</summary>
    private static readonly string[] Theme =
    [
        .. new[] { ".html", ".css", ".js" }
            .SelectMany(ending => Repository.Files("themes/plain", ending))
            .Select(File.ReadAllText),
    ];

    private static readonly string[] Scripts = [.. Repository.Files("themes/plain", ".js").Select(File.ReadAllText)];

    [GeneratedRegex("(?<![a-z-])data-[a-z]+(?:-[a-z]+)*", RegexOptions.CultureInvariant)]
    private static partial Regex DataName();

    [GeneratedRegex("""(?<![a-z-])data-[a-z]|(?:session|exercise)-$|(?:class|id)=\\?"[a-z]""", RegexOptions.CultureInvariant)]
    private static partial Regex WrittenOut();

    [GeneratedRegex(@"dataset\.([a-zA-Z]+)", RegexOptions.CultureInvariant)]
    private static partial Regex DataProperty();

    [GeneratedRegex(@"getElementById\('([a-z-]+)'\)|'#([a-z-]+)'", RegexOptions.CultureInvariant)]
    private static partial Regex IdSought();

    [GeneratedRegex(@"'((?:[a-z0-9]*|[^' .]+ )\.(?!csv|txt|html|js\b|webmanifest)[a-z][^'\n]*)'", RegexOptions.CultureInvariant)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"(?<=^|[ ,a-z])\.([a-z]+(?:-[a-z]+)*)(?=$|[ ,\[])", RegexOptions.CultureInvariant)]
    private static partial Regex ClassSelected();

    [GeneratedRegex(@"classList\.\w+\('([a-z-]+)'", RegexOptions.CultureInvariant)]
    private static partial Regex ClassSet();

    [GeneratedRegex(@"'([\w-]+\.[a-z]+)'", RegexOptions.CultureInvariant)]
    private static partial Regex FileAsked();

    [Fact]
    public void No_other_code_writes_a_name_of_the_contract_out()
    {
        var files = Repository
            .Files("src", ".cs")
            .Where(f => !f.Contains("/Planning/Contract/", StringComparison.Ordinal))
            // A figure stands below the contract and names its own parts, for its file, a coach's page and a client's alike.
            .Where(f => !f.Contains("/Figures/Drawing/", StringComparison.Ordinal))
            // A page for the coach is no client's page, and has names of its own.
            .Where(f => !CoachPages.Any(p => f.EndsWith($"/CommandLine/{p}.cs", StringComparison.Ordinal)))
            .ToArray();
        Assert.True(files.Length > 200);
        Assert.Empty(files.SelectMany(file => WrittenOutIn(File.ReadAllText(file)).Select(name => $"{file}: {name}")));
    }

    [Theory]
    [InlineData("""element.GetAttribute("data-kind")""", "data-kind")]
    [InlineData("""document.QuerySelector("dialog[data-guide]")""", "dialog[data-guide]")]
    [InlineData("var help = $\"Write data-guide={number}.\";", "Write data-guide=")]
    [InlineData("var path = $\"session-{number}.html\";", "session-")]
    [InlineData("""site.Page("weeks.html")""", "weeks.html")]
    [InlineData("""Path.Combine(folder, "files.txt")""", "files.txt")]
    [InlineData("var html = \"<p class=\\\"term\\\">\";", "<p class=\\\"term\\\">")]
    [InlineData("""document.QuerySelector(".cautions")""", ".cautions")]
    [InlineData("// data-kind\nvar a = \"exercise-and-side\"; var b = \"cautions\";", "")]
    public void A_name_that_is_written_out_is_seen(string code, string seen) =>
        Assert.Equal(seen, string.Join(' ', WrittenOutIn(code)));

    [Fact]
    public void Every_data_name_of_the_theme_is_in_the_contract() => Assert.Subset(All(), DataNamesIn(Theme));

    [Fact]
    public void Every_data_name_of_the_contract_is_used()
    {
        Assert.Subset(DataNamesIn(Theme).Concat(SpokenByScripts.Names).ToHashSet(StringComparer.Ordinal), All());
        Assert.Equal(All().Count, PageData.Told.Count + PageData.OfScripts.Count);
    }

    [Fact]
    public void Every_class_that_a_script_seeks_is_in_the_contract()
    {
        var sought = ClassesIn(Scripts);
        Assert.Superset(
            new[] { PageClass.Cautions, PageClass.Weeks, PageClass.ThisWeek }.ToHashSet(StringComparer.Ordinal),
            sought
        );
        Assert.Subset(PageClass.All.ToHashSet(StringComparer.Ordinal), sought);
    }

    [Fact]
    public void Every_id_that_a_script_seeks_is_in_the_contract() =>
        Assert.Equal(PageId.OfSheet.Append(PageId.Lead).Append(PageId.Print).ToHashSet(StringComparer.Ordinal), IdsIn(Scripts));

    [Fact]
    public void Every_file_that_a_script_asks_for_is_in_the_contract()
    {
        var asked = Scripts
            .SelectMany(s => FileAsked().Matches(s))
            .Select(m => m.Groups[1].Value)
            .ToHashSet(StringComparer.Ordinal);
        Assert.Contains(PagePath.FileList, asked);
        Assert.Subset(Paths.Concat(BuiltScript.All.Select(s => s.Path)).ToHashSet(StringComparer.Ordinal), asked);
    }

    [Theory]
    [InlineData("part.getAttribute('data-mood')", "data-mood")]
    [InlineData("part.dataset.moodNow", "data-mood-now")]
    [InlineData("part.querySelector('.mood')", "mood")]
    [InlineData("part.closest('p.mood[data-weeks], .step')", "data-weeks mood step")]
    [InlineData("part.classList.toggle('mood', true)", "mood")]
    [InlineData("document.getElementById('mood')", "mood")]
    [InlineData("'log' + '.csv' + ' a. b.'", "")]
    public void A_name_that_a_script_seeks_is_seen(string script, string seen) =>
        Assert.Equal(
            seen,
            string.Join(
                ' ',
                DataNamesIn([script]).Concat(ClassesIn([script])).Concat(IdsIn([script])).Order(StringComparer.Ordinal)
            )
        );

    private static HashSet<string> All() => PageData.Told.Concat(PageData.OfScripts).ToHashSet(StringComparer.Ordinal);

    private static IEnumerable<string> WrittenOutIn(string code) =>
        CSharpSyntaxTree
            .ParseText(code, cancellationToken: TestContext.Current.CancellationToken)
            .GetRoot(TestContext.Current.CancellationToken)
            .DescendantTokens()
            .Where(t =>
                t.Kind()
                    is SyntaxKind.StringLiteralToken
                        or SyntaxKind.InterpolatedStringTextToken
                        or SyntaxKind.SingleLineRawStringLiteralToken
                        or SyntaxKind.MultiLineRawStringLiteralToken
            )
            .Select(t => t.Text.Trim('"'))
            .Where(text =>
                WrittenOut().IsMatch(text)
                || Paths.Contains(text, StringComparer.Ordinal)
                || PageClass.All.Any(name => text == "." + name)
            );

    private static HashSet<string> DataNamesIn(IEnumerable<string> texts) =>
        texts
            .SelectMany(text =>
                DataName()
                    .Matches(text)
                    .Select(m => m.Value)
                    .Concat(
                        DataProperty()
                            .Matches(text)
                            .Select(m =>
                                "data-"
                                + string.Concat(
                                    m.Groups[1].Value.Select(c => char.IsUpper(c) ? $"-{char.ToLowerInvariant(c)}" : $"{c}")
                                )
                            )
                    )
            )
            .ToHashSet(StringComparer.Ordinal);

    private static HashSet<string> ClassesIn(IEnumerable<string> scripts) =>
        scripts
            .SelectMany(script =>
                Quoted()
                    .Matches(script)
                    .SelectMany(q => ClassSelected().Matches(q.Groups[1].Value))
                    .Concat(ClassSet().Matches(script))
                    .Select(m => m.Groups[1].Value)
            )
            .ToHashSet(StringComparer.Ordinal);

    private static HashSet<string> IdsIn(IEnumerable<string> scripts) =>
        scripts
            .SelectMany(script => IdSought().Matches(script).Select(m => m.Groups[1].Value + m.Groups[2].Value))
            .ToHashSet(StringComparer.Ordinal);
}
