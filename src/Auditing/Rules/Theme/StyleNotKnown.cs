using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class StyleNotKnown : ISiteRule, IThemeRule, ISheetRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        Judge(plan.Client, site.Pages.SelectMany(p => p.Styles), site.Sheets);

    public IEnumerable<Finding> Check(IntakeSheet sheet, IntakeSheetSeen seen) => Judge(null, seen.Styles, seen.Sheets);

    /// <summary>Of its intake sheet alone: the other styles stand in the sites.</summary>
    public IEnumerable<Finding> Check(ThemeSeen theme) =>
        Judge(null, [], SheetSeen.Of(theme.OfSheet).ToSeries()).Where(f => f.At.File == PageStyle.Sheet);

    private IEnumerable<Finding> Judge(ClientId? client, IEnumerable<StyleSeen> styles, Series<SheetSeen> sheets)
    {
        foreach (var style in styles.Where(s => s.Text is null))
            yield return Said(style.At, "Here a style is written into an element.", "Write it into a style file of the theme.");
        foreach (var sheet in sheets)
        foreach (var wrong in sheet.Reading.Wrongs)
            yield return Said(
                sheet.Place(wrong.Line, wrong.Column),
                wrong.Why + sheet.Words(wrong.Line) + Often(wrong),
                wrong.Help
            );
        foreach (var (required, sheet, line, column) in Missing(sheets))
            yield return Said(
                sheet.Place(line, column),
                $"No style of this site says '{required.Words}', which is needed with what stands here.",
                $"Write '{required.Words}' outside of every '@media'."
            );

        Finding Said(Location at, string message, string help) => this.Found(Level.Error, client, at, message, help);
    }

    /// <summary>How often it is so, and where else: whoever mends it mends all in one go.</summary>
    private static string Often(StyleWrong wrong)
    {
        if (wrong.Count == 1)
            return "";
        var lines = wrong.Others.Where(line => line != wrong.Line).Distinct();
        var said = string.Join(", ", lines.Select(line => line.ToString(CultureInfo.InvariantCulture)));
        return FormattableString.Invariant($" It is so {wrong.Count} times")
            + (said.Length > 0 ? $": also in line {said}{(wrong.Others.Count < wrong.Count - 1 ? " and more" : "")}." : ".");
    }

    /// <summary>What one sheet makes needed and none says.</summary>
    private static IEnumerable<(StyleRequired Required, SheetSeen Sheet, int Line, int Column)> Missing(Series<SheetSeen> sheets)
    {
        var said = sheets.SelectMany(s => s.Reading.Says).ToHashSet();
        return from sheet in sheets
            from ask in sheet.Reading.Asks
            where said.Add(ask.Required)
            select (KnownStyles.List.Required[ask.Required], sheet, ask.Line, ask.Column);
    }
}
