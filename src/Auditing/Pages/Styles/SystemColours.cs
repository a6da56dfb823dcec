namespace Gradus.Auditing;

/// <summary>The colours that a browser gives by itself (CSS Color 4, 6.2), as Chromium 156 has them in a light and in a dark
/// page.</summary>
internal static class SystemColours
{
    private static readonly Dictionary<string, (string Light, string Dark)> Known = new(StringComparer.OrdinalIgnoreCase)
    {
        ["canvas"] = ("#ffffff", "#121212"),
        ["canvastext"] = ("#000000", "#ffffff"),
        ["linktext"] = ("#0000ee", "#9e9eff"),
        ["visitedtext"] = ("#551a8b", "#d0adf0"),
        ["activetext"] = ("#ff0000", "#ff0000"),
        ["buttonface"] = ("#efefef", "#6b6b6b"),
        ["buttontext"] = ("#000000", "#ffffff"),
        ["field"] = ("#ffffff", "#3b3b3b"),
        ["fieldtext"] = ("#000000", "#ffffff"),
        ["mark"] = ("#ffff00", "#ffff00"),
        ["marktext"] = ("#000000", "#000000"),
        ["graytext"] = ("#808080", "#808080"),
    };

    /// <summary>The colour of that name as it is written in a style; null where a browser has none of its own by it.</summary>
    public static string? Find(string name, bool dark) =>
        Known.TryGetValue(name, out var colour) ? (dark ? colour.Dark : colour.Light) : null;
}
