using Gradus.Domain;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Gradus.Tests.House;

/// <summary>A new verb, unit, effort or kind of step does not compile until every place knows it. All rooms are compiled
/// together here, with one more of them than there is.</summary>
[Trait("Slow", "yes")]
public sealed class NewVerbTests
{
    private static readonly Type[] Closed =
    [
        typeof(Verb),
        typeof(WorkKind),
        typeof(AmountUnit),
        typeof(StepKind),
        typeof(TimeUse),
        typeof(SideOrder),
        typeof(Amount),
        typeof(Effort),
        typeof(SettledEffort),
    ];

    /// <summary>A partial method without its other half, which a source generator writes.</summary>
    private const string PartOfAGenerator = "CS8795";

    /// <summary>A whole class of which a generator writes the other half.</summary>
    private const string OfAGenerator = "ViewParts";

    private static readonly Lazy<CSharpCompilation> House = new(Compiled);

    [Fact]
    public void The_house_as_it_is_compiles() =>
        Assert.DoesNotContain(House.Value.GetDiagnostics(TestContext.Current.CancellationToken), IsFault);

    private static bool IsFault(Diagnostic said) =>
        (said.Severity == DiagnosticSeverity.Error && said.Id != PartOfAGenerator || said.Id == "CS8509")
        && !said.ToString().Contains(OfAGenerator, StringComparison.Ordinal);

    /// <summary>What is written, what is written then, the name of what is new, the fault that the compiler finds, and where it
    /// must find it.</summary>
    private static readonly (string File, string Before, string After, string New, string Fault, string Places)[] More =
    [
        ("Verb.cs", "    Carry,\n}", "    Carry,\n    Sway,\n}", "Verb.Sway", "CS8509", "Verb.cs ClearanceCheck.cs"),
        (
            "Amount.cs",
            "    Metres,\n}",
            "    Metres,\n    Laps,\n}",
            "AmountUnit.Laps",
            "CS8509",
            "DoseTime.cs DoseMeasures.cs DosePrinter.cs EnvelopeActions.cs DoseRows.cs ChangeWords.cs StepWords.cs"
        ),
        ("StepKind.cs", "    Transition,\n}", "    Transition,\n    Applause,\n}", "StepKind.Applause", "CS8509", "StepKind.cs"),
        (
            "WorkedSides.cs",
            "    Both,\n}",
            "    Both,\n    Neither,\n}",
            "SideOrder.Neither",
            "CS8509",
            "Timeline.cs DoseMeasures.cs Use.cs SideWords.cs"
        ),
        (
            "Effort.cs",
            "    private Effort() { }",
            "    private Effort() { }\n\n    public sealed record Guessed : Effort;",
            "Effort.Guessed",
            "CS0534",
            "Effort.cs"
        ),
    ];

    /// <summary>The house with one more of each: the compiler's sentences say which of them is missed.</summary>
    private static readonly Lazy<Diagnostic[]> Missed = new(() =>
        [
            .. More.Aggregate(House.Value, (house, more) =>
                {
                    var tree = house.SyntaxTrees.Single(t => Path.GetFileName(t.FilePath) == more.File);
                    var text = tree.ToString();
                    Assert.Contains(more.Before, text, StringComparison.Ordinal);
                    return house.ReplaceSyntaxTree(
                        tree,
                        Parsed(tree.FilePath, text.Replace(more.Before, more.After, StringComparison.Ordinal))
                    );
                })
                .GetDiagnostics(),
        ]
    );

    public static TheoryData<string> New => [.. More.Select(m => m.New)];

    [Theory, MemberData(nameof(New))]
    public void One_more_is_missed_in_every_place(string name)
    {
        var more = More.Single(m => m.New == name);
        var missed = Missed
            .Value.Where(d =>
                d.Id == more.Fault
                && d.GetMessage(System.Globalization.CultureInfo.InvariantCulture).Contains(name, StringComparison.Ordinal)
            )
            .Select(d => Path.GetFileName(d.Location.SourceTree?.FilePath ?? ""))
            .ToHashSet(StringComparer.Ordinal);
        Assert.All(more.Places.Split(' '), place => Assert.Contains(place, missed));
    }

    [Fact]
    public void No_switch_over_them_has_an_arm_for_the_rest() =>
        Assert.Empty(House.Value.SyntaxTrees.SelectMany(t => ArmsForTheRest(House.Value, t)));

    [Fact]
    public void An_arm_for_the_rest_would_be_found()
    {
        var planted = Parsed(
            "Planted.cs",
            "namespace Gradus.Domain; static class Planted { static int Of(Verb verb) => verb switch { Verb.Hold => 1, _ "
                + "=> 2 }; }"
        );
        Assert.NotEmpty(ArmsForTheRest(House.Value.AddSyntaxTrees(planted), planted));
    }

    private static IEnumerable<string> ArmsForTheRest(CSharpCompilation house, SyntaxTree tree)
    {
        var model = house.GetSemanticModel(tree);
        foreach (var node in tree.GetRoot().DescendantNodes())
        {
            var (asked, rest) = node switch
            {
                SwitchExpressionSyntax s => (s.GoverningExpression, s.Arms.Any(a => a.Pattern is DiscardPatternSyntax)),
                SwitchStatementSyntax s => (s.Expression, s.Sections.Any(c => c.Labels.Any(l => l is DefaultSwitchLabelSyntax))),
                _ => (null, false),
            };
            if (asked is null || !rest || model.GetTypeInfo(asked).Type is not { } type)
                continue;
            if (type is INamedTypeSymbol { OriginalDefinition.SpecialType: SpecialType.System_Nullable_T } optional)
                type = optional.TypeArguments[0];
            if (Closed.Any(c => c.FullName == type.ToDisplayString()))
                yield return $"{tree.FilePath}: {asked}";
        }
    }

    private static CSharpCompilation Compiled()
    {
        const string Usings =
            "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; "
            + "global using System.Threading; global using System.Threading.Tasks;";
        var sources = Repository
            .Files("src", ".cs")
            // A program of its own, with packages of its own.
            .Where(f => !f.Contains("/ThemeCheck/", StringComparison.Ordinal))
            .Select(f => Parsed(f, File.ReadAllText(f)))
            .Append(Parsed("Usings.cs", Usings));
        var references = ((string?)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES") ?? "")
            .Split(Path.PathSeparator)
            .Where(path =>
                !Path.GetFileName(path).StartsWith("Gradus.", StringComparison.Ordinal) && Path.GetFileName(path) != "gradus.dll"
            )
            .Select(path => MetadataReference.CreateFromFile(path));
        var options = new CSharpCompilationOptions(
            OutputKind.ConsoleApplication,
            nullableContextOptions: NullableContextOptions.Enable
        );
        return CSharpCompilation.Create("House", sources, references, options);
    }

    private static SyntaxTree Parsed(string path, string text) =>
        CSharpSyntaxTree.ParseText(text, CSharpParseOptions.Default.WithLanguageVersion(LanguageVersion.Latest), path);
}
