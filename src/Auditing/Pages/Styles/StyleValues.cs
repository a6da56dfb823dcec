namespace Gradus.Auditing;

/// <summary>Whether a value is one that a line of the list allows.</summary>
/// <param name="kinds">The kinds of values that the list names, each with its alternatives.</param>
/// <param name="words">The words that it names: roles and fonts among them.</param>
internal sealed class StyleValues(
    IReadOnlyDictionary<string, IReadOnlyList<IReadOnlyList<StylePattern>>> kinds,
    IReadOnlyDictionary<string, IReadOnlySet<string>> words
)
{
    private static readonly string[] Generic = ["serif", "sans-serif", "system-ui", "ui-serif", "ui-sans-serif"];

    public bool Fits(IReadOnlyList<IReadOnlyList<StylePattern>> alternatives, IReadOnlyList<StyleTerm> value) =>
        value.Count > 0 && alternatives.Any(sequence => Fits(sequence, 0, value, 0));

    private bool Fits(IReadOnlyList<StylePattern> sequence, int next, IReadOnlyList<StyleTerm> value, int from) =>
        next == sequence.Count
            ? from == value.Count
            : Ends(sequence[next], value, from).Any(end => Fits(sequence, next + 1, value, end));

    /// <summary>Behind which of the terms that pattern can end, if it begins there.</summary>
    private IEnumerable<int> Ends(StylePattern pattern, IReadOnlyList<StyleTerm> value, int from)
    {
        switch (pattern)
        {
            case StylePattern.Kind { Most: > 1 } kind:
                return Repeated(kind, value, from);
            case StylePattern.Kind kind:
                return OfKind(kind.Name, value, from);
            case StylePattern.Literal literal when from < value.Count:
                return value[from].Inside is null && value[from].Text == literal.Text ? [from + 1] : [];
            case StylePattern.Call call when from < value.Count:
                return value[from].Inside is { } inside && value[from].Text == call.Name && Fits(call.Inside, 0, inside, 0)
                    ? [from + 1]
                    : [];
            case StylePattern.Between between when from < value.Count:
                return
                    value[from].Measure is { } measure
                    && measure.Unit == between.Unit
                    && measure.Number >= between.Least
                    && measure.Number <= between.Most
                    ? [from + 1]
                    : [];
            default:
                return [];
        }
    }

    private IEnumerable<int> Repeated(StylePattern.Kind kind, IReadOnlyList<StyleTerm> value, int from)
    {
        IReadOnlyList<int> ends = [from];
        for (var times = 1; times <= kind.Most && ends.Count > 0; times++)
        {
            ends = [.. ends.SelectMany(end => OfKind(kind.Name, value, end)).Distinct()];
            if (times >= kind.Least)
                foreach (var end in ends)
                    yield return end;
        }
    }

    private IEnumerable<int> OfKind(string name, IReadOnlyList<StyleTerm> value, int from)
    {
        if (from >= value.Count)
            return [];
        if (name == "fonts")
            return AreFonts(value.Skip(from).ToArray()) ? [value.Count] : [];
        if (RolesOf(name) is { } roles)
            return value[from].Role is { } role && roles.Any(r => words[r].Contains(role)) ? [from + 1] : [];
        return kinds[name]
            .SelectMany(sequence => EndsOf(sequence, 0, value, from))
            .Concat(IsChoice(name, value[from]) ? [from + 1] : []);
    }

    private IEnumerable<int> EndsOf(IReadOnlyList<StylePattern> sequence, int next, IReadOnlyList<StyleTerm> value, int from) =>
        next == sequence.Count
            ? [from]
            : Ends(sequence[next], value, from).SelectMany(end => EndsOf(sequence, next + 1, value, end));

    private static string[]? RolesOf(string kind) =>
        kind switch
        {
            "text" => ["texts"],
            "ground" => ["grounds"],
            "role" => ["texts", "grounds", "lines"],
            _ => null,
        };

    /// <summary>One of several values, all of that kind: whichever a browser takes, it is one of the kind. What stands
    /// between the bounds of clamp() may be a sum.</summary>
    private bool IsChoice(string name, StyleTerm term)
    {
        if (term.Inside is not { } inside || term.Text is not ("min" or "max" or "clamp"))
            return false;
        var parts = StyleTerm.Parts(inside);
        return term.Text == "clamp"
            ? parts.Count == 3 && IsOne(name, parts[0]) && IsSum(parts[1]) && IsOne(name, parts[2])
            : parts.Count > 1 && parts.All(part => IsOne(name, part));
    }

    private bool IsOne(string name, IReadOnlyList<StyleTerm> part) => part.Count == 1 && OfKind(name, part, 0).Any();

    private static bool IsSum(IReadOnlyList<StyleTerm> part) =>
        part.Count % 2 == 1 && part.Index().All(t => t.Index % 2 == 0 ? t.Item.Measure is not null : t.Item.Text == "+");

    private bool AreFonts(StyleTerm[] value)
    {
        var parts = StyleTerm.Parts(value);
        return parts.All(p => p.Count > 0 && words["fonts"].Contains(string.Join(' ', p.Select(t => t.Text.Trim('"', '\'')))))
            && parts[^1] is [{ Kind: CssKind.Ident } last]
            && Generic.Contains(last.Text, StringComparer.Ordinal);
    }
}
