namespace Gradus.CommandLine;

/// <summary>The door to the clock.</summary>
internal static class Clock
{
    public static DateOnly Today()
    {
#pragma warning disable RS0030 // The one place that asks what day it is, for findings only; --today replaces it.
        return DateOnly.FromDateTime(DateTime.Now);
#pragma warning restore RS0030
    }
}
