using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class EmergencyNumberUnusual : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        from number in practice.Card.Emergency
        let usual = UsualIn(number.Country)
        where usual.Length > 0 && !usual.Contains(string.Concat(number.Call.Where(char.IsAsciiDigit)), StringComparer.Ordinal)
        select this.Found(
            Level.Warning,
            null,
            practice.Card.At,
            $"In an emergency in {number.Country} your pages say to call {number.Call}; the number known here is "
                + $"{string.Join(" or ", usual)}.",
            $"Look it up, and write the right one as 'call' of {number.Country} under 'emergency'."
        );

    /// <summary>The numbers for an ambulance; none of a country that is not known here. 112 in the European Union by Directive
    /// (EU) 2018/1972, article 109; the others, and what a country has beside 112, from memory.</summary>
    private static string[] UsualIn(string country) =>
        country switch
        {
            "AT" or "CH" => ["112", "144"],
            "AU" => ["000", "112"],
            "BE" or "DE" or "DK" or "FI" or "NL" or "PT" or "SE" => ["112"],
            "CA" or "US" => ["911"],
            "ES" => ["112", "061"],
            "FR" => ["112", "15"],
            "GB" => ["999", "112"],
            "IE" or "PL" => ["112", "999"],
            "IT" => ["112", "118"],
            "NO" => ["112", "113"],
            "NZ" => ["111"],
            _ => [],
        };
}
