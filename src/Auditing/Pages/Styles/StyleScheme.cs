using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>A block that gives every role of a text and of a ground its colour, and paints both, so that none of them can meet a
/// colour of another scheme.</summary>
internal sealed class StyleScheme
{
    private const double Asked = 4.5;
    private const double AskedWithMore = 7;
    private const string Tone = "--tone";
    private const string Whole = "A scheme gives a colour to each of: ";

    private readonly StyleBlock block;
    private readonly IReadOnlyDictionary<string, IReadOnlySet<string>> words;
    private readonly Dictionary<string, (CssPart At, Colour Colour, string Text)> colours = new(StringComparer.Ordinal);

    private StyleScheme(StyleBlock block, IReadOnlyDictionary<string, IReadOnlySet<string>> words)
    {
        (this.block, this.words) = (block, words);
        Wrongs = [.. Read()];
    }

    public IReadOnlyList<(CssPart At, string Wrong, string Help)> Wrongs { get; }

    /// <returns>Null where no role is given a colour.</returns>
    public static StyleScheme? Of(StyleBlock block, IReadOnlyDictionary<string, IReadOnlySet<string>> words) =>
        block.Said.Any(s => s.IsRole) ? new(block, words) : null;

    /// <summary>The pairs that differ too little: each text on each ground, and on white where paper may have no
    /// ground.</summary>
    public IEnumerable<StyleContrast> Contrasts(StyleWrongs places)
    {
        var asked = block.Medium.IsContrast ? AskedWithMore : Asked;
        var grounds = words["grounds"]
            .Where(colours.ContainsKey)
            .Select(g => (Name: "--" + g, colours[g].Colour, colours[g].Text));
        if (block.Medium.Medium != "screen")
            grounds = grounds.Append(("white paper", new Colour(1, 1, 1), ""));
        foreach (var ground in grounds)
        foreach (var text in words["texts"].Where(colours.ContainsKey))
        {
            var contrast = Colour.Contrast(colours[text].Colour, ground.Colour);
            if (contrast >= asked)
                continue;
            var (line, column) = places.Place(colours[text].At.From);
            yield return new(
                line,
                column,
                block.Selectors[0].Text,
                $"--{text} {colours[text].Text}",
                ground.Text.Length > 0 ? $"{ground.Name} {ground.Text}" : ground.Name,
                contrast,
                asked,
                ground.Text.Length > 0 ? block.Medium.Words : ""
            );
        }
    }

    private IEnumerable<(CssPart At, string Wrong, string Help)> Read()
    {
        var roles = block.Said.Where(s => s.IsRole).ToArray();
        // A sign's own tone is one of the texts of the scheme around it.
        if (
            roles is [{ At: { Name: Tone, IsImportant: false }, Value: [{ Role: { } role }] } tone]
            && role != "tone"
            && words["texts"].Contains(role)
        )
        {
            if (block.Selectors.FirstOrDefault(s => !IsToneOf(s, role)) is { } other)
                yield return (
                    tone.At,
                    $"'{other.Text}' has the tone of another kind of sign.",
                    "Give each kind its own tone, or 'var(--ink)': "
                        + string.Join(", ", words["tones"].Select(t => t.Split('=')).Select(t => $".{t[0]} '--{t[1]}'"))
                        + "."
                );
            yield break;
        }

        string[] all = [.. words["grounds"], .. words["texts"], .. words["lines"]];
        var help = Whole + string.Join(", ", all.Select(r => "--" + r)) + ".";
        foreach (var one in roles)
        {
            var name = one.At.Name[2..];
            if (!all.Contains(name, StringComparer.Ordinal))
                yield return (one.At, $"'{one.At.Name}' is no role of the list.", help);
            else if (
                one.At.IsImportant
                || one.Value is not [{ Kind: CssKind.Hash } hash]
                || Colour.OfHex(hash.Text) is not { } colour
            )
                yield return (
                    one.At,
                    $"'{one.At.Name}' has no colour that can be judged.",
                    "Write it as '#1b2430', and let nothing be important."
                );
            else if (!colours.TryAdd(name, (one.At, colour, hash.Text)))
                yield return (one.At, $"'{one.At.Name}' is said twice.", "Say it once.");
        }

        if (all.FirstOrDefault(r => roles.All(s => s.At.Name != "--" + r)) is { } missing)
            yield return (roles[0].At, $"This scheme has no '--{missing}'.", help);
        if (block.Selectors.Any(s => s.Pseudo.Length > 0 || s.IsEverything))
            yield return (roles[0].At, "A scheme stands for too much.", "Give it to ':root' or to a class.");
        if (!block.Selectors.All(s => s.Text is ":root" or "html") && !(Paints("background", "ground") && Paints("color", "ink")))
            yield return (
                roles[0].At,
                "This scheme does not paint itself.",
                "Write 'background: var(--ground); color: var(--ink);' into the same block."
            );
    }

    /// <summary>Whether that tone may stand for what is selected: of a kind its own. What may be of any kind has none but
    /// ink.</summary>
    private bool IsToneOf(StyleSelector selected, string role)
    {
        var classes = selected.Subject.Parts.Where(p => p[0] == '.').Select(p => p[1..]).ToArray();
        var own = words["tones"].Select(t => t.Split('=')).Where(t => classes.Contains(t[0])).Select(t => t[1]).ToArray();
        return role == "ink"
            || (own.Length > 0 ? own.All(tone => tone == role) : classes.Length > 0 && !classes.Contains(PageClass.Kind));
    }

    private bool Paints(string property, string role) =>
        block.Said.Any(s => s.At.Name == property && s.Value is [{ Role: { } said }] && said == role);
}
