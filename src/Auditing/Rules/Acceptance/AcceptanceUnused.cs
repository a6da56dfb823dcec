using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class AcceptanceUnused : IAcceptanceRule
{
    /// <summary>What is accepted on a finished page, or of a theme, is not judged: that one may not be among those made
    /// now.</summary>
    public IEnumerable<Finding> Check(Series<Accepted> accepted, DateOnly today) =>
        from unused in accepted
        where !unused.IsRefused && unused.Fits.Count == 0 && !IsOnPage(unused.Acceptance.File)
        let acceptance = unused.Acceptance
        select this.Found(
            Level.Note,
            null,
            acceptance.At,
            unused.Others is [var other, ..]
                ? $"'{acceptance.Rule}' is accepted in {acceptance.File}, but what is found there is not what was seen: "
                    + $"{other.Message}"
                : $"'{acceptance.Rule}' is accepted in {acceptance.File}, but is not found there.",
            unused.Others.Count > 0
                ? "Look at it. If it may stand, write its sentence under 'saw', to the letter."
                : "Take the entry out, or correct the name of the file; it is written as findings name it.",
            acceptance.Rule.Text.Length
        );

    private static bool IsOnPage(string file) =>
        file == CheckedTheme.Path
        || file.EndsWith(PagePath.Ending, StringComparison.Ordinal)
        || file.EndsWith(".css", StringComparison.Ordinal);
}
