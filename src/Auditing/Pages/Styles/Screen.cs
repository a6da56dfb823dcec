using System.Text.RegularExpressions;

namespace Gradus.Auditing;

/// <summary>One way in which a page is shown: light or dark, wide or narrow, with more contrast or not.</summary>
/// <param name="Pixels">How wide the window is.</param>
internal sealed partial record Screen(bool IsDark, int Pixels, bool WantsContrast)
{
    /// <summary>As it is called in a sentence.</summary>
    public string Name =>
        $"{(IsDark ? "dark" : "light")}{(Pixels < 500 ? " and narrow" : "")}{(WantsContrast ? ", with more contrast" : "")}";

    /// <summary>The two that everybody has come first.</summary>
    public static readonly IReadOnlyList<Screen> All =
    [
        new(false, 1280, false),
        new(true, 1280, false),
        new(false, 320, false),
        new(true, 320, false),
        new(false, 1280, true),
        new(true, 1280, true),
    ];

    [GeneratedRegex(@"\A\(\s*(?<name>[a-z-]+)\s*(?::\s*(?<value>[^()]+))?\)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Feature();

    [GeneratedRegex(@"\A\(\s*width\s*(?<sign>[<>]=?)\s*(?<value>[^()<>=]+)\)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Range();

    /// <summary>Whether a media query holds here. What we do not know of holds: then the rules behind it are judged.</summary>
    public bool Holds(string query) => query.Trim().Length == 0 || StyleValue.Parts(query.ToLowerInvariant(), ',').Any(One);

    private bool One(string query)
    {
        var parts = StyleValue.Split(query, ' ').Where(p => p.Length > 0).ToList();
        var negated = parts is ["not", ..];
        if (parts is ["not" or "only", ..])
            parts.RemoveAt(0);
        var holds = parts.Contains("or") ? parts.Where(p => p != "or").Any(Part) : parts.Where(p => p != "and").All(Part);
        return holds != negated;
    }

    private bool Part(string part)
    {
        if (part is "print" or "speech")
            return false;
        if (!part.StartsWith('('))
            return true;
        if (Range().Match(part) is { Success: true } range)
            return Pixel(range.Groups["value"].Value) is not { } width
                || (range.Groups["sign"].Value[0] == '<' ? Pixels <= width : Pixels >= width);
        if (Feature().Match(part) is not { Success: true } feature)
            return part.Length < 3 || One(part[1..^1]);
        var value = feature.Groups["value"].Value.Trim();
        return feature.Groups["name"].Value switch
        {
            "prefers-color-scheme" => value.Length == 0 || value == (IsDark ? "dark" : "light"),
            "prefers-contrast" => WantsContrast ? value is "" or "more" : value == "no-preference",
            "forced-colors" => value == "none",
            "inverted-colors" => value == "none",
            "min-width" => Pixel(value) is not { } least || Pixels >= least,
            "max-width" => Pixel(value) is not { } most || Pixels <= most,
            "monochrome" => value == "0",
            _ => true,
        };
    }

    private static double? Pixel(string value) => Length.Read(value, 16, 16) is { } length ? length : null;
}
