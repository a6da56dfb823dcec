using System.Globalization;
using Gradus.Domain;

namespace Gradus.CommandLine;

internal static class ClockText
{
    /// <summary>Minutes and seconds: 12:05.</summary>
    public static string Clock(this Seconds span) =>
        string.Create(CultureInfo.InvariantCulture, $"{span.Value / 60}:{span.Value % 60:00}");
}
