using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>The schemas that an editor checks the files of a practice by, as files of it.</summary>
internal static class EditorSchemas
{
    /// <summary>By the path inside the practice, with the text.</summary>
    public static IEnumerable<StarterFile> Files() =>
        PracticeSchemas.All().Select(schema => new StarterFile($"{PracticeSchemas.Folder}/{schema.File}", schema.Text));

    /// <summary>The file with a first line that tells a language server which schema is its own; a Markdown header must begin
    /// with its mark, so such a file stays as it is.</summary>
    /// <param name="under">The folder of the practice that the file's path is from, with a <c>/</c> at its end; empty for the
    /// practice itself.</param>
    public static StarterFile Named(StarterFile file, string under = "") =>
        file.Path.EndsWith(".yaml", StringComparison.Ordinal) && PracticeSchemas.FileOf(under + file.Path) is { } schema
            ? file with
            {
                Text =
                    $"# yaml-language-server: $schema={Above(under + file.Path)}{PracticeSchemas.Folder}/{schema}\n{file.Text}",
            }
            : file;

    /// <summary>The way from a file to the practice: "../../" for one two folders down.</summary>
    private static string Above(string path) => string.Concat(Enumerable.Repeat("../", path.Count(c => c == '/')));
}
