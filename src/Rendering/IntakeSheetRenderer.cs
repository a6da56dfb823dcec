using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>Intake sheet + theme → one page that needs no other file.</summary>
public static class IntakeSheetRenderer
{
    private const string Template = "intake-sheet.html";

    /// <summary>The page, or null (and a finding) where the theme has no such template or it cannot be filled.</summary>
    public static string? Render(IntakeSheet sheet, Theme theme, Findings findings) =>
        SiteRenderer.Tried(null, theme, findings, () =>
        {
            var style = Inlined.Style(theme, PageStyle.OfSheet);
            var script = Inlined.Script(theme, BuiltScript.Sheet);
            var policy =
                $"default-src 'none'; script-src '{script.Hash}'; style-src '{style.Hash}'; base-uri 'none'; form-action 'none'";
            var view = IntakeSheetViews.Of(sheet, policy, style.Markup, script.Markup);
            return TemplateRun.Fill(
                theme,
                Template,
                new Dictionary<string, object>(StringComparer.Ordinal)
                {
                    ["sheet"] = view,
                    ["words"] = SiteRenderer.WordsOf(sheet.Words),
                }
            );
        });
}
