using System.Globalization;
using Gradus.Domain;

namespace Gradus.Auditing;

internal static class IsoSeconds
{
    /// <summary><c>PT45S</c> as 45 seconds; null for anything else, minutes and hours too.</summary>
    public static Seconds? Read(string? text)
    {
        if (text is null || !text.StartsWith("PT", StringComparison.Ordinal) || !text.EndsWith('S') || text.Length is < 4 or > 9)
            return null;
        return int.TryParse(text.AsSpan(2, text.Length - 3), NumberStyles.None, CultureInfo.InvariantCulture, out var seconds)
            ? new Seconds(seconds)
            : null;
    }
}
