using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What the HTML parser saw of one finished page, read once. No rule touches the parser.</summary>
/// <param name="Html">The page as it was written, comments and all.</param>
/// <param name="Lines">All text in reading order, a line for each heading, paragraph, list item or cell.</param>
/// <param name="Lists">The numbered lists whose items carry times.</param>
/// <param name="Times">Every time element in order.</param>
/// <param name="Bars">Every drawing that has bars in it, in order.</param>
/// <param name="Links">Every place a reader can go to.</param>
/// <param name="Loads">Every address the page itself asks for.</param>
/// <param name="Guides">What it lets somebody be led through.</param>
/// <param name="Ids">Where fragment links may lead.</param>
/// <param name="Shape">What it tells a browser and a screen reader beside its text.</param>
/// <param name="Policy">What it lets itself load.</param>
/// <param name="Signs">What a script puts away until an exercise is done that it belongs to.</param>
/// <param name="Styles">The styles that are written into it.</param>
public sealed record PageSeen(
    string Path,
    string Html,
    Series<TextLine> Lines,
    Series<StepList> Lists,
    Series<TimeSeen> Times,
    Series<BarSeen> Bars,
    Series<LinkSeen> Links,
    Series<LoadSeen> Loads,
    Series<GuideSeen> Guides,
    IReadOnlySet<string> Ids,
    PageShape Shape,
    PolicyReading Policy,
    Series<SignSeen> Signs,
    Series<StyleSeen> Styles
)
{
    /// <summary>The file as a whole, or where the page begins in the one that holds it.</summary>
    public Location At { get; init; } = Location.Whole(Path);

    /// <summary>Every figure that it shows, in order.</summary>
    public Series<FigureSeen> Figures { get; init; } = [];

    /// <summary>Every drawing that a figure may show.</summary>
    public Series<DrawingSeen> Drawings { get; init; } = [];

    /// <summary>What it says, held against the plan; nothing where the plan has no such page.</summary>
    internal Spoken Spoken { get; init; } = Spoken.Nothing;

    /// <summary>The lines that everybody gets: on screen, in print and by a screen reader.</summary>
    public Series<TextLine> Shown { get; } = Lines.Where(l => l.HiddenBy is null).ToSeries();

    /// <summary>A part of one file, with the styles and scripts of the file, which were read with its first part.</summary>
    internal PageSeen Under(PageSeen first) =>
        this with
        {
            Styles = [.. first.Styles, .. Styles.ExceptBy(first.Styles.Select(s => s.At), s => s.At)],
            Policy = Policy with
            {
                Inline =
                [
                    .. first.Policy.Inline,
                    .. Policy.Inline.Where(i => i.Text.Any(IsInk)).ExceptBy(first.Policy.Inline.Select(i => i.At), i => i.At),
                ],
            },
            Shape = Shape with
            {
                Written = [.. first.Shape.Written.Concat(Shape.Written).DistinctBy(w => w.At)],
                Scripts = [.. first.Shape.Scripts.Concat(Shape.Scripts).DistinctBy(s => s.At)],
            },
        };

    private static bool IsInk(char letter) => !char.IsWhiteSpace(letter);
}

/// <param name="Text">With single spaces, not empty.</param>
/// <param name="HiddenBy">What keeps somebody from it, in words; null where nothing does.</param>
/// <param name="Mark">What the element tells the scripts of it; see <see cref="Planning.PageMark"/>.</param>
public sealed record TextLine(string Text, Location At, string? HiddenBy, string Mark)
{
    /// <summary>Where the links in it lead.</summary>
    public Series<string> Leads { get; init; } = [];

    /// <summary>The figures in it, with what they tell the script of each week; see <see cref="Planning.WeekData.Whole"/>.
    /// </summary>
    public Series<string> Figures { get; init; } = [];
}

/// <summary>A sign as a script knows it.</summary>
/// <param name="Belongs">The letters of its exercises, by which the script goes.</param>
/// <param name="Lines">All that is put away with it.</param>
public sealed record SignSeen(string Belongs, Series<string> Lines, Location At);

/// <param name="Heading">The first heading of the section the list stands in; empty where there is none.</param>
/// <param name="Outside">The times of that section outside the list.</param>
public sealed record StepList(string Heading, Series<StepSeen> Items, Series<TimeSeen> Outside, Location At);

/// <param name="Text">All of the item's text, its time's too.</param>
/// <param name="Data">What a script reads of it; empty where it says nothing.</param>
public sealed record StepSeen(string Text, Series<TimeSeen> Times, string Data, Location At);

/// <param name="Machine">The datetime attribute as written; null where there is none.</param>
/// <param name="Text">The words beside it.</param>
public sealed record TimeSeen(string? Machine, string Text, Location At)
{
    /// <summary>The span, where it is written as the page contract says: PT, whole seconds, S.</summary>
    public Seconds? Span => IsoSeconds.Read(Machine);
}

/// <summary>A drawing with rectangles in it.</summary>
/// <param name="Label">What a screen reader says of it.</param>
/// <param name="Length">How wide the drawing is, in its own units; null where it does not say.</param>
/// <param name="Parts">Where each rectangle begins and how wide it is, in the same units; null where that is no number, or the
/// rectangle is not simply drawn.</param>
public sealed record BarSeen(string Label, decimal? Length, Series<(decimal? From, decimal? Width)> Parts, Location At);

/// <param name="Text">What a reader sees of it, with single spaces.</param>
public sealed record LinkSeen(string Address, string Text, Location At);

/// <param name="By">What asks for it: "img src", "stylesheet look.css".</param>
public sealed record LoadSeen(string By, string Address, Location At);

/// <summary>What the guided session of a page shows.</summary>
/// <param name="Before">The lines that it shows before the start.</param>
/// <param name="Session">The number that it gives its script.</param>
/// <param name="During">What it shows beside the steps of each exercise.</param>
/// <param name="Versions">The sessions among which it chooses by what the client answers.</param>
public sealed record GuideSeen(
    string Session,
    Series<string> Before,
    Series<ArticleSeen> During,
    Series<VersionSeen> Versions,
    Location At
)
{
    /// <summary>What its script fills.</summary>
    public Series<GuidePlaceSeen> Places { get; init; } = [];
}

/// <param name="Name">As it tells the script.</param>
/// <param name="Panel">Of the panel that it stands in; empty where it stands in none.</param>
/// <param name="Status">Which element of the page the status is that it stands in, which is said as soon as it is filled; null
/// where it stands in none.</param>
public sealed record GuidePlaceSeen(string Name, string Panel, int? Status, Location At);

/// <param name="Loads">What its exercise loads, as it tells the script.</param>
public sealed record ArticleSeen(string Exercise, string Loads, Series<string> Lines, Location At);

/// <param name="Lengths">Its seconds in each week.</param>
/// <param name="Loads">What its exercises load.</param>
/// <param name="Leads">Where its link leads.</param>
public sealed record VersionSeen(string Session, string Kind, string Lengths, string Loads, string Leads, Location At);
