using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class StepAlteredTests
{
    private const string Page = "session-1.html";
    private const string Hold = "<li>A hold, left leg set 2 of 2 <time datetime=\"PT45S\">";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("the side removed", Hold.Replace(", left leg", "", StringComparison.Ordinal)),
        Plant("the side hidden", Hold.Replace(", left leg", "<span hidden>, left leg</span>", StringComparison.Ordinal)),
        Plant("another exercise", Hold.Replace("A hold", "B hold", StringComparison.Ordinal)),
        Plant("another verb", Hold.Replace("hold", "press", StringComparison.Ordinal)),
        Plant("another set", Hold.Replace("set 2 of 2", "set 1 of 2", StringComparison.Ordinal)),
        Plant("a word more", Hold.Replace("<li>", "<li>Please ", StringComparison.Ordinal)),
        new("the effort changed", Page, "set 2 of 2, 50%", "set 2 of 2, 80%", "step-altered"),
        new(
            "two steps of the same time swapped",
            Page,
            "B press, left leg set 1 of 2",
            "B press, left leg set 2 of 2",
            "step-altered"
        ),
        new(
            "a list inside a step",
            Page,
            "left leg set 2 of 2 <time datetime=\"PT45S\">",
            "left leg set 2 of 2 <ul><li>Breathe</li></ul> <time datetime=\"PT45S\">",
            "step-altered"
        ),
    ];

    public static TheoryData<PlantedFault> All =>
        new(
            Faults.Append(
                Plant(
                    "words in elements of their own",
                    Hold.Replace("left leg", "<b>left</b> <i>leg</i>", StringComparison.Ordinal)
                ) with
                {
                    Rules = "",
                }
            )
        );

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_whatever_word_is_other(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Plant(string kind, string instead) => new(kind, Page, Hold, instead, "step-altered");
}
