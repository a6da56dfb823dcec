using System.Text;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>The lines that findings point at: of the practice, or of another folder that the command was given.</summary>
internal sealed class Excerpts(SourceFolder practice, PageLines pages, string? otherFolder)
{
    private readonly Dictionary<string, string[]> files = new(StringComparer.Ordinal);

    /// <summary>A line from 1, or null where there is none to show.</summary>
    public string? Line(string? client, string file, int line)
    {
        if (line < 1)
            return null;
        if (pages.Find(client, file, line) is { } finished)
            return finished;
        var key = $"{client}/{file}";
        if (!files.TryGetValue(key, out var lines))
            files[key] = lines = Text(client, file).ReplaceLineEndings("\n").Split('\n');
        return line <= lines.Length ? lines[line - 1] : null;
    }

    private string Text(string? client, string file)
    {
        if (practice.Has(file))
            return Encoding.UTF8.GetString(practice.Read(file)).TrimStart('\uFEFF');
        if (otherFolder is null)
            return "";
        foreach (var path in new[] { Path.Combine(otherFolder, client ?? "", file), Path.Combine(otherFolder, file) })
            if (File.Exists(path))
                return File.ReadAllText(path);
        return "";
    }
}
