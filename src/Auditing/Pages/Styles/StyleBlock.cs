namespace Gradus.Auditing;

/// <summary>A rule: what it selects, where it holds and what it says.</summary>
internal sealed class StyleBlock(
    KnownStyles list,
    StyleMedium medium,
    IReadOnlyList<StyleSelector> selectors,
    IReadOnlyList<StyleSaid> said
)
{
    private readonly Lazy<HashSet<string>> names = new(() => [.. said.Select(s => s.At.Name)]);
    private readonly Lazy<HashSet<string>> texts = new(() => [.. selectors.Select(s => s.Text)]);

    public StyleMedium Medium => medium;

    public IReadOnlyList<StyleSelector> Selectors => selectors;

    public IReadOnlyList<StyleSaid> Said => said;

    /// <summary>Why a declaration is not on the list, for the first of the selectors for which it is not; null where it is for
    /// all.</summary>
    public (string Same, string Why, string Help)? Fault(StyleSaid one)
    {
        var known = list.Of(one.At.Name);
        if (known.Count == 0)
            return (
                one.At.Name,
                $"is not on the list: no theme says '{one.At.Name}'.",
                list.Instead(one.At.Name) ?? "Leave it out."
            );
        foreach (var selector in selectors)
        {
            var only = known.Any(k => k.Group.Reach == StyleReach.Only && k.Group.Holds(selector));
            var holding = known.Where(k => (!only || k.Group.Reach != StyleReach.General) && k.Group.Holds(selector)).ToArray();
            if (holding.Any(k => Allows(k, one)))
                continue;
            var same =
                $"{one.At.Name} {string.Join(' ', one.Value.Select(v => v.Text))} {(holding.Length == 0 ? selector.Text : "")}";
            return holding.Length == 0
                ? (same, $"is not on the list for '{selector.Text}'.", list.Instead(one.At.Name) ?? "Leave it out there.")
                : (
                    same,
                    $"is not on the list for '{selector.Text}'{Where(one, holding)}.",
                    list.Instead(one.At.Name) is { } instead
                        ? $"{instead} {list.Help(holding.Where(k => medium.IsForced || k.Where != "in forced"))}"
                        : list.Help(holding.Where(k => medium.IsForced || k.Where != "in forced"))
                );
        }

        return null;
    }

    /// <summary>The first place that uses what makes something required.</summary>
    public CssPart? Uses(StyleRequired required) =>
        !names.Value.Contains(required.With)
            ? null
            : said.FirstOrDefault(s =>
                s.At.Name == required.With
                && s.Value is [var value, ..]
                && (required.WithValue.Length > 0 ? value.Text == required.WithValue : value.Text != "none")
            )?.At;

    /// <summary>The first place where ground and text change places.</summary>
    public CssPart? Inverted() =>
        said.FirstOrDefault(s =>
            s.At.Name == "background" && s.Value is [{ Role: { } role }] && list.Words["texts"].Contains(role)
        )?.At;

    /// <summary>The first place that has to do with colours.</summary>
    public CssPart? Roles(bool hasRoles) =>
        hasRoles ? said[0].At : said.FirstOrDefault(s => s.Value.Any(v => v.Role is not null))?.At;

    /// <summary>The first place that has to do with the guided session.</summary>
    public CssPart? OfGuide() =>
        selectors.Any(s => s.Steps.Any(step => step.Compound.Parts.Any(p => p is ".guide" or ".panel" or ".stairs")))
            ? said.FirstOrDefault()?.At
            : null;

    public bool Says(StyleRequired required) =>
        medium.IsPlain
        && names.Value.Contains(required.Property)
        && texts.Value.Contains(required.Selector)
        && said.Any(s => s.At.Name == required.Property && list.Values.Fits(required.Values, s.Value));

    private bool Allows(KnownStyle known, StyleSaid one) =>
        known.HoldsIn(medium)
        && (one.At.IsImportant ? known.Weight != StyleWeight.Plain : known.Weight != StyleWeight.Must)
        && known.Needs.All(Has)
        && list.Values.Fits(known.Values, one.Value);

    /// <summary>Whether the block says what another declaration of it rests on: a property, or that it is a box.</summary>
    private bool Has(string need) =>
        need == "box"
            ? said.Any(s => s.At.Name == "display" && s.Value is [{ Text: not ("inline" or "none") }])
            : names.Value.Contains(need);

    private static string Where(StyleSaid one, KnownStyle[] holding) =>
        one.At.IsImportant && holding.All(k => k.Weight == StyleWeight.Plain) ? ", where nothing is important" : "";
}
