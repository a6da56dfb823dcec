using Gradus.Domain;
using Markdig;
using Markdig.Syntax;
using Block = Gradus.Domain.Block;

namespace Gradus.Reading;

/// <summary>CommonMark → prose. Raw HTML comes out as the text it is; addresses that are not allowed are refused.</summary>
internal sealed class ProseReader
{
    /// <summary>More would take the parser minutes, and no text for people has so many.</summary>
    private const int BracketLimit = 2000;

    private static readonly MarkdownPipeline CommonMark = new MarkdownPipelineBuilder().UsePreciseSourceLocation().Build();

    private readonly SourceFile sheet;
    private readonly int firstLine;
    private readonly ProseInlines inlines;

    private ProseReader(SourceFile sheet, int firstLine, ProseRules rules)
    {
        this.sheet = sheet;
        this.firstLine = firstLine;
        inlines = new(sheet, firstLine, rules);
    }

    /// <param name="firstLine">The line of the file at which the text begins, from 1.</param>
    public static Prose Read(SourceFile sheet, string markdown, int firstLine, ProseRules rules)
    {
        if (markdown.Count(c => c == '[') > BracketLimit)
            return Refused("This text has more than 2,000 square brackets.");
        if (Parsed(markdown) is not { } document)
            return Refused("Lists, quotes or emphasis are nested too deep in this text.");
        var text = LaidOut.Of(markdown, document);
        MarkdownSigns.Find(sheet, firstLine, text);
        Braces.Find(sheet, firstLine, text, document, rules);
        var reader = new ProseReader(sheet, firstLine, rules);
        return new(document.SelectMany(reader.Blocks).ToSeries());

        Prose Refused(string message)
        {
            sheet.Fault(
                Faults.FileUnreadable,
                sheet.At(firstLine, 1),
                message,
                "Look for a character that is repeated by mistake, and take it out."
            );
            return Prose.Empty;
        }
    }

    /// <summary>Null where the text is nested deeper than the parser goes, which it says by throwing.</summary>
    private static MarkdownDocument? Parsed(string markdown)
    {
        try
        {
            return Markdig.Markdown.Parse(BlanksInNames.Held(markdown), CommonMark);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private IEnumerable<Block> Blocks(Markdig.Syntax.Block block)
    {
        var at = sheet.At(firstLine + block.Line, block.Column + 1);
        switch (block)
        {
            case HeadingBlock heading:
                return [new Block.Heading(heading.Level, inlines.Of(heading.Inline), at)];
            case ListBlock list:
                return [new Block.Listing(list.IsOrdered, list.OfType<ListItemBlock>().Select(Item).ToSeries(), at)];
            case ContainerBlock container:
                return container.SelectMany(Blocks);
            case HtmlBlock html:
                sheet.Warn(
                    Faults.HtmlInText,
                    at,
                    "This is HTML; the page shows it as the text it is.",
                    "Take it out; leave a line empty between paragraphs."
                );
                return Written(html, at);
            case CodeBlock code:
                return Written(code, at);
            case ParagraphBlock paragraph:
                return [new Block.Paragraph(inlines.Of(paragraph.Inline), at)];
            default:
                return [];
        }
    }

    private Prose Item(ListItemBlock item) => new(item.SelectMany(Blocks).ToSeries());

    private static IEnumerable<Block> Written(LeafBlock block, Location at)
    {
        var text = Spacing.Collapse(BlanksInNames.GivenBack(block.Lines.ToString()));
        return text.Length == 0 ? [] : [new Block.Paragraph([new Inline.Plain(text)], at)];
    }
}

/// <summary>What a text may hold beside words.</summary>
/// <param name="Placeholders">Whether a word in braces stands for a number of the dose. The number to call in an emergency may
/// stand in every text.</param>
/// <param name="Exercises">The exercises that a link may lead to.</param>
/// <param name="Media">Where pictures and clips are found.</param>
internal sealed record ProseRules(bool Placeholders, IReadOnlySet<string> Exercises, MediaFiles Media)
{
    /// <summary>The motions that a reading or a demand in braces may name; null where neither may stand.</summary>
    public KnownIds? Ranges { get; init; }

    /// <summary>Whether <c>{name}</c> stands for the name of whoever reads it.</summary>
    public bool Names { get; init; }

    /// <summary>Whether something is filled in for a word in braces.</summary>
    public bool Fills(string name) =>
        Placeholders || name == EmergencyNumber.Placeholder || (Names && name == SharedProgramme.NamePlaceholder);

    /// <summary>Whether a clip may stand in it: it shows how something is done, so it stands where the exercise's cautions stand
    /// before it.</summary>
    public bool Clips => Placeholders;
}
