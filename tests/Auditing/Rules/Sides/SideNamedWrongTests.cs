using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class SideNamedWrongTests
{
    private const string Hold = "<li>A hold, left leg set 2 of 2 <time datetime=\"PT45S\">";
    private const string Ready =
        "<li>A get ready, left leg <time datetime=\"PT5S\">5 s</time></li>\n"
        + "<li>A hold, left leg set 1 of 2 <time datetime=\"PT45S\">";
    private const string Next = "<li>B next, left leg";
    private const string Role = "<p>Your rear leg is your left one.</p>";
    private const string Stance = "You said: the right.";

    public static readonly Series<PlantedFault> Faults =
    [
        Step("the side swapped", Hold, "left", "right"),
        Step("the side swapped, in capitals", Hold, "left", "RIGHT"),
        Step("a second side named", Hold, "left leg", "left leg, then your right leg"),
        Step("the other side as a detail", Hold, "set 2", "right hand on the wall, set 2"),
        Step("an arm for a leg", Hold, "left leg", "left arm"),
        Step("another side of the sport named", Hold, "left leg", "left leg, your front leg"),
        Step("the side swapped in getting ready", Ready, "A get ready, left", "A get ready, right"),
        Step("the side swapped in going on", Next, "left", "right"),
        Before("a role's side swapped", Role, "<p>Your rear leg is your right one.</p>"),
        Before("a role's sentence in other words", Role, "<p>Your rear leg: left.</p>"),
        Before("a role's sentence with a word more", Role, "<p>Your rear leg is your left one, mostly.</p>"),
        Before("a role's sentence removed", Role, ""),
        Before("a role's sentence hidden", Role, Role.Replace("<p>", "<p hidden>", StringComparison.Ordinal)),
        Before("both sides said of a role", Role, Role + "<p>Your rear leg is your right one.</p>"),
        Before("the hand swapped", Stance, "You said: the left."),
        Before("the hand removed", Stance, ""),
        Before("both hands said", Stance, Stance + " You said: the left."),
        Before("the hand denied", Stance, "No, that is wrong. You said: the right, not the left."),
        new(
            "the opposite said of a side on page one",
            "index.html",
            "<ul>",
            "<p>Mind that it is rear leg RIGHT.</p><ul>",
            "side-named-wrong"
        ),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Before("a role's sentence in another element", Role, "<div><b>Your rear leg</b> is your\n left one.</div>") with
        {
            Rules = "",
        },
        Before("the hand in a paragraph of its own", Stance, "</p><p>You said: the right.") with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_wherever_a_side_is_said(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Step(string kind, string item, string said, string instead) =>
        new(kind, "session-1.html", item, item.Replace(said, instead, StringComparison.Ordinal), "side-named-wrong");

    private static PlantedFault Before(string kind, string said, string instead) =>
        new(kind, "before-you-start.html", said, instead, "side-named-wrong");
}
