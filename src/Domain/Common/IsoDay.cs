using System.Globalization;

namespace Gradus.Domain;

public static class IsoDay
{
    /// <summary>A day as files and machines write it: 2026-12-07.</summary>
    public static string Iso(this DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
