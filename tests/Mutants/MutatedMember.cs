using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using static Microsoft.CodeAnalysis.CSharp.SyntaxFactory;

namespace Gradus.Tests.Mutants;

/// <summary>One member of a mutated file: its body as a switch over its mutants, with a call at every place.</summary>
/// <param name="unseen">Places that do not compile; what stands there counts as reached with what is around it.</param>
internal sealed class MutatedMember(SyntaxNode member, IReadOnlySet<int> unseen)
{
    private const string At = "global::Gradus.Tests.Mutants.MutantSwitch.At";

    private readonly string asked = $"{At}({MutatedFile.PlaceOf(member)})";

    public SyntaxNode Written(IReadOnlyList<(Mutant Mutant, Func<SyntaxNode, SyntaxNode> Make)> mutants)
    {
        if (member is EqualsValueClauseSyntax first)
            return first.WithValue(Chosen(first, mutants));
        return member switch
        {
            MethodDeclarationSyntax m => m.WithExpressionBody(null)
                .WithSemicolonToken(default)
                .WithBody(Switch(m.Body, m.ExpressionBody, m.ReturnType.ToString() == "void", mutants)),
            ConstructorDeclarationSyntax c => c.WithExpressionBody(null)
                .WithSemicolonToken(default)
                .WithBody(Switch(c.Body, c.ExpressionBody, true, mutants)),
            OperatorDeclarationSyntax o => o.WithExpressionBody(null)
                .WithSemicolonToken(default)
                .WithBody(Switch(o.Body, o.ExpressionBody, false, mutants)),
            ConversionOperatorDeclarationSyntax o => o.WithExpressionBody(null)
                .WithSemicolonToken(default)
                .WithBody(Switch(o.Body, o.ExpressionBody, false, mutants)),
            AccessorDeclarationSyntax a => a.WithExpressionBody(null)
                .WithSemicolonToken(default)
                .WithBody(Switch(a.Body, a.ExpressionBody, !a.IsKind(SyntaxKind.GetAccessorDeclaration), mutants)),
            PropertyDeclarationSyntax p => p.WithExpressionBody(null)
                .WithSemicolonToken(default)
                .WithAccessorList(Getter(Switch(null, p.ExpressionBody, false, mutants))),
            IndexerDeclarationSyntax i => i.WithExpressionBody(null)
                .WithSemicolonToken(default)
                .WithAccessorList(Getter(Switch(null, i.ExpressionBody, false, mutants))),
            _ => member,
        };
    }

    private static AccessorListSyntax Getter(BlockSyntax body) =>
        AccessorList(SingletonList(AccessorDeclaration(SyntaxKind.GetAccessorDeclaration, body)));

    private BlockSyntax Switch(
        BlockSyntax? body,
        ArrowExpressionClauseSyntax? arrow,
        bool isVoid,
        IReadOnlyList<(Mutant Mutant, Func<SyntaxNode, SyntaxNode> Make)> mutants
    )
    {
        var plain = body ?? Block(Statement(arrow?.Expression ?? LiteralExpression(SyntaxKind.NullLiteralExpression), isVoid));
        var seen = new Places(unseen).Visit(plain) as BlockSyntax ?? plain;
        var cases = mutants
            .Select(m =>
                Section(
                    CaseSwitchLabel(Number(m.Mutant.Id)),
                    m.Mutant.Kind == MutatedFile.BodyEmptied ? (BlockSyntax)m.Make(member) : Changed(seen, m.Mutant, m.Make)
                )
            )
            .Append(Section(DefaultSwitchLabel(), seen));
        return Block(SwitchStatement(ParseExpression(asked), List(cases)));
    }

    private static StatementSyntax Statement(ExpressionSyntax expression, bool isVoid) =>
        expression is ThrowExpressionSyntax thrown ? ThrowStatement(thrown.Expression)
        : isVoid ? ExpressionStatement(expression)
        : ReturnStatement(expression);

    private static T Changed<T>(T within, Mutant mutant, Func<SyntaxNode, SyntaxNode> make)
        where T : SyntaxNode
    {
        var target = MutatedFile.Target(within, mutant.Id);
        return within.ReplaceNode(target, make(target));
    }

    /// <summary>The end of a body that returns nothing is reached; behind any other the compiler knows that nothing
    /// runs.</summary>
    private static SwitchSectionSyntax Section(SwitchLabelSyntax label, BlockSyntax body) =>
        SwitchSection(SingletonList(label), List<StatementSyntax>([body, BreakStatement()]));

    /// <summary>A field's first value has no body: the changed values and the right one stand in a chain of choices.</summary>
    private ExpressionSyntax Chosen(
        EqualsValueClauseSyntax first,
        IReadOnlyList<(Mutant Mutant, Func<SyntaxNode, SyntaxNode> Make)> mutants
    ) =>
        mutants.Aggregate(first.Value, (rest, m) =>
            ParenthesizedExpression(
                ConditionalExpression(
                    BinaryExpression(SyntaxKind.EqualsExpression, ParseExpression(asked), Number(m.Mutant.Id)),
                    ParenthesizedExpression(Changed(first, m.Mutant, m.Make).Value),
                    rest
                )
            )
        );

    private static LiteralExpressionSyntax Number(int number) =>
        LiteralExpression(SyntaxKind.NumericLiteralExpression, Literal(number));

    /// <summary>Puts a call before every statement and into every branch that has a place.</summary>
    private sealed class Places(IReadOnlySet<int> unseen) : CSharpSyntaxRewriter
    {
        public override SyntaxNode? Visit(SyntaxNode? node)
        {
            var visited = base.Visit(node);
            if (node is null || visited is null || PlaceOf(node) is not { } place)
                return visited;
            return visited switch
            {
                ExpressionSyntax value => ParenthesizedExpression(ParseExpressionPair(place, value)),
                StatementSyntax statement when node.Parent is not (BlockSyntax or SwitchSectionSyntax) => Block(
                    Call(place),
                    statement
                ),
                _ => visited,
            };
        }

        public override SyntaxNode? VisitBlock(BlockSyntax node) => node.WithStatements(All(node.Statements));

        public override SyntaxNode? VisitSwitchSection(SwitchSectionSyntax node) => node.WithStatements(All(node.Statements));

        private SyntaxList<StatementSyntax> All(SyntaxList<StatementSyntax> statements) =>
            List(
                statements.SelectMany(s =>
                    PlaceOf(s) is { } place ? new[] { Call(place), (StatementSyntax)Visit(s)! } : [(StatementSyntax)Visit(s)!]
                )
            );

        private int? PlaceOf(SyntaxNode node) => MutatedFile.PlaceOf(node) is { } place && !unseen.Contains(place) ? place : null;

        private static StatementSyntax Call(int place) => ParseStatement($"{At}({place});");

        private static ExpressionSyntax ParseExpressionPair(int place, ExpressionSyntax value) =>
            MemberAccessExpression(
                SyntaxKind.SimpleMemberAccessExpression,
                TupleExpression(SeparatedList([Argument(ParseExpression($"{At}({place})")), Argument(value)])),
                IdentifierName("Item2")
            );
    }
}
