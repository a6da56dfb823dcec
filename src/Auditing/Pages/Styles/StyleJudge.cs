using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A stylesheet → what is wrong with it, declaration by declaration. There is no cascade: each declaration must be
/// harmless whatever else is said, so none is weighed against another, and no page is asked what it selects.</summary>
internal sealed class StyleJudge
{
    /// <summary>UTF-16 units. A theme of ours has a twentieth of it.</summary>
    private const int LengthLimit = 256 * 1024;

    private readonly string css;
    private readonly KnownStyles list = KnownStyles.List;
    private readonly StyleSelectorReader selectors;
    private readonly StyleWrongs wrongs;
    private readonly List<StyleContrast> contrasts = [];
    private readonly Dictionary<int, (int, int)> asks = [];
    private readonly HashSet<int> says = [];

    private StyleJudge(string css)
    {
        this.css = css;
        selectors = list.Selectors();
        wrongs = new(css);
    }

    /// <param name="css">A whole stylesheet as it was decoded from UTF-8.</param>
    public static StyleReading Of(string css)
    {
        var judge = new StyleJudge(css.StartsWith('\uFEFF') ? css[1..] : css);
        if (css.Length > LengthLimit)
            judge.wrongs.Add(
                0,
                "size",
                $"This stylesheet has {css.Length / 1024} KiB; no more than {LengthLimit / 1024} are read.",
                "Leave out what no page needs."
            );
        else
            judge.Read();
        return new(
            judge.wrongs.All(),
            judge.contrasts.ToSeries(),
            judge.asks.Select(a => (a.Key, a.Value.Item1, a.Value.Item2)).ToSeries(),
            judge.says.ToSeries()
        );
    }

    private void Read()
    {
        foreach (var token in CssTokens.Of(css))
            Letters(token);
        for (var i = 0; i < list.Required.Count; i++)
            if (list.Required[i].With == "*")
                asks[i] = (1, 1);
        foreach (var part in CssParser.Read(css))
            Judge(part, StyleMedium.All);
    }

    /// <summary>Plain letters alone, but for comments: what looks like another letter, or is written as a number, hides what is
    /// said. A mark at the start is no letter.</summary>
    private void Letters(CssToken token)
    {
        var text = token.In(css);
        if (text.Contains('\uFFFD'))
            wrongs.Add(token.From, "utf-8", "This stylesheet is not in UTF-8.", "Save it again as plain text in UTF-8.");
        if (token.Kind == CssKind.Comment)
            return;
        if (text.Contains('\\'))
            wrongs.Add(
                token.From,
                "escape",
                $"{Short(token.From, token.Until)} has a letter that is written as an escape.",
                "Write the letter itself."
            );
        if (text.ContainsAnyExceptInRange('\t', '~'))
            wrongs.Add(
                token.From,
                "letters",
                $"{Short(token.From, token.Until)} has a letter that no style needs.",
                "Write names in letters from a to z."
            );
    }

    private void Judge(CssPart part, StyleMedium medium)
    {
        switch (part)
        {
            case CssPart.Unread unread:
                wrongs.Add(
                    unread.From,
                    unread.Why,
                    $"{Short(unread.From, unread.Until)} is {unread.Why}.",
                    "Write whole rules, each with its block closed."
                );
                break;
            case CssPart.AtRule rule:
                JudgeAtRule(rule, medium);
                break;
            case CssPart.Rule rule:
                JudgeRule(rule, medium);
                break;
            default:
                wrongs.Add(
                    part.From,
                    "stray",
                    $"{Short(part.From, part.Until)} stands outside of every rule.",
                    "Put it into the block of a rule."
                );
                break;
        }
    }

    private void JudgeAtRule(CssPart.AtRule rule, StyleMedium medium)
    {
        if (
            rule is { Name: "charset", Inside: null, Head: [{ Kind: CssKind.Text } name] }
            && name.Is(css, "\"utf-8\"")
            && rule.From == 0
        )
            return;
        if (rule is { Name: "page", Head.Count: 0, Inside: { } page })
        {
            JudgePage(page);
            return;
        }

        if (rule is not { Name: "media", Inside: { } inside })
        {
            wrongs.Add(
                rule.From,
                "@" + rule.Name,
                $"'@{rule.Name}' is not on the list of what a theme may write.",
                list.Instead("@" + rule.Name)
                    ?? "Leave it out: of at-rules a theme has '@media', '@page' and '@charset \"utf-8\"'."
            );
            return;
        }

        if (medium.With(css, rule.Head, out var why) is not { } narrower)
            wrongs.Add(
                rule.From,
                "@media " + why,
                $"{Short(rule.From, rule.Inside is [var first, ..] ? first.From : rule.Until)}: '@media' does not know {why}.",
                "Ask for 'screen' or 'print', then for min-width, max-width, prefers-color-scheme: dark (with 'screen and' "
                    + "before it), prefers-contrast: more, prefers-reduced-motion: reduce or forced-colors: active, with 'and'."
            );
        else
            foreach (var part in inside)
                Judge(part, narrower);
    }

    private void JudgePage(IReadOnlyList<CssPart> inside)
    {
        foreach (var part in inside)
            if (part is CssPart.Declared said)
                Page("page " + said.Name, said);
            else if (
                part is CssPart.AtRule
                {
                    Name: "bottom-center" or "top-center" or "bottom-left" or "bottom-right",
                    Head.Count: 0,
                    Inside: { } box
                }
            )
                foreach (var inner in box)
                    if (inner is CssPart.Declared of)
                        Page("page " + of.Name, of);
                    else
                        Judge(inner, StyleMedium.All);
            else if (part is CssPart.Unread)
                Judge(part, StyleMedium.All);
            else
                wrongs.Add(
                    part.From,
                    "@page",
                    $"{Short(part.From, part.Until)} is not on the list of what '@page' may hold.",
                    "Give it a size, margins, and the number of the page below."
                );
    }

    private void Page(string property, CssPart.Declared said)
    {
        var terms = StyleTerm.Of(css, said.Value) ?? [];
        if (said.IsImportant || !list.Of(property).Any(known => list.Values.Fits(known.Values, terms)))
            wrongs.Add(
                said.From,
                property,
                $"{Short(said.From, said.Until)} is not on the list of what '@page' may hold.",
                list.Help(list.Of(property))
            );
    }

    private void JudgeRule(CssPart.Rule rule, StyleMedium medium)
    {
        if (selectors.Read(css, rule.Head, out var why) is not { } selected)
        {
            wrongs.Add(
                rule.From,
                "select " + why,
                $"{why[..1].ToUpperInvariant()}{why[1..]} is not on the list of what a selector may be made of.",
                "Select by elements, classes, '[hidden]' and the 'data-' names of the page contract, ':first-child', ':focus' "
                    + "and the like."
            );
            return;
        }

        var said = new List<StyleSaid>(rule.Inside.Count);
        foreach (var part in rule.Inside)
            if (part is CssPart.Declared declared)
                said.Add(new(declared, StyleTerm.Of(css, declared.Value) ?? []));
            else
                Judge(
                    part is CssPart.AtRule or CssPart.Rule
                        ? new CssPart.Unread(part.From, part.Until, "a block inside a rule")
                        : part,
                    medium
                );
        var block = new StyleBlock(list, medium, selected, said);
        var scheme = StyleScheme.Of(block, list.Words);
        if (scheme is not null)
        {
            foreach (var (at, wrong, help) in scheme.Wrongs)
                wrongs.Add(at.From, wrong, wrong, help);
            contrasts.AddRange(scheme.Contrasts(wrongs));
        }

        foreach (var one in said.Where(s => !s.IsRole))
            if (block.Fault(one) is { } fault)
                wrongs.Add(one.At.From, fault.Same, $"{Short(one.At.From, one.At.Until)} {fault.Why}", fault.Help);
        Requirements(block, scheme is not null);
    }

    private void Requirements(StyleBlock block, bool hasRoles)
    {
        for (var i = 0; i < list.Required.Count; i++)
        {
            var required = list.Required[i];
            if (!asks.ContainsKey(i) && Use(block, required, hasRoles) is { } use)
                asks[i] = wrongs.Place(use.From);
            if (block.Says(required))
                says.Add(i);
        }
    }

    private static CssPart? Use(StyleBlock block, StyleRequired required, bool hasRoles) =>
        required.With switch
        {
            "roles" => block.Roles(hasRoles),
            "inverted" => block.Inverted(),
            "guide" => block.OfGuide(),
            _ => block.Uses(required),
        };

    private string Short(int from, int until) => wrongs.Short(from, until);
}

/// <summary>A declaration with its value in components; none where it is no value of ours.</summary>
internal sealed record StyleSaid(CssPart.Declared At, IReadOnlyList<StyleTerm> Value)
{
    /// <summary>Whether it gives a role its colour.</summary>
    public bool IsRole => At.Name.StartsWith("--", StringComparison.Ordinal);
}
