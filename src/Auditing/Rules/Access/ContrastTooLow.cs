using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class ContrastTooLow : ISiteRule, IThemeRule, ISheetRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) => Judge(plan.Client, site.Sheets);

    public IEnumerable<Finding> Check(IntakeSheet sheet, IntakeSheetSeen seen) => Judge(null, seen.Sheets);

    /// <summary>Of its intake sheet alone: the other styles stand in the sites.</summary>
    public IEnumerable<Finding> Check(ThemeSeen theme) =>
        Judge(null, SheetSeen.Of(theme.OfSheet).Where(s => s.At.File == PageStyle.Sheet));

    private IEnumerable<Finding> Judge(ClientId? client, IEnumerable<SheetSeen> sheets) =>
        from sheet in sheets
        from pair in sheet.Reading.Contrasts
        select this.Found(
            Level.Error,
            client,
            sheet.Place(pair.Line, pair.Column),
            string.Create(
                CultureInfo.InvariantCulture,
                $"In the colours of '{pair.Selector}', '{pair.Text}' on {Where(pair)} has a contrast of "
            )
                + string.Create(CultureInfo.InvariantCulture, $"{Cut(pair.Contrast):0.00}, where {pair.Asked:0.#} is asked.")
                + sheet.Words(pair.Line),
            "Make one of the two darker or lighter: WCAG 2.2 asks 4.5 of text, and 7 where somebody asks for more contrast."
        );

    private static string Where(StyleContrast pair) => pair.Where.Length > 0 ? $"{pair.Ground} {pair.Where}" : pair.Ground;

    private static double Cut(double contrast) => Math.Floor(contrast * 100) / 100;
}
