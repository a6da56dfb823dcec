using System.Text.Encodings.Web;
using System.Text.Json;

namespace Gradus.Planning;

/// <summary>The dialog of the guided session, which is the same for every session of a client: a script that holds it as text, so
/// that no page has to. Where all pages are one file, it stands in that.</summary>
public static class GuideFile
{
    public const string Path = "guide.js";

    private const string Begin = "window.gradus = window.gradus || {};\nwindow.gradus.guideDialog = ",
        End = ";\n";

    /// <param name="dialog">The dialog as HTML.</param>
    public static string Of(string dialog) =>
        Begin + "\"" + JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(dialog) + "\"" + End;

    /// <summary>The dialog that such a script holds; null where it holds anything else, or is written in another way.</summary>
    public static string? DialogIn(string script)
    {
        if (!script.StartsWith(Begin, StringComparison.Ordinal) || !script.EndsWith(End, StringComparison.Ordinal))
            return null;
        try
        {
            using var held = JsonDocument.Parse(script.AsMemory()[Begin.Length..^End.Length]);
            return
                held.RootElement is { ValueKind: JsonValueKind.String } text
                && text.GetString() is { } dialog
                && Of(dialog) == script
                ? dialog
                : null;
        }
        catch (Exception broken) when (broken is JsonException or InvalidOperationException)
        {
            return null;
        }
    }
}
