using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A file of a site that is neither a page nor a picture, read as what its ending says.</summary>
public sealed record TextFile(string Path, string Text)
{
    /// <summary>What a style file hides.</summary>
    internal Series<HidingStyle> Hides { get; } = HasEnding(Path, ".css") ? HidingStyle.In(Text) : [];

    /// <summary>Every address that the file asks for.</summary>
    internal Series<LoadSeen> Loads { get; } = LoadsOf(Path, Text).ToSeries();

    private static IEnumerable<LoadSeen> LoadsOf(string path, string text)
    {
        var (by, asked) = System.IO.Path.GetExtension(path).ToLowerInvariant() switch
        {
            ".css" => ("style", Asked.InStyle(text)),
            ".svg" => ("drawing", Asked.InDrawing(text)),
            ".js" or ".mjs" => ("script", Asked.InScript(text)),
            _ => ("", []),
        };
        return asked.Select(address => new LoadSeen(by, address, Location.Whole(path)));
    }

    private static bool HasEnding(string path, string ending) => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase);
}
