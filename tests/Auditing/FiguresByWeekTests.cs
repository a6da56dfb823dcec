namespace Gradus.Tests.Auditing;

/// <summary>What a script puts in the place of a number, week by week, is the plan's, and takes no other word with it.</summary>
public sealed class FiguresByWeekTests
{
    private const string Figure = "<span data-by-week=\"1=30 seconds;2=45 seconds\">30 to 45 seconds</span>.";

    public static TheoryData<PlantedFault> All =>
        new(
            Plant("another number", Figure.Replace("2=45", "2=90", StringComparison.Ordinal)),
            Plant("the number of another week", Figure.Replace("1=30", "1=45", StringComparison.Ordinal)),
            Plant("a week left out", Figure.Replace(";2=45 seconds", "", StringComparison.Ordinal)),
            Plant("a word taken away with it", Figure.Replace("</span>.", ".</span>", StringComparison.Ordinal)),
            Plant("where the plan has no number", Figure + " <span data-by-week=\"1=\"></span>"),
            Plant("the range alone", "30 to 45 seconds.") with
            {
                Rules = "",
            }
        );

    [Theory, MemberData(nameof(All))]
    public void Another_one_is_found(PlantedFault fault) => fault.MustBeFound();

    /// <summary>A cell that is wider or narrower moves every week behind it.</summary>
    [Theory]
    [InlineData("session-1.html")]
    [InlineData("exercise-calf-press.html")]
    public void A_cell_for_other_weeks_is_found(string page) =>
        new PlantedFault("a cell for other weeks", page, "<td colspan=\"2\">", "<td>", "plan-words-altered").MustBeFound();

    private static PlantedFault Plant(string kind, string instead) =>
        new(kind, "session-1.html", Figure, instead, "week-told-wrong");
}
