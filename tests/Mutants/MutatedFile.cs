using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Gradus.Tests.Mutants;

/// <summary>One file of a room with all its mutants in it. A member's body becomes a switch: a case with a changed copy of the
/// body for each mutant, and the body as it was. Copies, because a changed part of an expression may not be weighed against the
/// unchanged one where patterns declare names.</summary>
/// <param name="path">Below src, with slashes.</param>
/// <param name="next">The last mutant and the last place given so far; counted on.</param>
internal sealed class MutatedFile(string path, SemanticModel model, Numbering next)
{
    /// <summary>The one kind that changes a whole member.</summary>
    public const string BodyEmptied = "body emptied";

    private const string PlaceKind = "place";
    private const string TargetKind = "target";

    private readonly Dictionary<SyntaxNode, List<SyntaxAnnotation>> marks = [];
    private readonly List<(Mutant Mutant, Func<SyntaxNode, SyntaxNode> Make)> mutants = [];

    public IEnumerable<Mutant> Mutants => mutants.Select(m => m.Mutant);

    /// <summary>Finds what can be changed and where the program comes by. Called once.</summary>
    public MutatedFile Look()
    {
        foreach (var member in Members(model.SyntaxTree.GetRoot()))
        {
            Mark(member, PlaceKind, ++next.Place);
            foreach (var node in Inside(member))
                if (IsPlace(node))
                    Mark(node, PlaceKind, ++next.Place);
            foreach (var node in Inside(member))
            foreach (var change in Changes(node))
                Add(member, node, change);
            if (Emptied(member) is { } empty)
                Add(member, member, new(BodyEmptied, _ => empty));
        }

        return this;
    }

    /// <summary>The file with its mutants, without those that turned out not to compile.</summary>
    public SyntaxTree Written(IReadOnlySet<int> dropped, IReadOnlySet<int> unseen)
    {
        var root = model.SyntaxTree.GetRoot();
        var marked = root.ReplaceNodes(marks.Keys, (node, rewritten) => rewritten.WithAdditionalAnnotations(marks[node]));
        var left = mutants.Where(m => !dropped.Contains(m.Mutant.Id)).ToLookup(m => m.Mutant.Member);
        // What has no mutant stays as it is: it compiles and runs faster.
        var members = (
            from member in Members(marked)
            let own = left[NameOf(member)].Where(m => IsIn(member, m.Mutant.Id)).ToArray()
            where own.Length > 0
            select (member, own)
        ).ToDictionary(m => m.member, m => m.own);
        var written = marked.ReplaceNodes(members.Keys, (member, _) =>
            new MutatedMember(member, unseen).Written(members[member])
        );
        return CSharpSyntaxTree.Create(
            (CSharpSyntaxNode)written,
            (CSharpParseOptions)model.SyntaxTree.Options,
            path,
            System.Text.Encoding.UTF8
        );
    }

    public static int? PlaceOf(SyntaxNode node) => Numbers(node, PlaceKind).Cast<int?>().FirstOrDefault();

    public static SyntaxNode Target(SyntaxNode within, int mutant) =>
        within.GetAnnotatedNodes(TargetKind).First(n => Numbers(n, TargetKind).Contains(mutant));

    private static bool IsIn(SyntaxNode member, int mutant) =>
        Numbers(member, TargetKind).Contains(mutant)
        || member.GetAnnotatedNodes(TargetKind).Any(n => Numbers(n, TargetKind).Contains(mutant));

    private static IEnumerable<int> Numbers(SyntaxNode node, string kind) =>
        node.GetAnnotations(kind).Select(a => int.Parse(a.Data ?? "", System.Globalization.CultureInfo.InvariantCulture));

    private void Add(SyntaxNode member, SyntaxNode node, Change change)
    {
        var place = node.AncestorsAndSelf().Select(n => marks.GetValueOrDefault(n)?.FirstOrDefault(a => a.Kind == PlaceKind));
        var at = node.GetLocation().GetLineSpan().StartLinePosition;
        var mutant = new Mutant(
            ++next.Mutant,
            path,
            at.Line + 1,
            at.Character + 1,
            NameOf(member),
            change.Kind,
            change.Kind == BodyEmptied ? change.Kind : $"{Short(node)} → {Short(change.Make(node))}",
            int.Parse(place.OfType<SyntaxAnnotation>().First().Data ?? "", System.Globalization.CultureInfo.InvariantCulture)
        );
        Mark(node, TargetKind, mutant.Id);
        mutants.Add((mutant, change.Make));
    }

    private void Mark(SyntaxNode node, string kind, int number)
    {
        if (!marks.TryGetValue(node, out var own))
            marks[node] = own = [];
        own.Add(new(kind, number.ToString(System.Globalization.CultureInfo.InvariantCulture)));
    }

    /// <summary>What has a body or a first value. Constants have neither: they are in every assembly that uses them.</summary>
    private static IEnumerable<SyntaxNode> Members(SyntaxNode root) =>
        root.DescendantNodes(n => n is not (AttributeListSyntax or BlockSyntax))
            .Where(node =>
                node switch
                {
                    MethodDeclarationSyntax { Identifier.Text: "ToString" } => false,
                    BaseMethodDeclarationSyntax m => m.Body is not null || m.ExpressionBody is not null,
                    AccessorDeclarationSyntax a => a.Body is not null || a.ExpressionBody is not null,
                    PropertyDeclarationSyntax p => p.ExpressionBody is not null,
                    IndexerDeclarationSyntax i => i.ExpressionBody is not null,
                    EqualsValueClauseSyntax { Parent: PropertyDeclarationSyntax } => true,
                    EqualsValueClauseSyntax { Parent.Parent.Parent: FieldDeclarationSyntax field } => !field.Modifiers.Any(
                        SyntaxKind.ConstKeyword
                    ),
                    _ => false,
                }
            );

    private static IEnumerable<SyntaxNode> Inside(SyntaxNode member)
    {
        SyntaxNode? body = member switch
        {
            BaseMethodDeclarationSyntax m => (SyntaxNode?)m.Body ?? m.ExpressionBody,
            AccessorDeclarationSyntax a => (SyntaxNode?)a.Body ?? a.ExpressionBody,
            PropertyDeclarationSyntax p => p.ExpressionBody,
            IndexerDeclarationSyntax i => i.ExpressionBody,
            _ => member,
        };
        return body?.DescendantNodes(n => n is not (AttributeListSyntax or InterpolatedStringExpressionSyntax)) ?? [];
    }

    private IEnumerable<Change> Changes(SyntaxNode node)
    {
        var changes = MutantKinds.Of(node, model);
        return node is ExpressionSyntax expression && IsCondition(expression)
            ? changes.Concat(MutantKinds.OfCondition(expression, model))
            : changes;
    }

    private static bool IsCondition(ExpressionSyntax node) =>
        node.Parent switch
        {
            IfStatementSyntax or WhileStatementSyntax or WhereClauseSyntax => true,
            LambdaExpressionSyntax lambda => lambda.Body == node,
            ConditionalExpressionSyntax choice => choice.Condition == node,
            BinaryExpressionSyntax both => both.IsKind(SyntaxKind.LogicalAndExpression)
                || both.IsKind(SyntaxKind.LogicalOrExpression),
            ArrowExpressionClauseSyntax or ReturnStatementSyntax => true,
            _ => false,
        };

    /// <summary>Statements, and the parts of an expression that may be left out when it runs.</summary>
    private bool IsPlace(SyntaxNode node) =>
        node switch
        {
            BlockSyntax or LocalFunctionStatementSyntax => false,
            StatementSyntax => true,
            ExpressionSyntax expression => expression.Parent switch
            {
                LambdaExpressionSyntax lambda => lambda.Body == expression && IsPlain(expression),
                SwitchExpressionArmSyntax or WhereClauseSyntax or SelectClauseSyntax => IsPlain(expression),
                ConditionalExpressionSyntax choice => choice.Condition != expression && IsPlain(expression),
                BinaryExpressionSyntax binary => binary.Right == expression
                    && binary.Kind()
                        is SyntaxKind.LogicalAndExpression
                            or SyntaxKind.LogicalOrExpression
                            or SyntaxKind.CoalesceExpression
                    && !expression.DescendantNodes().Any(n => n is VariableDesignationSyntax)
                    && IsPlain(expression),
                _ => false,
            },
            _ => false,
        };

    /// <summary>Whether it has a type of its own, so that it can stand in a pair.</summary>
    private bool IsPlain(ExpressionSyntax expression) =>
        model.GetTypeInfo(expression) is { Type: { IsRefLikeType: false, SpecialType: not SpecialType.System_Void } own } info
        && SymbolEqualityComparer.Default.Equals(own, info.ConvertedType)
        && !model.GetConstantValue(expression).HasValue;

    /// <summary>A body that does nothing, or returns nothing; null where there is no nothing of that type.</summary>
    private BlockSyntax? Emptied(SyntaxNode member)
    {
        var type = model.GetDeclaredSymbol(member) switch
        {
            IMethodSymbol { MethodKind: MethodKind.Constructor or MethodKind.StaticConstructor } => null,
            IMethodSymbol method => method.ReturnType,
            IPropertySymbol property => property.Type,
            _ => null,
        };
        if (type is null)
            return null;
        if (type.SpecialType == SpecialType.System_Void)
            return SyntaxFactory.Block();
        if (Inside(member).Any(n => n is YieldStatementSyntax))
            return Block("yield break;");
        return type
                is IArrayTypeSymbol
                    or INamedTypeSymbol { Name: "IEnumerable" or "Series" or "IReadOnlyList" or "IReadOnlyCollection" }
                ? Block("return [];")
            : type.NullableAnnotation == NullableAnnotation.Annotated ? Block("return null;")
            : null;
    }

    private static BlockSyntax Block(string statement) => SyntaxFactory.Block(SyntaxFactory.ParseStatement(statement));

    private static string NameOf(SyntaxNode member) =>
        member switch
        {
            MethodDeclarationSyntax m => m.Identifier.Text,
            PropertyDeclarationSyntax p => p.Identifier.Text,
            BaseTypeDeclarationSyntax t => t.Identifier.Text,
            VariableDeclaratorSyntax v => v.Identifier.Text,
            ConstructorDeclarationSyntax c => c.Identifier.Text,
            OperatorDeclarationSyntax o => o.OperatorToken.Text,
            IndexerDeclarationSyntax => "this[]",
            _ => member.Parent is { } parent ? NameOf(parent) : "",
        };

    private static string Short(SyntaxNode node)
    {
        var text = string.Join(
            ' ',
            node.NormalizeWhitespace().ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
        );
        return text.Length <= 90 ? text : text[..60] + " … " + text[^27..];
    }
}

/// <summary>The last numbers given.</summary>
internal sealed class Numbering
{
    public int Mutant { get; set; }
    public int Place { get; set; }
}
