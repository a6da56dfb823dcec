using System.Reflection;
using Gradus.Domain;

namespace Gradus.Rendering;

/// <summary>The door to themes: the plain one that is built in, or a folder of the disk.</summary>
public static class ThemeFolder
{
    private const string PlainPrefix = "plain/";

    /// <summary>The theme that comes with Gradus. It counts as checked: the tests look at it as a theme's own check
    /// does.</summary>
    public static Theme Plain()
    {
        var assembly = Assembly.GetExecutingAssembly();
        return new(
            "plain",
            BuiltIn
                .Names(assembly)
                .Where(name => name.StartsWith(PlainPrefix, StringComparison.Ordinal))
                .Select(name => KeyValuePair.Create(name[PlainPrefix.Length..].Replace('\\', '/'), BuiltIn.Bytes(assembly, name)))
        );
    }

    /// <summary>The theme in a folder. Names that begin with a dot, and links, are not part of it.</summary>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static Theme Open(string folder)
    {
        if (!Directory.Exists(folder))
            throw new DirectoryNotFoundException($"There is no theme folder '{folder}'.");
        var options = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            MaxRecursionDepth = 4,
            AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.Hidden,
        };
        return new(
            Path.GetFileName(Path.TrimEndingDirectorySeparator(folder)),
            Directory
                .EnumerateFiles(folder, "*", options)
                .Select(path =>
                    KeyValuePair.Create(Path.GetRelativePath(folder, path).Replace('\\', '/'), File.ReadAllBytes(path))
                )
                .OrderBy(file => file.Key, StringComparer.Ordinal)
        );
    }
}
