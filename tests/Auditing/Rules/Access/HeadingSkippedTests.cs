using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class HeadingSkippedTests
{
    private const string Title = "<h1>A longer lunge</h1>";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("no title", ""),
        Plant("a title that is no heading", "<p>A longer lunge</p>"),
        Plant("a title one level down", "<h2>A longer lunge</h2>"),
        Plant("a title that is hidden", "<h1 hidden>A longer lunge</h1>"),
        Plant("two titles", Title + "<h1>Again</h1>"),
        Plant("h1 to h3", Title + "<h3>x</h3>"),
        Plant("h2 to h4", Title + "<h2>x</h2><h4>y</h4>"),
        Plant("h3 to h6", Title + "<h2>x</h2><h3>y</h3><h6>z</h6>"),
        Plant("a heading by its role", Title + "<div role='heading' aria-level='4'>x</div>"),
        Plant("the one between is hidden", Title + "<h2 aria-hidden='true'>x</h2><h3>y</h3>"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Plant("one after another, and back", Title + "<h2>x</h2><h3>y</h3><h4>z</h4><h2>x</h2>") with
        {
            Rules = "",
        },
        Plant("a heading before the title", "<h2>x</h2>" + Title) with
        {
            Rules = "",
        },
        Plant("a second title that is hidden", Title + "<h1 hidden>x</h1>") with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_wherever_a_level_is_left_out(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Plant(string kind, string instead) => new(kind, "index.html", Title, instead, "heading-skipped");
}
