using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>One selector: compounds with what stands between them, from the outermost to the element itself.</summary>
/// <param name="Steps">Each with the sign before it; a blank before one inside.</param>
/// <param name="Pseudo">The box beside the element: "before"; empty where the element itself is meant.</param>
internal sealed record StyleSelector(IReadOnlyList<(char Before, StyleCompound Compound)> Steps, string Pseudo)
{
    public StyleCompound Subject => Steps[^1].Compound;

    /// <summary>Whether it means whatever there is, or whatever there is inside something.</summary>
    public bool IsEverything => Subject is { Type: "", Parts.Count: 0 } && Steps[^1].Before == ' ';

    public string Text =>
        string.Concat(
            Steps.Select(
                (s, i) =>
                    (
                        i == 0 ? ""
                        : s.Before == ' ' ? " "
                        : $" {s.Before} "
                    ) + s.Compound.Text
            )
        ) + (Pseudo.Length > 0 ? "::" + Pseudo : "");

    /// <summary>Whether whatever this one selects is also selected by that place.</summary>
    public bool IsWithin(StyleSelector place) =>
        Pseudo == place.Pseudo && Subject.IsWithin(place.Subject) && HasAround(Steps.Count - 1, place, place.Steps.Count - 1);

    /// <summary>Whether around a compound of this stands what stands around one of the place.</summary>
    private bool HasAround(int at, StyleSelector place, int its)
    {
        if (its == 0)
            return true;
        var (asked, wanted) = (place.Steps[its].Before, place.Steps[its - 1].Compound);
        // What stands beside an element has the same elements around it.
        while (at > 0 && Steps[at].Before is '+' or '~')
            at--;
        if (at == 0)
            return false;
        if (asked == '>')
            return Steps[at].Before == '>' && Steps[at - 1].Compound.IsWithin(wanted) && HasAround(at - 1, place, its - 1);
        for (var outer = at - 1; outer >= 0; outer--)
            if (
                Steps[outer + 1].Before is ' ' or '>'
                && Steps[outer].Compound.IsWithin(wanted)
                && HasAround(outer, place, its - 1)
            )
                return true;
        return false;
    }
}

/// <param name="Type">The name of the element; empty where any may be meant.</param>
/// <param name="Parts">Classes, attributes and states, in one way of writing: ".now", "[type=radio]", ":focus".</param>
internal sealed record StyleCompound(string Type, Series<string> Parts)
{
    /// <summary>In a place of the list: whatever has a class.</summary>
    public const string Any = ".any";

    public string Text => Type + string.Concat(Parts) is { Length: > 0 } text ? text : "*";

    public bool IsWithin(StyleCompound place) =>
        (place.Type.Length == 0 || place.Type == Type || (place.Type == "html" && Parts.Contains(":root")))
        && place.Parts.All(part => part == Any ? Parts.Any(p => p[0] == '.') : Parts.Contains(part));
}
