using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Rendering;

namespace Gradus.Tests.Auditing;

/// <summary>A site with rounds, a harder version, a session for a day away, a short version and conditions for moving on: each
/// new text and number of it, broken by hand in the finished page, is found.</summary>
public sealed class RoundsAndAlternatesTests
{
    private static readonly Plan Plan = Club
        .Empty.Exercise("sway", "2 x hold 20 s, rest 15 s, on left", "harder: brace")
        .Exercise("brace", "2 x press 10 s at 40%, rest 20 s, on left")
        .Exercise("nod", "hold 6 s", trains: "cervical flexion")
        .Exercise("lean", "hold 12 s, on right", signs: "sharp-stab, calf-pull")
        .Member(
            "ansel",
            [
                "- rounds: 2\n  rest: 40 s\n  change: 15 s\n  of: [{ use: sway, by-week: { 1: hold 20 s, 2: { use: "
                    + "harder } } }, { use: nod, keep-when-short: yes, move-on: [no pain for a week] }]",
            ],
            2
        )
        .Edit(
            "clients/ansel/programme.md",
            "sessions:",
            "move-on: { gain: [the knee goes past the toes] }\nalternate: [{ name: Away, instead-of: Session 1, kind: "
                + "travel, do: [{ use: lean }] }]\nsessions:"
        )
        .Plan("ansel");

    private static readonly Site Site = SiteRenderer.Render(
        Plan,
        new Theme("little", LittlePractice.Theme.Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(f.Value)))),
        []
    )!;

    public static TheoryData<string, string, string, string, string> Faults =>
        new()
        {
            { "the partners of a round removed", "session-1.html", "<p>In rounds with The nod.</p>", "", "plan-words-altered" },
            {
                "other partners",
                "exercise-sway.html",
                "In rounds with The nod.",
                "In rounds with The lean.",
                "plan-words-altered"
            },
            {
                "the number of rounds changed",
                "session-1.html",
                "Go through them 2 times",
                "Go through them 3 times",
                "plan-words-altered"
            },
            {
                "the rest between rounds changed in words",
                "exercise-nod.html",
                "rest 40 seconds between rounds",
                "rest 4 seconds between rounds",
                "plan-words-altered"
            },
            {
                "a step between the uses of a round removed",
                "session-1.html",
                "<li>C next <time datetime=\"PT15S\">15 s</time></li>",
                "",
                "times-do-not-add-up"
            },
            {
                "the rest between rounds shortened",
                "session-1.html",
                "<time datetime=\"PT40S\">40 s</time>",
                "<time datetime=\"PT30S\">30 s</time>",
                "step-altered times-do-not-add-up"
            },
            {
                "the round of a step changed",
                "session-1.html",
                "A hold, left leg set 2 of 2",
                "A hold, left leg set 1 of 2",
                "step-altered"
            },
            {
                "the weeks of a version removed",
                "session-1.html",
                "<p>Week 2: do The brace instead.</p>",
                "",
                "plan-words-altered"
            },
            {
                "another version named",
                "exercise-sway.html",
                "do The brace instead",
                "do The lean instead",
                "plan-words-altered"
            },
            {
                "a version's week changed",
                "exercise-brace.html",
                "Week 1: do The sway instead.",
                "Week 2: do The sway instead.",
                "plan-words-altered"
            },
            { "a condition for moving on removed", "session-1.html", "<p>no pain for a week</p>", "", "plan-words-altered" },
            {
                "a condition for moving on softened",
                "exercise-nod.html",
                "no pain for a week",
                "little pain for a week",
                "plan-words-altered"
            },
            {
                "a condition for moving on hidden",
                "session-1.html",
                "<p>no pain for a week</p>",
                "<p hidden>no pain for a week</p>",
                "plan-words-altered"
            },
            { "the condition of a stage removed", "weeks.html", "<p>the knee goes past the toes</p>", "", "plan-words-altered" },
            {
                "the stage of a condition changed",
                "weeks.html",
                "<h2>Ready to move on from ",
                "<h2>Go back from ",
                "plan-words-altered"
            },
            {
                "a session to choose as one of the week",
                "weeks.html",
                "<p>Session 1: Monday, ",
                "<p>Away: Monday, ",
                "plan-words-altered"
            },
            {
                "the total of a session to choose changed",
                "session-2.html",
                "<time datetime=\"PT17S\">17 s</time>",
                "<time datetime=\"PT71S\">1 min 11 s</time>",
                "times-do-not-add-up"
            },
            {
                "a step of the short version removed",
                "session-3.html",
                "<li>A hold set 2 of 2 <time datetime=\"PT6S\">6 s</time></li>",
                "",
                "times-do-not-add-up"
            },
            {
                "a sign without its title on the page of a session to choose",
                "session-2.html",
                "<h3>A sharp stab</h3>",
                "",
                "caution-altered"
            },
            {
                "who must leave it out missing on the short version",
                "session-3.html",
                "<h3>Leave out with:</h3>",
                "",
                "page-without-cautions"
            },
            {
                "the weeks of a session to choose removed",
                "session-2.html",
                "<h2>Weeks 1 and 2</h2>",
                "<h2>At any time</h2>",
                "week-missing"
            },
            {
                "the picture of the short version under another name",
                "weeks.html",
                "aria-label=\"Session 1, short, Weeks 1 and 2",
                "aria-label=\"Session 1, Weeks 1 and 2",
                "bar-drawn-wrong"
            },
            {
                "the picture of a session to choose removed",
                "weeks.html",
                "aria-label=\"Away, ",
                "aria-label=\"",
                "bar-drawn-wrong"
            },
        };

    [Fact]
    public void As_it_is_made_nothing_is_found()
    {
        Assert.Equal(["Session 1", "Away", "Session 1, short"], Plan.Sessions.Select(s => s.Name));
        Assert.Empty(RuleBook.Audit(Plan, Site, []).Select(f => $"{f.At} {f.Rule} {f.Message}"));
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void What_is_broken_is_found_on_its_page_and_by_the_right_rules(
        string kind,
        string path,
        string said,
        string instead,
        string rules
    )
    {
        var page = Site.Pages.Single(p => p.Path == path);
        Assert.True(page.Html.Contains(said, StringComparison.Ordinal), $"{kind}: '{said}' is not on\n{page.Html}");
        var broken = new Site(
            Site.Client,
            Site.Pages.Select(p =>
                p.Path == path ? p with { Html = p.Html.Replace(said, instead, StringComparison.Ordinal) } : p
            ),
            Site.Assets
        );
        var found = RuleBook.Audit(Plan, broken, []).ToArray();
        Assert.True(
            rules.Split(' ').All(rule => found.Any(f => f.Rule.Text == rule))
                && found.Select(f => f.Rule.Text).Except(rules.Split(' ')).All(PlantedFault.ClosedLists.Contains),
            $"{kind}: {Example.Written(found.ToSeries())}"
        );
        Assert.All(found, f => Assert.Equal(path, f.At.File));
    }
}
