using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Auditing;

/// <summary>What stood in braces is held on the finished page like any other text. Tess's rear leg is the left one, read at 9
/// degrees.</summary>
public sealed class RangeFiguresOnPagesTests
{
    private const string Filled = "It bent 9° on 20 November 2026.";

    private static readonly (Plan Plan, Site Site) Made = FinishedSite.Edited(text =>
        text.Replace("the rear ankle holds", "the rear ankle ROLE holds", StringComparison.Ordinal)
            .Replace("2. Stay there for {hold}.", "2. Stay there for {hold}. It bent READ.", StringComparison.Ordinal)
            .Replace("ROLE", "(READ)", StringComparison.Ordinal)
            .Replace("READ", "{reading: lying ankle dorsiflexion rear leg}", StringComparison.Ordinal)
    );

    [Fact]
    public void It_is_filled_on_the_page_of_the_letter_of_the_exercise_and_of_the_session()
    {
        Assert.Empty(RuleBook.Audit(Made.Plan, Made.Site, []));
        Assert.Contains("(9° on 20 November 2026)", Html(PagePath.Home), StringComparison.Ordinal);
        Assert.Contains(Filled, Html("exercise-wall-calf-stretch.html"), StringComparison.Ordinal);
        Assert.Contains(Filled, Html("session-1.html"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("index.html", "(9° on 20 November 2026)", "(19° on 20 November 2026)")]
    [InlineData("index.html", "(9° on 20 November 2026)", "(9° on 21 November 2026)")]
    [InlineData("index.html", "(9° on 20 November 2026)", "({reading: lying ankle dorsiflexion rear leg})")]
    [InlineData("exercise-wall-calf-stretch.html", Filled, "It bent 10° on 20 November 2026.")]
    [InlineData("session-1.html", Filled, "")]
    public void Another_number_on_the_page_is_found(string path, string said, string instead) =>
        Assert.Contains(
            "plan-words-altered",
            RuleBook.Audit(Made.Plan, FinishedSite.With(Made.Site, path, said, instead), []).Select(f => f.Rule.Text)
        );

    private static string Html(string path) => Made.Site.Pages.First(p => p.Path == path).Html;
}
