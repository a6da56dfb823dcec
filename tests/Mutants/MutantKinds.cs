using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using static Microsoft.CodeAnalysis.CSharp.SyntaxFactory;
using static Microsoft.CodeAnalysis.CSharp.SyntaxKind;

namespace Gradus.Tests.Mutants;

/// <summary>What can be changed in a node of the code. Left out are messages (a text with a space or a hole in it: rule pages
/// hold them to the letter), constants, attributes and ToString. What does not compile is dropped later.</summary>
internal static class MutantKinds
{
    private static readonly Dictionary<SyntaxKind, SyntaxKind[]> Operators = new()
    {
        [LessThanExpression] = [LessThanOrEqualExpression, GreaterThanOrEqualExpression],
        [LessThanOrEqualExpression] = [LessThanExpression, GreaterThanExpression],
        [GreaterThanExpression] = [GreaterThanOrEqualExpression, LessThanOrEqualExpression],
        [GreaterThanOrEqualExpression] = [GreaterThanExpression, LessThanExpression],
        [EqualsExpression] = [NotEqualsExpression],
        [NotEqualsExpression] = [EqualsExpression],
        [LogicalAndExpression] = [LogicalOrExpression],
        [LogicalOrExpression] = [LogicalAndExpression],
        [AddExpression] = [SubtractExpression],
        [SubtractExpression] = [AddExpression],
        [MultiplyExpression] = [DivideExpression],
        [DivideExpression] = [MultiplyExpression],
        [ModuloExpression] = [MultiplyExpression],
    };

    private static readonly Dictionary<string, string> Twins = new(StringComparer.Ordinal)
    {
        ["Any"] = "All",
        ["All"] = "Any",
        ["First"] = "Last",
        ["Last"] = "First",
        ["FirstOrDefault"] = "LastOrDefault",
        ["LastOrDefault"] = "FirstOrDefault",
        ["Min"] = "Max",
        ["Max"] = "Min",
        ["MinBy"] = "MaxBy",
        ["MaxBy"] = "MinBy",
        ["StartsWith"] = "EndsWith",
        ["EndsWith"] = "StartsWith",
    };

    private static readonly HashSet<string> Droppable = new(StringComparer.Ordinal)
    {
        "Where",
        "Take",
        "Skip",
        "TakeWhile",
        "SkipWhile",
        "Distinct",
        "DistinctBy",
        "Concat",
        "Append",
        "Prepend",
        "Order",
        "OrderBy",
        "Reverse",
        "Trim",
    };

    public static IEnumerable<Change> Of(SyntaxNode node, SemanticModel model) =>
        node switch
        {
            BinaryExpressionSyntax binary => OfBinary(binary, model),
            PrefixUnaryExpressionSyntax { RawKind: (int)LogicalNotExpression } =>
            [
                new("negation dropped", n => ((PrefixUnaryExpressionSyntax)n).Operand),
            ],
            PrefixUnaryExpressionSyntax or PostfixUnaryExpressionSyntax or AssignmentExpressionSyntax => OfStep(node),
            RelationalPatternSyntax pattern => OfRelation(pattern),
            BinaryPatternSyntax => [new("and / or", n => Swapped((BinaryPatternSyntax)n))],
            IsPatternExpressionSyntax => [new("condition negated", Negated)],
            LiteralExpressionSyntax literal => OfLiteral(literal),
            InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax } call => OfCall(call, model),
            QueryBodySyntax { Clauses.Count: > 0 } body => OfQuery(body),
            StatementSyntax statement => OfStatement(statement),
            _ => [],
        };

    /// <summary>A condition is negated where no operator in it can be turned instead.</summary>
    public static IEnumerable<Change> OfCondition(ExpressionSyntax condition, SemanticModel model) =>
        model.GetTypeInfo(condition).Type?.SpecialType == SpecialType.System_Boolean
        && condition
            is InvocationExpressionSyntax
                or MemberAccessExpressionSyntax
                or IdentifierNameSyntax
                or BinaryExpressionSyntax { RawKind: (int)LogicalAndExpression or (int)LogicalOrExpression }
            ? [new("condition negated", Negated)]
            : [];

    private static IEnumerable<Change> OfBinary(BinaryExpressionSyntax binary, SemanticModel model)
    {
        if (binary.IsKind(CoalesceExpression))
        {
            yield return new("left side alone", n => ((BinaryExpressionSyntax)n).Left);
            if (binary.Right is not ThrowExpressionSyntax)
                yield return new("right side alone", n => ((BinaryExpressionSyntax)n).Right);
        }

        var isText = model.GetTypeInfo(binary).Type?.SpecialType == SpecialType.System_String;
        if (!isText && Operators.TryGetValue(binary.Kind(), out var others))
            foreach (var other in others)
                yield return new("operator", n =>
                    BinaryExpression(other, ((BinaryExpressionSyntax)n).Left, ((BinaryExpressionSyntax)n).Right)
                );
    }

    private static IEnumerable<Change> OfStep(SyntaxNode node) =>
        node.Kind() switch
        {
            PreIncrementExpression => [new("operator", n => PrefixUnaryExpression(PreDecrementExpression, Stepped(n)))],
            PreDecrementExpression => [new("operator", n => PrefixUnaryExpression(PreIncrementExpression, Stepped(n)))],
            PostIncrementExpression => [new("operator", n => PostfixUnaryExpression(PostDecrementExpression, Stepped(n)))],
            PostDecrementExpression => [new("operator", n => PostfixUnaryExpression(PostIncrementExpression, Stepped(n)))],
            AddAssignmentExpression => [new("operator", n => Assigned(n, SubtractAssignmentExpression))],
            SubtractAssignmentExpression => [new("operator", n => Assigned(n, AddAssignmentExpression))],
            _ => [],
        };

    private static ExpressionSyntax Stepped(SyntaxNode node) =>
        node is PrefixUnaryExpressionSyntax before ? before.Operand : ((PostfixUnaryExpressionSyntax)node).Operand;

    private static AssignmentExpressionSyntax Assigned(SyntaxNode node, SyntaxKind kind) =>
        AssignmentExpression(kind, ((AssignmentExpressionSyntax)node).Left, ((AssignmentExpressionSyntax)node).Right);

    private static IEnumerable<Change> OfRelation(RelationalPatternSyntax pattern)
    {
        var other = pattern.OperatorToken.Kind() switch
        {
            LessThanToken => LessThanEqualsToken,
            LessThanEqualsToken => LessThanToken,
            GreaterThanToken => GreaterThanEqualsToken,
            _ => GreaterThanToken,
        };
        yield return new("operator", n => ((RelationalPatternSyntax)n).WithOperatorToken(Token(other)));
    }

    private static BinaryPatternSyntax Swapped(BinaryPatternSyntax pattern) =>
        BinaryPattern(pattern.IsKind(OrPattern) ? AndPattern : OrPattern, pattern.Left, pattern.Right);

    private static IEnumerable<Change> OfLiteral(LiteralExpressionSyntax literal)
    {
        if (literal.Token.Value is int number)
        {
            yield return new("constant", _ => Number(number + 1));
            if (number > 0)
                yield return new("constant", _ => Number(number - 1));
        }
        else if (literal.Token.Value is string { Length: > 0 } text && !text.Any(char.IsWhiteSpace))
            yield return new("word emptied", _ => LiteralExpression(StringLiteralExpression, Literal("")));
        else if (literal.IsKind(TrueLiteralExpression) || literal.IsKind(FalseLiteralExpression))
            yield return new("true / false", n =>
                LiteralExpression(n.IsKind(TrueLiteralExpression) ? FalseLiteralExpression : TrueLiteralExpression)
            );
    }

    private static IEnumerable<Change> OfCall(InvocationExpressionSyntax call, SemanticModel model)
    {
        var name = ((MemberAccessExpressionSyntax)call.Expression).Name.Identifier.Text;
        if (model.GetSymbolInfo(call).Symbol is not IMethodSymbol method)
            yield break;
        if (Twins.TryGetValue(name, out var twin) && !(name == "Any" && call.ArgumentList.Arguments.Count == 0))
            yield return new($"{name} / {twin}", n => Renamed((InvocationExpressionSyntax)n, twin));
        if (
            Droppable.Contains(name)
            && (method.IsExtensionMethod || method.ContainingType.SpecialType == SpecialType.System_String)
        )
            yield return new($"{name} dropped", n => Receiver((InvocationExpressionSyntax)n));
    }

    private static ExpressionSyntax Receiver(InvocationExpressionSyntax call) =>
        ((MemberAccessExpressionSyntax)call.Expression).Expression;

    private static InvocationExpressionSyntax Renamed(InvocationExpressionSyntax call, string name) =>
        call.WithExpression(((MemberAccessExpressionSyntax)call.Expression).WithName(IdentifierName(name)));

    private static IEnumerable<Change> OfQuery(QueryBodySyntax body)
    {
        for (var i = 0; i < body.Clauses.Count; i++)
        {
            var at = i;
            if (body.Clauses[i] is WhereClauseSyntax or OrderByClauseSyntax)
                yield return new("clause dropped", n =>
                    ((QueryBodySyntax)n).WithClauses(((QueryBodySyntax)n).Clauses.RemoveAt(at))
                );
        }
    }

    private static IEnumerable<Change> OfStatement(StatementSyntax statement)
    {
        var goes = statement switch
        {
            ExpressionStatementSyntax => true,
            YieldStatementSyntax => true,
            ContinueStatementSyntax => true,
            ReturnStatementSyntax { Expression: null } => true,
            BreakStatementSyntax { Parent: not SwitchSectionSyntax } => true,
            _ => false,
        };
        if (goes)
            yield return new("statement removed", _ => EmptyStatement());
    }

    private static ParenthesizedExpressionSyntax Parens(SyntaxNode node) => ParenthesizedExpression((ExpressionSyntax)node);

    private static SyntaxNode Negated(SyntaxNode node) => PrefixUnaryExpression(LogicalNotExpression, Parens(node));

    private static ExpressionSyntax Number(int value) =>
        value < 0
            ? PrefixUnaryExpression(UnaryMinusExpression, LiteralExpression(NumericLiteralExpression, Literal(-value)))
            : LiteralExpression(NumericLiteralExpression, Literal(value));
}
