using System.Reflection;
using System.Text.RegularExpressions;
using Gradus.Tests.House;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Gradus.Tests.Mutants;

/// <summary>An assembly of ours with all its mutants in it.</summary>
/// <param name="Mutants">Those that are judged, in the order in which they are.</param>
/// <param name="Found">All that were found, also those that would not compile.</param>
/// <param name="Places">How many places there are, and one more.</param>
internal sealed record MutatedRoom(
    string Assembly,
    IReadOnlyList<Mutant> Mutants,
    IReadOnlyList<Mutant> Found,
    int Places,
    byte[] Bytes
)
{
    private const string Usings =
        "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; "
        + "global using System.Threading; global using System.Threading.Tasks;";

    /// <summary>Two rounds are enough so far: the second finds what the compiler does not look for as long as the first finds
    /// something.</summary>
    private const int Rounds = 8;

    /// <param name="assembly">Its simple name.</param>
    /// <param name="sources">Path below src → text.</param>
    /// <param name="references">Paths of all assemblies that it needs.</param>
    /// <param name="resources">What is built into it.</param>
    /// <param name="asked">Whether a file is mutated.</param>
    /// <param name="sample">Which of its mutants are built in, and in what order.</param>
    public static MutatedRoom Of(
        string assembly,
        IEnumerable<(string Path, string Text)> sources,
        IEnumerable<string> references,
        IEnumerable<ResourceDescription> resources,
        Func<string, bool> asked,
        Func<IReadOnlyList<Mutant>, IEnumerable<Mutant>> sample
    )
    {
        var options = new CSharpCompilationOptions(
            OutputKind.DynamicallyLinkedLibrary,
            optimizationLevel: OptimizationLevel.Release,
            nullableContextOptions: NullableContextOptions.Enable
        );
        var written = CSharpCompilation.Create(
            assembly,
            sources.Select(s => Parsed(s.Path, WithoutGenerator(s.Text))),
            references.Select(path => MetadataReference.CreateFromFile(path)),
            options
        );
        CSharpSyntaxTree[] own =
        [
            Parsed("Usings.cs", Usings),
            Parsed("MutantSwitch.cs", File.ReadAllText(Repository.Path("tests/Mutants/MutantSwitch.cs"))),
        ];
        var next = new Numbering();
        var whole = written.AddSyntaxTrees(own);
        var plain = written.SyntaxTrees.Where(t => !asked(t.FilePath)).ToArray();
        var files = written
            .SyntaxTrees.Where(t => asked(t.FilePath))
            .Select(t => new MutatedFile(t.FilePath, whole.GetSemanticModel(t), next).Look())
            .ToArray();
        var found = files.SelectMany(f => f.Mutants).ToArray();
        var chosen = sample(found).ToArray();
        var dropped = found.Except(chosen).Select(m => m.Id).ToHashSet();
        HashSet<int> unseen = [];
        for (var round = 0; round < Rounds; round++)
        {
            var mutated = written
                .RemoveAllSyntaxTrees()
                .AddSyntaxTrees(files.Select(f => f.Written(dropped, unseen)).Concat(plain).Concat(own));
            using var bytes = new MemoryStream();
            var result = mutated.Emit(bytes, manifestResources: resources);
            if (result.Success)
                return new(assembly, [.. chosen.Where(m => !dropped.Contains(m.Id))], found, next.Place + 1, bytes.ToArray());
            foreach (var fault in result.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error))
                if (!Drop(fault, dropped, unseen))
                    throw new InvalidOperationException($"{assembly} does not compile with its mutants: {fault}");
        }

        throw new InvalidOperationException($"{assembly} does not compile with its mutants after {Rounds} rounds.");
    }

    /// <summary>The sources of a room as they lie in the checkout, with what is built into its assembly.</summary>
    /// <param name="name">The folder below src.</param>
    /// <param name="built">The assembly as it was built.</param>
    public static MutatedRoom Of(
        string name,
        Assembly built,
        IEnumerable<string> references,
        Func<string, bool> asked,
        Func<IReadOnlyList<Mutant>, IEnumerable<Mutant>> sample
    ) =>
        Of(
            $"Gradus.{name}",
            Repository
                .Files($"src/{name}", ".cs")
                .Select(f => (Path.GetRelativePath(Repository.Path("src"), f).Replace('\\', '/'), File.ReadAllText(f))),
            references.Where(path => Path.GetFileName(path) != $"Gradus.{name}.dll"),
            built
                .GetManifestResourceNames()
                .Select(n => new ResourceDescription(n, () => built.GetManifestResourceStream(n) ?? Stream.Null, isPublic: true)),
            asked,
            sample
        );

    /// <summary>Leaves out the mutant, or else the call at a place, that the compiler refuses.</summary>
    private static bool Drop(Diagnostic fault, HashSet<int> dropped, HashSet<int> unseen)
    {
        var around = fault.Location.SourceTree?.GetRoot().FindNode(fault.Location.SourceSpan).AncestorsAndSelf().ToArray() ?? [];
        foreach (var node in around)
            if (MutantOf(node) is { } mutant)
                return dropped.Add(mutant) || true;
        foreach (var pair in around.SelectMany(n => n.DescendantNodesAndSelf()).OfType<TupleExpressionSyntax>())
            if (Regex.Match(pair.ToString(), @"MutantSwitch\.At\((\d+)\)") is { Success: true } place)
                return unseen.Add(Number(place.Groups[1].Value));
        return false;
    }

    private static int? MutantOf(SyntaxNode node) =>
        node switch
        {
            SwitchSectionSyntax { Parent: SwitchStatementSyntax { Expression: var asked }, Labels: [CaseSwitchLabelSyntax label] }
                when IsAsked(asked) => Number(label.Value.ToString()),
            ConditionalExpressionSyntax { Condition: BinaryExpressionSyntax { Left: var asked, Right: var number } } choice
                when IsAsked(asked) => Number(number.ToString()),
            _ => null,
        };

    private static bool IsAsked(ExpressionSyntax expression) =>
        expression is InvocationExpressionSyntax call
        && call.Expression.ToString().EndsWith("MutantSwitch.At", StringComparison.Ordinal);

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>No generator runs here: its patterns are read when they are used.</summary>
    private static string WithoutGenerator(string text) =>
        Regex.Replace(
            text,
            @"\[GeneratedRegex\((?<what>.*?)\)\]\s*(?<how>private static )partial (?<name>Regex \w+\(\));",
            "${how}${name} => new(${what});",
            RegexOptions.Singleline
        );

    private static CSharpSyntaxTree Parsed(string path, string text) =>
        (CSharpSyntaxTree)
            CSharpSyntaxTree.ParseText(text, CSharpParseOptions.Default.WithLanguageVersion(LanguageVersion.Latest), path);
}
