using System.Globalization;
using System.Text;

namespace Gradus.Tests.Reading;

/// <summary>A use as it is written: every line but the one that names the exercise.</summary>
internal sealed record WrittenUse(
    string Exercise,
    string? As,
    string? Side,
    SortedDictionary<int, string> Weeks,
    int? From,
    int? Until
)
{
    public string Name => As ?? Exercise;

    /// <summary>The number of sets stands first in each dose; half up, and at least one.</summary>
    public WrittenUse OfSets(int share) =>
        this with
        {
            Weeks = new(
                Weeks.ToDictionary(w => w.Key, w => $"{Math.Max(1, (((w.Value[0] - '0') * share) + 50) / 100)}{w.Value[1..]}")
            ),
        };

    public string Written(bool named)
    {
        var text = new StringBuilder($"      - use: {Exercise}\n");
        if (named && As is not null)
            text.Append($"        as: {As}\n");
        text.Append(Rest("        "));
        return text.ToString();
    }

    public string Rest(string indent)
    {
        var text = new StringBuilder();
        if (Side is not null)
            text.Append(CultureInfo.InvariantCulture, $"{indent}side: {Side}\n");
        if (Weeks.Count > 0)
            text.Append(CultureInfo.InvariantCulture, $"{indent}by-week: {{ {ByWeek} }}\n");
        if (From is not null)
            text.Append(CultureInfo.InvariantCulture, $"{indent}from-week: {From}\n");
        if (Until is not null)
            text.Append(CultureInfo.InvariantCulture, $"{indent}until-week: {Until}\n");
        return text.ToString();
    }

    private string ByWeek =>
        string.Join(", ", Weeks.Select(w => string.Create(CultureInfo.InvariantCulture, $"{w.Key}: {w.Value}")));
}
