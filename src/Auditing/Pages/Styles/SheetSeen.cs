using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>A style that is written into a page.</summary>
/// <param name="Text">What stands in the element; null for an attribute, which nobody judges.</param>
/// <param name="At">Where the element begins.</param>
public sealed record StyleSeen(string? Text, Location At);

/// <summary>A stylesheet of a site, a file or one that stands in a page.</summary>
/// <param name="IsFile">Whether lines and columns are those of the file.</param>
internal sealed record SheetSeen(Location At, bool IsFile, StyleReading Reading)
{
    /// <summary>The stylesheets of a theme.</summary>
    public static IEnumerable<SheetSeen> Of(IEnumerable<SourceText> sources) =>
        sources.Select(s => new SheetSeen(Location.Whole(s.Path), true, StyleJudge.Of(s.Text)));

    public Location Place(int line, int column) => IsFile ? new(At.File, line, column) : At;

    /// <summary>Behind a sentence: where in the page's own style it is.</summary>
    public string Words(int line) => IsFile ? "" : FormattableString.Invariant($" It is line {line} of the page's own style.");
}
