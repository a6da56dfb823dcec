using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>A finished intake sheet as the rules see it. Findings name the template: the page itself is not written where there
/// are any.</summary>
/// <param name="Questions">What stands above the answers to each, where everybody sees it.</param>
/// <param name="Strange">What is not on the list of known markup, and what a style may keep from somebody.</param>
/// <param name="Data">The data attributes.</param>
/// <param name="Scripts">What stands in the page.</param>
public sealed record IntakeSheetSeen(
    Series<string> Questions,
    Series<StrangeMarkup> Strange,
    Series<WordsAttribute> Data,
    Series<StyleSeen> Styles,
    Series<ScriptSeen> Scripts
)
{
    /// <summary>Of the theme's files, and of what else stands in the page, what is wrong with it.</summary>
    internal Series<SheetSeen> Sheets { get; private init; } = [];

    internal static readonly Location Template = Location.Whole("intake-sheet.html");

    internal static IntakeSheetSeen Of(string page, ThemeSeen theme)
    {
        var markup = PageMarkup.Of(PageTree.Of(page));
        var (strange, data) = new MarkupParser(KnownMarkup.Sheet, _ => Template).Read(markup);
        var hiding = new HiddenElements(markup, LeftOutPlaces.In(markup).Anywhere, isSheet: true);
        var styles = markup
            .All.Where(e => e.LocalName == "style" || e.Has("style"))
            .Select(e => new StyleSeen(e.LocalName == "style" ? e.TextContent : null, Template))
            .ToSeries();
        var written = PageStyle.Written(
            PageStyle.OfSheet.Select(path => theme.OfSheet.FirstOrDefault(s => s.Path == path)?.Text.TrimStart('\uFEFF') ?? "")
        );
        return new(
            markup
                .Named("legend")
                .Where(l => l.ParentElement?.Has(PageData.Asked) == true && hiding.Around(l) is null)
                .Select(l => Spacing.Collapse(l.TextContent))
                .ToSeries(),
            strange.Concat(Replies(markup).Select(r => hiding.Around(r)).OfType<string>().Select(LeftOut)).ToSeries(),
            data,
            styles,
            markup.Named("script").Select(s => new ScriptSeen(s.Value("src"), s.TextContent, false, Template)).ToSeries()
        )
        {
            Sheets = SheetSeen
                .Of(theme.OfSheet)
                .Concat(
                    styles
                        .Where(s => s.Text is not null && s.Text != written)
                        .Select(s => new SheetSeen(s.At, false, StyleJudge.Of(s.Text ?? "")))
                )
                .ToSeries(),
        };
    }

    private static IEnumerable<PageElement> Replies(PageMarkup markup) =>
        markup.Named("label").Where(l => l.Within().Any(e => e.LocalName == "input" && e.Value("type") == "radio"));

    private static StrangeMarkup LeftOut(string hidden) =>
        new($"an answer behind {hidden}", "Put it where everybody sees it, on the screen and on paper.", Template);
}
