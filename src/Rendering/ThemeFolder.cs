using System.Reflection;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>The door to themes: the plain one that is built in, or a folder of the disk.</summary>
public static class ThemeFolder
{
    private const string PlainPrefix = "plain/";

    private static readonly Lazy<string> PlainDigest = new(() => CheckedTheme.DigestOf(PlainFiles()));

    /// <summary>The theme that comes with Gradus.</summary>
    public static Theme Plain() => new("plain", PlainFiles());

    /// <summary>Whether these are the files of the theme that comes with Gradus, to the letter. It counts as checked: the tests
    /// look at it as a theme's own check does.</summary>
    /// <param name="digest">As <see cref="CheckedTheme.DigestOf"/> has it.</param>
    internal static bool IsPlain(string digest) => digest == PlainDigest.Value;

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

    private static IEnumerable<KeyValuePair<string, byte[]>> PlainFiles()
    {
        var assembly = Assembly.GetExecutingAssembly();
        return BuiltIn
            .Names(assembly)
            .Where(name => name.StartsWith(PlainPrefix, StringComparison.Ordinal))
            .Select(name => KeyValuePair.Create(name[PlainPrefix.Length..].Replace('\\', '/'), BuiltIn.Bytes(assembly, name)));
    }
}
