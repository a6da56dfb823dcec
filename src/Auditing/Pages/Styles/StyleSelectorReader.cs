using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>Tokens → selectors. Only the few ways of selecting that the list names are read.</summary>
/// <param name="words">The words that the list names; null where anything may be named, as in the list itself.</param>
internal sealed class StyleSelectorReader(IReadOnlyDictionary<string, IReadOnlySet<string>>? words, IReadOnlySet<string> data)
{
    /// <summary>Of selectors in a rule; the longest of ours has 13.</summary>
    private const int Most = 100;

    private string css = "";
    private IReadOnlyList<CssToken> tokens = [];
    private int at;

    /// <returns>Null and why, as the end of a sentence, where one of them is not known.</returns>
    public IReadOnlyList<StyleSelector>? Read(string text, IReadOnlyList<CssToken> head, out string why)
    {
        (css, tokens, at) = (text, head, 0);
        var selectors = new List<StyleSelector>();
        do
        {
            if (selectors.Count > 0)
                at++;
            if (selectors.Count == Most)
            {
                why = FormattableString.Invariant($"a list of more than {Most} selectors");
                return null;
            }

            Blanks();
            if (One(out why) is not { } selector)
                return null;
            selectors.Add(selector);
        } while (Is(CssKind.Comma));

        why = at < tokens.Count ? Unknown() : "";
        return at < tokens.Count ? null : selectors;
    }

    private StyleSelector? One(out string why)
    {
        var steps = new List<(char, StyleCompound)>();
        var before = ' ';
        while (true)
        {
            if (Compound(out why) is not { } compound)
                return null;
            steps.Add((before, compound));
            if (Is(CssKind.Colon) && Is(CssKind.Colon, 1))
                return Pseudo(steps, out why);
            var blank = Blanks();
            if (at >= tokens.Count || Is(CssKind.Comma))
                return new(steps, "");
            if (tokens[at].Kind == CssKind.Delim && tokens[at].In(css) is ">" or "+" or "~")
            {
                before = css[tokens[at++].From];
                Blanks();
            }
            else if (blank)
                before = ' ';
            else
                return Not(out why);
        }
    }

    private StyleSelector? Pseudo(List<(char, StyleCompound)> steps, out string why)
    {
        at += 2;
        if (!Is(CssKind.Ident))
            return Not(out why);
        var pseudo = Text();
        why = $"'::{pseudo}'";
        Blanks();
        return pseudo is "before" or "backdrop" or "first-letter" or "-webkit-calendar-picker-indicator"
            ? new(steps, pseudo)
            : null;
    }

    private StyleCompound? Compound(out string why)
    {
        var type = "";
        var (parts, from) = (new List<string>(), at);
        why = "";
        if (Is(CssKind.Ident) && Known("elements", css[tokens[at].From..tokens[at].Until]))
            type = Text();
        else if (at < tokens.Count && tokens[at].Is(css, "*"))
            at++;
        while (at < tokens.Count && !(Is(CssKind.Colon) && Is(CssKind.Colon, 1)))
        {
            var start = at;
            if (tokens[at].Is(css, ".") && Is(CssKind.Ident, 1))
            {
                at++;
                parts.Add("." + Text());
            }
            else if (Is(CssKind.OpenSquare) && Attribute() is { } attribute)
                parts.Add(attribute);
            else if (Is(CssKind.Colon) && State() is { } state)
                parts.Add(state);
            else if (at != start || Is(CssKind.OpenSquare) || Is(CssKind.Colon))
            {
                at = start;
                why = Unknown();
                return null;
            }
            else
                break;
        }

        if (at > from)
            return new(type, parts.ToSeries());
        why = Unknown();
        return null;
    }

    /// <summary>A state, the opposite of a simple selector, or one of several compounds.</summary>
    private string? State()
    {
        at++;
        if (Is(CssKind.Ident))
        {
            var state = Text();
            return Known("states", state) ? ":" + state : null;
        }

        if (!Is(CssKind.Function))
            return null;
        var name = Text();
        if (name == "has(")
            return Having();
        var inside = new List<StyleCompound>();
        do
        {
            if (inside.Count > 0)
                at++;
            Blanks();
            if (name is not ("not(" or "is(") || inside.Count > 9 || Compound(out _) is not { } compound)
                return null;
            inside.Add(compound);
            Blanks();
        } while (name == "is(" && Is(CssKind.Comma));

        var plain = name == "is(" || (inside[0].Parts.Count + Math.Min(1, inside[0].Type.Length)) == 1;
        if (!plain || !Is(CssKind.CloseRound) || inside.Any(c => c.Parts.Any(p => p.Contains('(', StringComparison.Ordinal))))
            return null;
        at++;
        return $":{name}{string.Join(',', inside.Select(c => c.Text))})";
    }

    /// <summary>What stands in an element, as one of the few of which the list knows why they are asked for.</summary>
    private string? Having()
    {
        if (Compound(out _) is not { } inside || !Known("having", inside.Text) || !Is(CssKind.CloseRound))
            return null;
        at++;
        return $":has({inside.Text})";
    }

    private string? Attribute()
    {
        at++;
        if (!Is(CssKind.Ident))
            return null;
        var name = Text();
        var said = name;
        if (at < tokens.Count && tokens[at].Is(css, "="))
        {
            at++;
            if (!Is(CssKind.Ident) && !Is(CssKind.Text))
                return null;
            said += "=" + Text().Trim('"', '\'');
        }

        if (!Is(CssKind.CloseSquare) || !(Known("attributes", said) || data.Contains(name)))
            return null;
        at++;
        return $"[{said}]";
    }

    private bool Known(string kind, string word) => words is null || words[kind].Contains(word);

    private bool Blanks()
    {
        var from = at;
        while (Is(CssKind.Blank))
            at++;
        return at > from;
    }

    private bool Is(CssKind kind, int ahead = 0) => at + ahead < tokens.Count && tokens[at + ahead].Kind == kind;

    private string Text() => tokens[at++].In(css).ToString();

    private StyleSelector? Not(out string why)
    {
        why = Unknown();
        return null;
    }

    private string Unknown()
    {
        if (at >= tokens.Count)
            return "nothing where an element should be named";
        var end = at;
        while (end + 1 < tokens.Count && end < at + 6 && tokens[end + 1].Kind is not (CssKind.Blank or CssKind.Comma))
            end++;
        return $"'{css[tokens[at].From..tokens[end].Until]}'";
    }
}
