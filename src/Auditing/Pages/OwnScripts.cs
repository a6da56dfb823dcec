using System.Reflection;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>The scripts that come with Gradus, whose sources are built into this room too, so that nobody has to believe the
/// theme that brings them.</summary>
internal static class OwnScripts
{
    private const string Prefix = "script/";

    private static readonly Dictionary<string, string> Texts = BuiltScript.OfSites.ToDictionary(
        script => script.Path,
        Built,
        StringComparer.Ordinal
    );

    private static readonly Lazy<string> OfSheet = new(() => Compact.Script(Built(BuiltScript.Sheet)));

    /// <summary>Made where a page has a script in it, which a site of many pages has not.</summary>
    private static readonly Lazy<Dictionary<string, string>> InPages = new(() =>
        Texts.ToDictionary(script => Compact.Script(script.Value), script => script.Key, StringComparer.Ordinal)
    );

    /// <summary>Whether a text that stands in a page is one of them, to the letter of what Gradus writes there.</summary>
    public static bool Hold(string text) => InPages.Value.ContainsKey(text);

    /// <summary>Which of them it is, likewise; null where it is none.</summary>
    public static string? NameOf(string text) => InPages.Value.GetValueOrDefault(text);

    /// <summary>Whether a text that stands in an intake sheet is the script of one, likewise.</summary>
    public static bool IsOfSheet(string text) => text == OfSheet.Value;

    /// <summary>Whether a file is one of them, to the letter.</summary>
    public static bool Hold(TextFile file) => Hold(file.Path, file.Text);

    /// <inheritdoc cref="Hold(TextFile)"/>
    public static bool Hold(string path, string written) =>
        path == GuideFile.Path
            ? GuideFile.DialogIn(written) is not null
            : Texts.TryGetValue(path, out var text) && string.Equals(written, text, StringComparison.Ordinal);

    private static string Built(BuiltScript script) =>
        script.Text(source => BuiltIn.Text(Assembly.GetExecutingAssembly(), Prefix + source));
}
