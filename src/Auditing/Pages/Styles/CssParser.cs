namespace Gradus.Auditing;

/// <summary>Tokens → the parts of a stylesheet. It reads what is written plainly; whatever a browser would have to
/// mend or to skip is a part that says so, because what a browser makes of it is not for us to guess.</summary>
internal sealed class CssParser
{
    /// <summary>A rule in a medium in a width in a scheme: no style of ours is deeper.</summary>
    private const int DepthLimit = 4;

    private readonly string css;
    private readonly List<CssToken> tokens;
    private int at;

    private CssParser(string css)
    {
        this.css = css;
        tokens = CssTokens.Of(css);
    }

    public static IReadOnlyList<CssPart> Read(string css) => new CssParser(css).Parts(0, false);

    private bool IsOver => at >= tokens.Count;

    private CssKind Kind => tokens[at].Kind;

    /// <param name="inRule">Whether declarations stand there.</param>
    private List<CssPart> Parts(int depth, bool inRule)
    {
        var parts = new List<CssPart>();
        for (; !IsOver; )
        {
            var kind = Kind;
            if (kind == CssKind.Blank || (kind == CssKind.Semicolon && inRule))
                at++;
            else if (kind == CssKind.Comment)
                Comment(parts);
            else if (kind == CssKind.CloseCurly && depth > 0)
                return parts;
            else if (kind == CssKind.AtKeyword)
                parts.Add(AtRule(depth));
            else
                parts.Add(inRule ? Declaration() : Rule(depth));
        }

        return parts;
    }

    private void Comment(List<CssPart> parts)
    {
        var token = tokens[at++];
        if (token.Until - token.From < 4 || !token.In(css).EndsWith("*/", StringComparison.Ordinal))
            parts.Add(new CssPart.Unread(token.From, token.Until, "a comment that nothing ends"));
    }

    private CssPart AtRule(int depth)
    {
        var from = tokens[at].From;
        var name = tokens[at++].In(css)[1..].ToString();
        var head = Head(from, out var wrong);
        if (wrong is not null)
            return wrong;
        if (IsOver)
            return new CssPart.Unread(from, css.Length, "an at-rule that nothing ends");
        if (Kind == CssKind.Semicolon)
            return new CssPart.AtRule(from, tokens[at++].Until, name, head, null);
        if (Kind == CssKind.CloseCurly)
            return new CssPart.Unread(from, tokens[depth > 0 ? at : at++].From, "an at-rule that nothing ends");
        var inside = Block(from, depth, name == "page" || name[0] == '-' || IsMargin(name), out wrong);
        return wrong ?? new CssPart.AtRule(from, tokens[at - 1].Until, name, head, inside);
    }

    private static bool IsMargin(string name) =>
        name.StartsWith("top-", StringComparison.Ordinal) || name.StartsWith("bottom-", StringComparison.Ordinal);

    private CssPart Rule(int depth)
    {
        var from = tokens[at].From;
        var head = Head(from, out var wrong);
        if (wrong is not null)
            return wrong;
        if (IsOver)
            return new CssPart.Unread(from, css.Length, "a rule without a block");
        if (Kind != CssKind.OpenCurly)
        {
            var end = tokens[at].Until;
            if (Kind == CssKind.Semicolon || depth == 0)
                at++;
            return new CssPart.Unread(from, end, "a rule without a block");
        }

        var inside = Block(from, depth, true, out wrong);
        return wrong ?? new CssPart.Rule(from, tokens[at - 1].Until, head, inside);
    }

    /// <summary>What stands in the block that begins here, up to behind its end.</summary>
    private List<CssPart> Block(int from, int depth, bool ofDeclarations, out CssPart? wrong)
    {
        wrong = null;
        if (depth >= DepthLimit)
        {
            Skip();
            wrong = new CssPart.Unread(from, IsOver ? css.Length : tokens[at].From, "a block too deep inside others");
            return [];
        }

        at++;
        var inside = Parts(depth + 1, ofDeclarations);
        if (IsOver)
            wrong = new CssPart.Unread(from, css.Length, "a block that nothing closes");
        else
            at++;
        return inside;
    }

    /// <summary>Up to the sign that begins a block or ends a statement.</summary>
    private List<CssToken> Head(int from, out CssPart? wrong)
    {
        wrong = null;
        var head = new List<CssToken>();
        var open = 0;
        for (; !IsOver; at++)
        {
            var kind = Kind;
            if (kind is CssKind.OpenRound or CssKind.OpenSquare or CssKind.Function)
                open++;
            else if (kind is CssKind.CloseRound or CssKind.CloseSquare)
                open--;
            else if (kind is CssKind.OpenCurly or CssKind.CloseCurly or CssKind.Semicolon)
                break;
            if (kind != CssKind.Comment)
                head.Add(tokens[at]);
        }

        if (open != 0)
        {
            if (!IsOver && Kind == CssKind.OpenCurly)
                Skip();
            else if (!IsOver && Kind == CssKind.Semicolon)
                at++;
            wrong = new CssPart.Unread(from, IsOver ? css.Length : tokens[at].From, "a bracket without its other half");
            if (!IsOver && Kind == CssKind.CloseCurly)
                at++;
        }

        return Trimmed(head);
    }

    private CssPart Declaration()
    {
        var start = at;
        var from = tokens[at].From;
        var value = new List<CssToken>();
        var open = 0;
        var nested = false;
        for (; !IsOver && !(open <= 0 && Kind is CssKind.Semicolon or CssKind.CloseCurly); at++)
        {
            if (Kind is CssKind.OpenRound or CssKind.OpenSquare or CssKind.Function)
                open++;
            else if (Kind is CssKind.CloseRound or CssKind.CloseSquare)
                open--;
            else if (Kind == CssKind.CloseCurly)
                break;
            else if (Kind == CssKind.OpenCurly)
            {
                nested = true;
                Skip();
                break;
            }

            if (Kind != CssKind.Comment)
                value.Add(tokens[at]);
        }

        var until = IsOver ? css.Length : tokens[at].From;
        if (nested)
            return new CssPart.Unread(from, Math.Max(until, tokens[start].Until), "a block inside a rule");
        if (open != 0)
            return new CssPart.Unread(from, until, "a bracket without its other half");
        var colon = value.FindIndex(t => t.Kind == CssKind.Colon);
        if (value[0].Kind != CssKind.Ident || colon < 1 || value.Skip(1).Take(colon - 1).Any(t => t.Kind != CssKind.Blank))
            return new CssPart.Unread(from, Math.Max(until, tokens[start].Until), "something that is no declaration");
        var name = value[0].In(css).ToString();
        var said = Trimmed(value[(colon + 1)..]);
        var mark = said.FindLastIndex(t => t.Kind == CssKind.Delim && t.Is(css, "!"));
        var important =
            mark >= 0
            && Trimmed(said[(mark + 1)..]) is [{ Kind: CssKind.Ident } word]
            && word.In(css).Equals("important", StringComparison.OrdinalIgnoreCase);
        return new CssPart.Declared(
            from,
            said.Count > 0 ? said[^1].Until : until,
            name,
            important ? Trimmed(said[..mark]) : said,
            important
        );
    }

    /// <summary>Behind the block that begins here.</summary>
    private void Skip()
    {
        var open = 0;
        for (; !IsOver; at++)
        {
            if (Kind == CssKind.OpenCurly)
                open++;
            else if (Kind == CssKind.CloseCurly && --open == 0)
            {
                at++;
                return;
            }
        }
    }

    private static List<CssToken> Trimmed(List<CssToken> tokens)
    {
        var from = tokens.FindIndex(t => t.Kind != CssKind.Blank);
        return from < 0 ? [] : tokens[from..(tokens.FindLastIndex(t => t.Kind != CssKind.Blank) + 1)];
    }
}
