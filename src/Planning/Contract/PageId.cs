using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>The ids to which links of Gradus lead, and those that its scripts look for. A theme gives its other ids as it
/// likes.</summary>
public static class PageId
{
    /// <summary>The main part of a page.</summary>
    public const string Content = "content";

    /// <summary>Whom to call.</summary>
    public const string Emergency = "emergency";

    /// <summary>The cautions of a page.</summary>
    public const string Cautions = "cautions";

    /// <summary>On page one: what to stop for.</summary>
    public const string Watch = "watch";

    /// <summary>On page one: the coach's letter.</summary>
    public const string Letter = "letter";

    /// <summary>Behind the address of a session: it begins to lead at once.</summary>
    public const string Lead = "lead";

    /// <summary>Above the cautions of a session: that some of them are new.</summary>
    public const string Unread = "unread";

    /// <summary>Behind the address of a session: it is printed at once.</summary>
    public const string Print = "print";

    /// <summary>What the intake sheet's script looks for.</summary>
    public static readonly Series<string> OfSheet = ["sheet", "status", "no-script", "save", "saving", "clear", "clearing"];

    /// <summary>The place of a page where all pages are one: session-1.html stands at session-1.</summary>
    public static string Page(string path) =>
        path.EndsWith(PagePath.Ending, StringComparison.Ordinal) ? path[..^PagePath.Ending.Length] : path;

    /// <summary>A figure, wherever on the page it is shown.</summary>
    /// <param name="moment">start or end</param>
    public static string Figure(ExerciseId exercise, string moment) => $"figure-{exercise}-{moment}";

    /// <summary>An exercise of a session, by its letter.</summary>
    public static string Exercise(string letter) => "exercise-" + letter.ToLowerInvariant();

    public static string Week(int number) => FormattableString.Invariant($"week-{number}");

    /// <summary>Weeks with the same dose.</summary>
    public static string Weeks(IEnumerable<int> numbers) =>
        "weeks-" + string.Join('-', numbers.Select(n => FormattableString.Invariant($"{n}")));

    public static string Term(Inline.Term term) => FormattableString.Invariant($"word-{term.Number}");
}
