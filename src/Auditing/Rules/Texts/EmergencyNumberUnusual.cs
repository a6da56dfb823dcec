using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class EmergencyNumberUnusual : IPracticeRule
{
    /// <summary>The numbers for an ambulance. 112 in the European Union by Directive (EU) 2018/1972, article 109; the others, and
    /// what a country has beside 112, from memory.</summary>
    private static readonly Dictionary<string, string[]> Usual = new(StringComparer.Ordinal)
    {
        ["AT"] = ["112", "144"],
        ["AU"] = ["000", "112"],
        ["BE"] = ["112"],
        ["CA"] = ["911"],
        ["CH"] = ["112", "144"],
        ["DE"] = ["112"],
        ["DK"] = ["112"],
        ["ES"] = ["112", "061"],
        ["FI"] = ["112"],
        ["FR"] = ["112", "15"],
        ["GB"] = ["999", "112"],
        ["IE"] = ["112", "999"],
        ["IT"] = ["112", "118"],
        ["NL"] = ["112"],
        ["NO"] = ["112", "113"],
        ["NZ"] = ["111"],
        ["PL"] = ["112", "999"],
        ["PT"] = ["112"],
        ["SE"] = ["112"],
        ["US"] = ["911"],
    };

    public IEnumerable<Finding> Check(Practice practice) =>
        from number in practice.Card.Emergency
        let usual = Usual.GetValueOrDefault(number.Country, [])
        where usual.Length > 0 && !usual.Contains(string.Concat(number.Call.Where(char.IsAsciiDigit)), StringComparer.Ordinal)
        select this.Found(
            Level.Warning,
            null,
            practice.Card.At,
            $"In an emergency in {number.Country} your pages say to call {number.Call}; the number known here is "
                + $"{string.Join(" or ", usual)}.",
            $"Look it up, and write the right one as 'call' of {number.Country} under 'emergency'."
        );
}
