using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class TimesDoNotAddUpTests
{
    private const string Page = "session-1.html";
    private const string Hold =
        "<li>Hold: Wall calf stretch, left leg set 2 of 2 <time datetime=\"PT45S\">45 seconds</time></li>\n";
    private const string Total = "<p>Total: <time datetime=\"PT180S\">3 minutes</time></p>\n";
    private const string Dose = "<p><time datetime=\"PT80S\">80 seconds</time></p>";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("a step removed", Hold, ""),
        Plant(
            "a step removed, and the total made to fit",
            Total,
            "<p>Total: <time datetime=\"PT135S\">2 minutes 15 seconds</time></p>\n"
        ),
        Plant("a step doubled", Hold, Hold + Hold),
        Plant("a step that takes no time more", Hold, Hold + "<li>Breathe out</li>"),
        Plant("a step hidden", Hold, Hold.Replace("<li>", "<li hidden>", StringComparison.Ordinal)),
        Plant("a step not printed", Hold, Hold.Replace("<li>", "<li class=\"on-screen\">", StringComparison.Ordinal)),
        Plant("a list that only paper has", "<section>\n<h2>Week 2</h2>", "<section class=\"on-paper\">\n<h2>Week 2</h2>"),
        Plant(
            "two steps in one item",
            "left leg set 2 of 2 <time datetime=\"PT45S\">45 seconds</time></li>",
            "left leg set 2 of 2 <time datetime=\"PT45S\">45 seconds</time> <time datetime=\"PT0S\">0 seconds</time></li>",
            "step-altered times-do-not-add-up"
        ),
        Plant(
            "time moved from one step to the next",
            "<time datetime=\"PT45S\">45 seconds</time></li>\n<li>Rest: Wall calf stretch, left leg <time "
                + "datetime=\"PT20S\">20 seconds</time>",
            "<time datetime=\"PT20S\">20 seconds</time></li>\n<li>Rest: Wall calf stretch, left leg <time "
                + "datetime=\"PT45S\">45 seconds</time>",
            "step-altered times-do-not-add-up"
        ),
        Plant("the total changed", Total, "<p>Total: <time datetime=\"PT181S\">3 minutes 1 second</time></p>\n"),
        Plant("the total removed", Total, ""),
        Plant("the total hidden", Total, Total.Replace("<p>", "<p hidden>", StringComparison.Ordinal)),
        Plant("two totals", Total, Total + Total),
        Plant(
            "a second list under the same heading",
            "<section>\n<h2>Week 2</h2>",
            $"<section><h2>Week 2</h2>{Total}<ol>{Hold}</ol></section><section>\n<h2>Week 2</h2>"
        ),
        Plant(
            "a list under a heading of its own",
            "<section>\n<h2>Week 2</h2>",
            $"<section><h2>For the keen</h2>{Total}<ol>{Hold}</ol></section><section>\n<h2>Week 2</h2>"
        ),
        Plant(
            "the time changed in the figures only",
            "left leg set 2 of 2 <time datetime=\"PT45S\">",
            "left leg set 2 of 2 <time datetime=\"PT54S\">",
            "time-against-text times-do-not-add-up"
        ),
        Plant(
            "the time changed in the words only",
            Hold,
            Hold.Replace(">45 s", ">54 s", StringComparison.Ordinal),
            "step-altered time-against-text"
        ),
        Plant(
            "minutes and seconds",
            Total,
            "<p>Total: <time datetime=\"PT3M0S\">3 minutes</time></p>\n",
            "time-against-text times-do-not-add-up"
        ),
        Plant("a time that is none", Total, "<p>Total: <time>3 minutes</time></p>\n", "time-against-text times-do-not-add-up"),
        new(
            "another time on an exercise's page",
            "exercise-wall-calf-stretch.html",
            Dose,
            "<p><time datetime=\"PT81S\">81 seconds</time></p>",
            "times-do-not-add-up"
        ),
        new("a time missing on an exercise's page", "exercise-wall-calf-stretch.html", Dose, "", "times-do-not-add-up"),
        new(
            "two times of an exercise swapped",
            "exercise-wall-calf-stretch.html",
            Dose,
            "<p><time datetime=\"PT110S\">110 seconds</time></p>",
            "times-do-not-add-up"
        ),
        new(
            "another time on the first page",
            "index.html",
            "<h1>",
            "<p><time datetime=\"PT600S\">10 minutes</time></p><h1>",
            "times-do-not-add-up"
        ),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Plant(
            "a list without times",
            "<section>\n<h2>Week 2</h2>",
            "<ol><li>Wall calf stretch</li><li>Calf press</li></ol><section>\n<h2>Week 2</h2>",
            ""
        ),
        Plant(
            "a list that a printed sheet leaves out as a whole",
            "<section>\n<h2>Week 2</h2>",
            "<section class=\"by-the-second\">\n<h2>Week 2</h2>",
            ""
        ),
        new(
            "a session's time on the first page",
            "index.html",
            "<h1>",
            "<p><time datetime=\"PT180S\">3 minutes</time></p><h1>",
            ""
        ),
        new("a dose twice on an exercise's page", "exercise-wall-calf-stretch.html", Dose, Dose + Dose, ""),
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_to_the_second(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Plant(string kind, string said, string instead, string rules = "times-do-not-add-up") =>
        new(kind, Page, said, instead, rules);
}
