using System.Text;

namespace Gradus.Domain;

/// <summary>Text a coach wrote, parsed once and kept with its places. Rendering writes it as HTML; auditing compares its plain
/// lines.</summary>
public sealed record Prose(Series<Block> Blocks)
{
    public static readonly Prose Empty = new(Series<Block>.Empty);

    /// <summary>Of an item of a list, the work that it tells how to do: words for verbs of a dose, with a blank between; empty
    /// where nobody has looked, and where it tells of none.</summary>
    public string Asks { get; init; } = "";

    /// <summary>The plain text, one line for each heading, paragraph and list item, in reading order.</summary>
    public IEnumerable<string> Lines() => Texts().Select(PlainOf).Where(line => line.Length > 0);

    /// <summary>The text of each heading, paragraph and list item, in reading order.</summary>
    public IEnumerable<Series<Inline>> Texts() => TextsAsked().Select(text => text.Text);

    /// <summary>The same, each with what the item asks that it stands in.</summary>
    public IEnumerable<(Series<Inline> Text, string Asks)> TextsAsked() => Blocks.SelectMany(block => TextsOf(block, Asks));

    /// <summary>Every piece of running text, inside emphasis and links too.</summary>
    public IEnumerable<Inline> Inlines() => Texts().SelectMany(Inlines);

    /// <inheritdoc cref="Inlines()"/>
    public static IEnumerable<Inline> Inlines(Series<Inline> text) => text.SelectMany(Within);

    /// <summary>The same prose with each piece replaced by what <paramref name="change"/> makes of it.</summary>
    public Prose With(Func<Inline, Inline> change) => this with { Blocks = Blocks.Select(b => Change(b, change)).ToSeries() };

    /// <summary>The same with what each item of its lists asks.</summary>
    public Prose Asking(Func<Prose, string> asks) =>
        this with
        {
            Blocks = Blocks
                .Select(b =>
                    b is Block.Listing list
                        ? list with
                        {
                            Items = list.Items.Select(item => item with { Asks = asks(item) }).ToSeries(),
                        }
                        : b
                )
                .ToSeries(),
        };

    private static IEnumerable<(Series<Inline> Text, string Asks)> TextsOf(Block block, string asks) =>
        block switch
        {
            Block.Heading heading => [(heading.Text, asks)],
            Block.Paragraph paragraph => [(paragraph.Text, asks)],
            Block.Listing list => list.Items.SelectMany(item => item.TextsAsked()),
            _ => throw new NotSupportedException(block.GetType().Name),
        };

    private static IEnumerable<Inline> Within(Inline inline) =>
        inline switch
        {
            Inline.Emphasis emphasis => emphasis.Text.SelectMany(Within).Prepend(inline),
            Inline.Link link => link.Text.SelectMany(Within).Prepend(inline),
            Inline.ExerciseLink link => link.Text.SelectMany(Within).Prepend(inline),
            _ => [inline],
        };

    private static Block Change(Block block, Func<Inline, Inline> change) =>
        block switch
        {
            Block.Heading heading => heading with { Text = Change(heading.Text, change) },
            Block.Paragraph paragraph => paragraph with { Text = Change(paragraph.Text, change) },
            Block.Listing list => list with { Items = list.Items.Select(item => item.With(change)).ToSeries() },
            _ => throw new NotSupportedException(block.GetType().Name),
        };

    private static Series<Inline> Change(Series<Inline> text, Func<Inline, Inline> change) =>
        text.Select(inline =>
                change(
                    inline switch
                    {
                        Inline.Emphasis emphasis => emphasis with { Text = Change(emphasis.Text, change) },
                        Inline.Link link => link with { Text = Change(link.Text, change) },
                        Inline.ExerciseLink link => link with { Text = Change(link.Text, change) },
                        _ => inline,
                    }
                )
            )
            .ToSeries();

    public static string PlainOf(Series<Inline> text)
    {
        var plain = new StringBuilder();
        Append(text, plain);
        return Spacing.Collapse(plain.ToString());
    }

    private static void Append(Series<Inline> text, StringBuilder plain)
    {
        foreach (var inline in text)
        {
            if (inline is Inline.Plain words)
                plain.Append(words.Words);
            else if (inline is Inline.Figure figure)
                plain.Append(figure.Words);
            else if (inline is Inline.Term term)
                plain.Append(term.Words);
            else if (inline is Inline.Placeholder placeholder)
                plain.Append('{').Append(placeholder.Name).Append('}');
            else if (inline is Inline.RangeFigure range)
                plain.Append(range.Written);
            else if (inline is Inline.Emphasis emphasis)
                Append(emphasis.Text, plain);
            else if (inline is Inline.Link link)
                Append(link.Text, plain);
            else if (inline is Inline.ExerciseLink exercise)
                Append(exercise.Text, plain);
            else if (inline is Inline.Clip { Said: { Length: > 0 } said })
                plain.Append(' ').Append(said).Append(' ');
        }
    }
}

public abstract record Block
{
    private Block() { }

    /// <param name="Level">1 to 6, as written.</param>
    public sealed record Heading(int Level, Series<Inline> Text, Location At) : Block;

    public sealed record Paragraph(Series<Inline> Text, Location At) : Block;

    public sealed record Listing(bool Numbered, Series<Prose> Items, Location At) : Block;
}

public abstract record Inline
{
    private Inline() { }

    public sealed record Plain(string Words) : Inline;

    /// <summary>A number of the dose in force that is not the same in all weeks.</summary>
    /// <param name="Words">Over all weeks: "30 to 45 seconds".</param>
    /// <param name="ByWeek">In each week that has the dose.</param>
    public sealed record Figure(string Words, Series<SaidInWeeks> ByWeek) : Inline;

    /// <summary>A number of a client's own that stands in braces: what was read last, or what the sport asks.</summary>
    /// <param name="Motion">In the one way in which it is measured.</param>
    /// <param name="Side">Left, right, or what a sport calls one; null where the motion has none.</param>
    /// <param name="Written">As the coach has it, with its braces.</param>
    public sealed record RangeFigure(RangeFigureKind Kind, Motion Motion, string? Side, string Written, Location At) : Inline;

    public sealed record Emphasis(bool Strong, Series<Inline> Text) : Inline;

    /// <param name="Address">https, mailto or tel.</param>
    public sealed record Link(string Address, Series<Inline> Text, Location At) : Inline;

    /// <summary>A link to another exercise's file; it leads to that exercise's page where the client has one.</summary>
    public sealed record ExerciseLink(ExerciseId Exercise, Series<Inline> Text, Location At) : Inline;

    /// <summary>A picture, and what it shows in words.</summary>
    /// <param name="Path">Inside the practice, with <c>/</c> between folders.</param>
    /// <param name="Sizes">Those that a form of the site has, the smallest first; empty before there is a plan.</param>
    public sealed record Picture(string Path, string Shows, Series<PictureSize> Sizes, Location At) : Inline;

    /// <summary>A figure that stands once in the page and is shown here.</summary>
    /// <param name="Id">What the figure is called there.</param>
    /// <param name="Paper">The piece of paper that it is drawn on: left, top, width and height.</param>
    /// <param name="Mirrored">How it is mirrored for the other side, as a transform; empty where it is not.</param>
    /// <param name="Letter">Of the side that works; empty where none does.</param>
    /// <param name="LetterX">The middle of the letter.</param>
    /// <param name="LetterY">The line that the letter stands on.</param>
    /// <param name="Title">What it is called.</param>
    /// <param name="Shows">What it shows, in words.</param>
    public sealed record Drawn(
        string Id,
        string Paper,
        string Mirrored,
        string Letter,
        string LetterX,
        string LetterY,
        string Title,
        string Shows
    ) : Inline;

    /// <summary>A clip, and what it shows in words.</summary>
    /// <param name="Path">Inside the practice, and in a plan inside the site; empty where a form of the site has its still
    /// alone.</param>
    /// <param name="Still">The path in the practice of the picture that stands for it.</param>
    /// <param name="Stills">The sizes of that picture, as a picture has them.</param>
    /// <param name="Captions">In the reader's language; null before there is a reader, and where there are none.</param>
    /// <param name="Said">What a page says below it of what is heard in it; empty likewise.</param>
    public sealed record Clip(
        string Path,
        string Still,
        Series<PictureSize> Stills,
        string Shows,
        int Width,
        int Height,
        Captions? Captions,
        string Said,
        Location At
    ) : Inline;

    /// <summary>A word of the glossary where a reader meets it first. As plain text it is what the coach wrote there.</summary>
    /// <param name="Number">Its place in the glossary, from 1.</param>
    /// <param name="Words">As it stands in the text.</param>
    /// <param name="Word">As it stands in the glossary.</param>
    public sealed record Term(int Number, string Words, string Word, string Explanation) : Inline;

    /// <summary>A word in braces that stands for a number of the dose in force.</summary>
    public sealed record Placeholder(string Name, Location At) : Inline;
}

public enum RangeFigureKind
{
    /// <summary>The latest occasion, with its date.</summary>
    Reading,

    /// <summary>The most that any of the client's sports asks.</summary>
    Demand,
}
