namespace Gradus.Auditing;

/// <summary>A component of a value: a token, or a function with what stands in its brackets. Blanks are gone.</summary>
/// <param name="Text">As it is written; of a function its name.</param>
/// <param name="Inside">Null for a token.</param>
internal sealed record StyleTerm(CssKind Kind, string Text, IReadOnlyList<StyleTerm>? Inside)
{
    private const int DepthLimit = 8;

    /// <returns>Null where the value has a part that no value on the list has: other brackets, or too many of them.</returns>
    public static IReadOnlyList<StyleTerm>? Of(string css, IReadOnlyList<CssToken> tokens)
    {
        var at = 0;
        var terms = Read(css, tokens, ref at, 0);
        return at < tokens.Count ? null : terms;
    }

    public static IReadOnlyList<StyleTerm> Of(string text) =>
        Of(text, CssTokens.Of(text)) ?? throw new InvalidOperationException($"'{text}' is no value.");

    /// <summary>The parts between commas.</summary>
    public static IReadOnlyList<IReadOnlyList<StyleTerm>> Parts(IReadOnlyList<StyleTerm> terms)
    {
        var parts = new List<IReadOnlyList<StyleTerm>>();
        var part = new List<StyleTerm>();
        foreach (var term in terms)
        {
            if (term.Kind != CssKind.Comma)
            {
                part.Add(term);
                continue;
            }

            parts.Add(part);
            part = [];
        }

        parts.Add(part);
        return parts;
    }

    /// <summary>The role that it asks for, as "ink"; null where it is no plain var().</summary>
    public string? Role =>
        Kind == CssKind.Function
        && Text == "var"
        && Inside is [{ Kind: CssKind.Ident } name]
        && name.Text.StartsWith("--", StringComparison.Ordinal)
            ? name.Text[2..]
            : null;

    /// <summary>A number and its unit, which is empty for a bare number; null for anything else, and for numbers written with a
    /// sign before them or an exponent.</summary>
    public (double Number, string Unit)? Measure
    {
        get
        {
            if (Kind is not (CssKind.Number or CssKind.Percentage or CssKind.Dimension))
                return null;
            var split = Text[0] == '-' ? 1 : 0;
            while (split < Text.Length && (char.IsAsciiDigit(Text[split]) || Text[split] == '.'))
                split++;
            return double.TryParse(Text.AsSpan(0, split), System.Globalization.CultureInfo.InvariantCulture, out var number)
                ? (number, Text[split..])
                : null;
        }
    }

    private static List<StyleTerm>? Read(string css, IReadOnlyList<CssToken> tokens, ref int at, int depth)
    {
        var terms = new List<StyleTerm>();
        while (at < tokens.Count)
        {
            var token = tokens[at++];
            if (token.Kind == CssKind.CloseRound && depth > 0)
                return terms;
            if (token.Kind == CssKind.Blank)
                continue;
            if (token.Kind == CssKind.Function)
            {
                if (depth >= DepthLimit || Read(css, tokens, ref at, depth + 1) is not { } inside)
                {
                    at = 0;
                    return null;
                }

                terms.Add(new(token.Kind, token.In(css)[..^1].ToString(), inside));
            }
            else if (token.Kind is CssKind.OpenRound or CssKind.OpenSquare or CssKind.CloseRound or CssKind.CloseSquare)
            {
                at = 0;
                return null;
            }
            else
                terms.Add(new(token.Kind, token.In(css).ToString(), null));
        }

        return depth == 0 ? terms : null;
    }
}
