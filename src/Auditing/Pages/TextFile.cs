using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>A file of a site that is neither a page nor a picture, read as what its ending says.</summary>
public sealed class TextFile
{
    public TextFile(string path, string text)
    {
        (Path, Text) = (path, text);
        Dialog = path == GuideFile.Path ? GuideFile.DialogIn(text) : null;
        IsOwnScript = Dialog is not null || OwnScripts.Hold(path, text);
        Loads = IsOwnScript ? [] : LoadsOf(path, text).ToSeries();
    }

    public string Path { get; }

    public string Text { get; }

    internal bool IsStyle => Path.EndsWith(".css", StringComparison.OrdinalIgnoreCase);

    /// <summary>What it puts into a page, where it is the file of the guided session; null where it is none.</summary>
    internal string? Dialog { get; }

    /// <summary>Whether it is one of Gradus's own scripts, to the letter.</summary>
    internal bool IsOwnScript { get; }

    /// <summary>Every address that the file asks for. Gradus's own scripts ask for the files of their own folder alone.</summary>
    internal Series<LoadSeen> Loads { get; }

    private static IEnumerable<LoadSeen> LoadsOf(string path, string text)
    {
        var (by, asked) = System.IO.Path.GetExtension(path).ToLowerInvariant() switch
        {
            ".css" => ("style", Asked.InStyle(text)),
            ".svg" or ".xml" or ".xsl" => ("drawing", Asked.InDrawing(text)),
            ".js" or ".mjs" => ("script", Asked.InScript(text)),
            ".webmanifest" or ".json" => ("manifest", Asked.InManifest(text)),
            _ => ("", []),
        };
        var seen = asked.Select(address => new LoadSeen(by, address.Trim(), Location.Whole(path)));

        // A browser that reads a drawing undoes what the words alone do not show, such as "&#104;ttps:".
        return by == "drawing" ? seen.Concat(PageParser.LoadsOf(path, text)).DistinctBy(load => load.Address) : seen;
    }
}
