using System.Text.RegularExpressions;

namespace Gradus.Planning;

/// <summary>What stands in the symbol of a figure.</summary>
public static partial class FigureMarkup
{
    /// <summary>The shapes with what all of them share around them.</summary>
    public static string Of(PlannedFigure figure) =>
        "<g fill=\"none\" stroke=\"currentColor\" stroke-linecap=\"round\" stroke-linejoin=\"round\">" + figure.Shapes + "</g>";

    /// <summary>The parts that have a name, with the path of each and how near each place of that is.</summary>
    public static IEnumerable<(string Part, string Path, string Near)> PartsOf(PlannedFigure figure) =>
        Named().Matches(figure.Shapes).Select(m => (m.Groups["part"].Value, m.Groups["d"].Value, m.Groups["near"].Value));

    [GeneratedRegex("<path data-part=\"(?<part>[^\"]*)\" data-near=\"(?<near>[^\"]*)\"[^>]* d=\"(?<d>[^\"]*)\"")]
    private static partial Regex Named();
}
