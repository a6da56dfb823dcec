namespace Gradus.CommandLine;

/// <summary>The file that a figure, or a page of them, is written to.</summary>
internal static class FigureTarget
{
    /// <summary>In one step: whoever looks sees the whole file of before or the whole new one.</summary>
    /// <param name="option">The one that named it.</param>
    /// <param name="ending">What its name must end in.</param>
    /// <exception cref="IOException">It cannot be written there; a file that stood there still stands.</exception>
    public static void Write(string path, string option, string ending, string text)
    {
        if (!path.EndsWith(ending, StringComparison.OrdinalIgnoreCase) || path.Contains('\0', StringComparison.Ordinal))
            throw new IOException($"'{path}' is no name for it. Name a file that ends in {ending} with {option}.");
        if (Directory.Exists(path))
            throw new IOException($"'{path}' is a folder. Name a file with {option}.");
        var folder = Path.GetDirectoryName(Path.GetFullPath(path)) ?? "";
        if (!Directory.Exists(folder))
            throw new IOException($"There is no folder '{folder}' to write '{Path.GetFileName(path)}' into.");
        var beside = Path.Combine(folder, $".{Path.GetFileName(path)}.new");
        File.WriteAllText(beside, text);
        File.Move(beside, path, overwrite: true);
    }
}
