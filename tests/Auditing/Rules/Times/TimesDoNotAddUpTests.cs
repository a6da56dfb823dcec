using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class TimesDoNotAddUpTests
{
    private const string Page = "session-1.html";
    private const string Hold = "<li>A hold, left leg set 2 of 2 <time datetime=\"PT45S\">45 s</time></li>\n";
    private const string Total = "<p>Total: <time datetime=\"PT180S\">3 min</time></p>\n";
    private const string Dose = "<p><time datetime=\"PT80S\">1 min 20 s</time></p>";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("a step removed", Hold, ""),
        Plant("a step removed, and the total made to fit", Total, "<p>Total: <time datetime=\"PT135S\">2 min 15 s</time></p>\n"),
        Plant("a step doubled", Hold, Hold + Hold),
        Plant("a step that takes no time more", Hold, Hold + "<li>Breathe out</li>"),
        Plant("a step hidden", Hold, Hold.Replace("<li>", "<li hidden>", StringComparison.Ordinal)),
        Plant("a step not printed", Hold, Hold.Replace("<li>", "<li class=\"on-screen\">", StringComparison.Ordinal)),
        Plant("a list that only paper has", "<section>\n<h2>Week 2</h2>", "<section class=\"on-paper\">\n<h2>Week 2</h2>"),
        Plant(
            "two steps in one item",
            "left leg set 2 of 2 <time datetime=\"PT45S\">45 s</time></li>",
            "left leg set 2 of 2 <time datetime=\"PT45S\">45 s</time> <time datetime=\"PT0S\">0 s</time></li>",
            "step-altered times-do-not-add-up"
        ),
        Plant(
            "time moved from one step to the next",
            "<time datetime=\"PT45S\">45 s</time></li>\n<li>A rest, left leg <time " + "datetime=\"PT20S\">20 s</time>",
            "<time datetime=\"PT20S\">20 s</time></li>\n<li>A rest, left leg <time " + "datetime=\"PT45S\">45 s</time>",
            "step-altered times-do-not-add-up"
        ),
        Plant("the total changed", Total, "<p>Total: <time datetime=\"PT181S\">3 min 1 s</time></p>\n"),
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
            "<p>Total: <time datetime=\"PT3M0S\">3 min</time></p>\n",
            "time-against-text times-do-not-add-up"
        ),
        Plant("a time that is none", Total, "<p>Total: <time>3 min</time></p>\n", "time-against-text times-do-not-add-up"),
        new(
            "another time on an exercise's page",
            "exercise-wall-calf-stretch.html",
            Dose,
            "<p><time datetime=\"PT81S\">1 min 21 s</time></p>",
            "times-do-not-add-up"
        ),
        new("a time missing on an exercise's page", "exercise-wall-calf-stretch.html", Dose, "", "times-do-not-add-up"),
        new(
            "two times of an exercise swapped",
            "exercise-wall-calf-stretch.html",
            Dose,
            "<p><time datetime=\"PT110S\">1 min 50 s</time></p>",
            "times-do-not-add-up"
        ),
        new(
            "another time on the first page",
            "index.html",
            "<h1>",
            "<p><time datetime=\"PT600S\">10 min</time></p><h1>",
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
        new("a session's time on the first page", "index.html", "<h1>", "<p><time datetime=\"PT180S\">3 min</time></p><h1>", ""),
        new("a dose twice on an exercise's page", "exercise-wall-calf-stretch.html", Dose, Dose + Dose, ""),
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_to_the_second(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Plant(string kind, string said, string instead, string rules = "times-do-not-add-up") =>
        new(kind, Page, said, instead, rules);
}
