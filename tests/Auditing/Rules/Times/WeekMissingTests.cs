using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class WeekMissingTests
{
    private const string Page = "session-1.html";
    private const string Exercise = "exercise-calf-press.html";
    private const string Heading = "<h2>Week 2</h2>";

    public static readonly Series<PlantedFault> Faults =
    [
        new("the heading of a week changed", Page, Heading, "<h2>Week 3</h2>", "week-missing"),
        new("the heading of a week with words more", Page, Heading, "<h2>Week 2, if you feel well</h2>", "week-missing"),
        new("the heading of a week removed", Page, Heading, "", "week-missing"),
        new("another heading before it in its section", Page, Heading, "<h2>Soon</h2>" + Heading, "week-missing"),
        new("the list of a week not numbered", Page, Heading, Heading + "</section><section>", "week-missing"),
        new("the weeks of a dose removed", Exercise, "<p>Weeks 1 and 2</p>", "", "week-missing"),
        new("one of the weeks of a dose removed", Exercise, "<p>Weeks 1 and 2</p>", "<p>Week 1</p>", "week-missing"),
        new("a week too many for a dose", Exercise, "<p>Weeks 1 and 2</p>", "<p>Weeks 1 and 22</p>", "week-missing"),
        new(
            "a week hidden",
            "exercise-wall-calf-stretch.html",
            "<p>Week 2</p>",
            "<p><span hidden>Week 2</span></p>",
            "week-missing"
        ),
        new("two weeks of the same number", "exercise-wall-calf-stretch.html", "<p>Week 2</p>", "<p>Week 1</p>", "week-missing"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        new("the weeks in one line with the change", Exercise, "<p>Weeks 1 and 2</p>\n<p>", "<p>Weeks 1 and 2: ", ""),
        new("the weeks named twice", Exercise, "<p>Weeks 1 and 2</p>", "<p>In Weeks 1 and 2.</p><p>Weeks 1 and 2</p>", ""),
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_on_sessions_and_on_exercises(PlantedFault fault) => fault.MustBeFound();
}
