using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>The classes that the auditor or a script looks for, or that Gradus writes. A theme gives its other classes as it
/// likes.</summary>
public static class PageClass
{
    /// <summary>The cautions of a page; of a session, those that are shown before the start.</summary>
    public const string Cautions = "cautions";

    /// <summary>A kind of them, one of them, and the exercises that it belongs to.</summary>
    public const string Kind = "kind";
    public const string Caution = "caution";
    public const string Belongs = "belongs";

    /// <summary>Of the kinds, the conditions, each followed by the letters of its exercises.</summary>
    public const string NotWith = "not-with";

    /// <summary>The exercises of a session with their letters.</summary>
    public const string Index = "index";

    /// <summary>An exercise of a session.</summary>
    public const string Exercise = "exercise";

    /// <summary>Weeks with the same dose, in a session.</summary>
    public const string Weeks = "weeks";

    /// <summary>A figure over all weeks, where a script shows this week's in its place.</summary>
    public const string OnPaper = "on-paper";

    /// <summary>What stands in its place.</summary>
    public const string OnScreen = "on-screen";

    /// <summary>A word that the page explains.</summary>
    public const string Term = "term";

    /// <summary>What is said in a clip.</summary>
    public const string Said = "said";

    /// <summary>The picture of a clip that plays, for paper.</summary>
    public const string Still = "still";

    /// <summary>On which side an exercise is done.</summary>
    public const string Side = "side";

    /// <summary>Start and end of an exercise, beside each other.</summary>
    public const string Pair = "pair";

    /// <summary>Where a figure is shown, and the block in which each stands once.</summary>
    public const string Drawn = "drawn";
    public const string Figures = "figures";

    /// <summary>The letter in a figure.</summary>
    public const string Letter = "drawn-letter";

    /// <summary>What scripts say of a part: it is this week's; a time has more than three digits; a sheet is begun.</summary>
    public const string ThisWeek = "this-week";
    public const string Long = "long";
    public const string Filled = "filled";

    public static readonly Series<string> All =
    [
        Cautions,
        Kind,
        Caution,
        Belongs,
        NotWith,
        Index,
        Exercise,
        Weeks,
        OnPaper,
        OnScreen,
        Term,
        Said,
        Still,
        Side,
        Pair,
        Drawn,
        Figures,
        Letter,
        ThisWeek,
        Long,
        Filled,
    ];
}
