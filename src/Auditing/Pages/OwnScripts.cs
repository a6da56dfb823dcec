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
    private static readonly Lazy<(string Path, string Text)[]> InPages = new(() =>
        [.. Texts.Select(script => (script.Key, Compact.Script(script.Value)))]
    );

    /// <summary>Whether a text that stands in a page is one of them, to the letter of what Gradus writes there.</summary>
    public static bool Hold(string text) => NameOf(text) is not null;

    /// <summary>Which of them it is, likewise; null where it is none. They are compared one after another: nearly always their
    /// lengths tell them apart, and a table would go through every letter.</summary>
    public static string? NameOf(string text)
    {
        foreach (var script in InPages.Value)
            if (script.Text == text)
                return script.Path;
        return null;
    }

    /// <summary>Whether a text that stands in an intake sheet is the script of one, likewise.</summary>
    public static bool IsOfSheet(string text) => text == OfSheet.Value;

    /// <summary>Whether a file is one of them, to the letter; the file of the guided session, which is the client's own, is
    /// none.</summary>
    public static bool Hold(string path, string written) => Texts.TryGetValue(path, out var text) && written == text;

    private static string Built(BuiltScript script) =>
        script.Text(source => BuiltIn.Text(Assembly.GetExecutingAssembly(), Prefix + source));
}
