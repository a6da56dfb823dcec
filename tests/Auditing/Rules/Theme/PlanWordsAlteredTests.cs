using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class PlanWordsAlteredTests
{
    private const string Stretch = "exercise-wall-calf-stretch.html";
    private const string Press = "exercise-calf-press.html";
    private const string Weeks = "weeks.html";
    private const string Change = "<p>+15 s a hold</p>";
    private const string Days = "<p>Ankles: Monday and Thursday, about <time datetime=\"PT150S\">";
    private const string First = "<h2>Week 1, from Monday 7 December 2026</h2>";
    private const string Second = "<h2>Week 2, from Monday 14 December 2026</h2>";
    private const string Between = "\n" + Days + "2½ min</time></p>\n<p>about <time datetime=\"PT300S\">5 min</time></p>\n";
    private const string Held = "<td>30 s</td><td>45 s</td>";
    private const string Columns = "<th>1</th><th>2</th>";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("the change against the week before removed", Stretch, Change, ""),
        Plant("another change", Stretch, Change, "<p>+5 s a hold</p>"),
        Plant("a change turned round", Stretch, Change, "<p>−15 s a hold</p>"),
        Plant("a change glued to a number", Stretch, Change, "<p>1+15 s a hold</p>"),
        Plant("a change hidden", Stretch, Change, Change.Replace("<p>", "<p hidden>", StringComparison.Ordinal)),
        Plant("a change of which a part is hidden", Stretch, Change, "<p>+15 s <span hidden>a hold</span></p>"),
        Plant("a change that stands only as a comment", Stretch, Change, "<!-- +15 s a hold -->"),
        Plant("a change before its week and not behind it", Stretch, "<p>Week 2</p>\n" + Change, Change + "<p>Week 2</p>") with
        {
            Rules = "text-not-planned",
        },
        Plant("another time in a dose", Stretch, Held, "<td>40 s</td><td>45 s</td>"),
        Plant("the doses of two weeks swapped", Stretch, Held, "<td>45 s</td><td>30 s</td>"),
        Plant("the dose of the second week in both", Stretch, Held, "<td>45 s</td><td>45 s</td>"),
        Plant("one dose for both weeks", Stretch, Held, "<td>30 s</td>"),
        Plant("a dose hidden", Stretch, Held, "<td>30 s</td><td hidden>45 s</td>"),
        Plant("the weeks of the doses swapped", Stretch, Columns, "<th>2</th><th>1</th>"),
        Plant("a week of the doses missing", Stretch, Columns, "<th>1</th>"),
        Plant("another week above a dose", Stretch, Columns, "<th>1</th><th>3</th>"),
        Plant("more sets", Press, "<th>Sets</th><td colspan=\"2\">2</td>", "<th>Sets</th><td colspan=\"2\">3</td>"),
        Plant("another effort", Press, "<td colspan=\"2\">50%</td>", "<td colspan=\"2\">80%</td>"),
        Plant("no rest", Press, "<tr><th>Rest between sets</th><td colspan=\"2\">30 s</td></tr>", ""),
        Plant("sets called times", Press, "<th>Sets</th>", "<th>Times</th>"),
        Plant(
            "two rows swapped",
            Press,
            "<th>Effort</th><td colspan=\"2\">50%</td></tr>\n<tr><th>Rest between sets</th>",
            "<th>Rest between sets</th><td colspan=\"2\">50%</td></tr>\n<tr><th>Effort</th>"
        ),
        Plant(
            "the doses removed",
            Press,
            "<tr><th>Press</th><td colspan=\"2\">10 s</td></tr>\n<tr><th>Effort</th><td colspan=\"2\">50%</td></tr>",
            ""
        ),
        Plant("the beginning not said", Press, "<p>Starting point</p>", ""),
        Plant("a week without its first day", Weeks, Second, "<h2>Week 2</h2>"),
        Plant("another date of a week", Weeks, Second, Second.Replace("14", "15", StringComparison.Ordinal)),
        Plant("the headings of two weeks swapped", Weeks, First + Between + Second, Second + Between + First),
        Plant("a session missing in a week", Weeks, Days + "2½ min</time></p>", "") with
        {
            Rules = "plan-words-altered times-do-not-add-up",
        },
        Plant("one of two days missing", Weeks, Days, Days.Replace("Monday and Thursday", "Monday", StringComparison.Ordinal)),
        Plant("another day", Weeks, Days, Days.Replace("Thursday", "Friday", StringComparison.Ordinal)),
        Plant("another name of a session", Weeks, Days, Days.Replace("Ankles", "Hips", StringComparison.Ordinal)),
        Plant(
            "the days of a session hidden",
            Weeks,
            Days,
            Days.Replace("Monday and Thursday", "<span hidden>Monday and Thursday</span>", StringComparison.Ordinal)
        ),
        Plant("a session under the heading of the week after", Weeks, First + Between + Second, First + Second + Between),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Plant("a change in an element of its own", Stretch, Change, "<div><em>+15 s</em> a hold</div>") with
        {
            Rules = "",
        },
        Plant("a change in a line with other words", Stretch, Change, "<p>New this week: +15 s a hold.</p>") with
        {
            Rules = "",
        },
        Plant("a line break inside a change", Stretch, Change, "<p>+15 s\n  a hold</p>") with
        {
            Rules = "",
        },
        Plant("words between the sessions and the next week", Weeks, Second, "<p>Then it goes on.</p>" + Second) with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_in_the_words_of_doses_and_weeks(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Plant(string kind, string path, string said, string instead) =>
        new(kind, path, said, instead, "plan-words-altered");
}
