using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>The stylesheets of a theme that stand in a page itself, because that has no other file.</summary>
public static class PageStyle
{
    /// <summary>What an intake sheet has in the page, and no site beside its pages.</summary>
    public const string Sheet = "intake-sheet.css";

    private const string Look = "look.css",
        Print = "print.css";

    /// <summary>In this order, where all pages are one.</summary>
    public static readonly Series<string> InOne = [Look, "guide.css", Print];

    /// <summary>In this order, in an intake sheet.</summary>
    public static readonly Series<string> OfSheet = [Look, Print, Sheet];

    /// <summary>What is written of them into the page.</summary>
    /// <param name="texts">What stands in each; empty for one that the theme has not.</param>
    public static string Written(IEnumerable<string> texts) => Compact.Style(string.Join('\n', texts));
}
