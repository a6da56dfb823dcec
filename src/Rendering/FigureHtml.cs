using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>Figures → what shows each of them, and the block in which each of them stands once in its page.</summary>
internal static class FigureHtml
{
    public static string Of(Inline.Drawn drawn, Words words)
    {
        var paper = drawn.Paper.Split(' ');
        var html = new StringBuilder();
        html.Append(
            CultureInfo.InvariantCulture,
            $"<svg class=\"{PageClass.Drawn}\" viewBox=\"{drawn.Paper}\" role=\"img\"{Letters()}>"
                + $"<title>{Html.Escape(drawn.Title)}</title><desc>{Html.Escape(drawn.Shows)}</desc>"
                + $"<use href=\"#{drawn.Id}\" x=\"{paper[0]}\" y=\"{paper[1]}\" width=\"{paper[2]}\" height=\"{paper[3]}\""
        );
        if (drawn.Mirrored.Length > 0)
            html.Append(CultureInfo.InvariantCulture, $" transform=\"{drawn.Mirrored}\"");
        html.Append("/>");
        if (drawn.Letter.Length > 0)
            html.Append(
                CultureInfo.InvariantCulture,
                $"<text class=\"{PageClass.Letter}\" x=\"{drawn.LetterX}\" y=\"{drawn.LetterY}\" text-anchor=\"middle\" "
                    + $"font-size=\"18\" font-weight=\"bold\" fill=\"currentColor\">{Html.Escape(drawn.Letter)}</text>"
            );
        return html.Append("</svg>").ToString();

        string Letters() =>
            drawn.Letter.Length == 0
                ? ""
                : $" {PageData.Letters}=\"{Html.Escape(words.Say("figure-left"))} {Html.Escape(words.Say("figure-right"))}\"";
    }

    /// <summary>Whether it is more than twice as wide as it is tall.</summary>
    public static bool IsWide(Inline.Drawn drawn) =>
        drawn.Paper.Split(' ').Select(n => decimal.Parse(n, CultureInfo.InvariantCulture)).ToArray()
            is [_, _, var width, var height]
        && width > 2 * height;

    /// <summary>Takes no room: only what is shown of it elsewhere is seen.</summary>
    /// <returns>Empty where there is nothing to show.</returns>
    public static Html Once(IEnumerable<PlannedFigure> figures)
    {
        var symbols = figures.Select(f => $"<symbol id=\"{f.Id}\" viewBox=\"{f.Paper}\">{FigureMarkup.Of(f)}</symbol>").ToArray();
        return new(
            symbols.Length == 0
                ? ""
                : $"<svg class=\"{PageClass.Figures}\" width=\"0\" height=\"0\" aria-hidden=\"true\">"
                    + $"{string.Join('\n', symbols)}</svg>\n"
        );
    }
}
