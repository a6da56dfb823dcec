using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class CautionAlteredTests
{
    private const string Page = "session-1.html";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("a letter of the text", "leave it out for", "leave in out for"),
        Plant("a letter of the title", "<h3>Sharp pain</h3>", "<h3>Sharp rain</h3>"),
        Plant("a capital", "<p>Stop and leave", "<p>stop and leave"),
        Plant("a word more", "leave it out for today.", "leave it out for today, perhaps."),
        Plant(
            "a sentence more in front",
            "<p>Stop and leave it out for today.</p>",
            "<p>Or not:</p><p>Stop and leave it out for today.</p>"
        ),
        Plant("text removed", "<p>Stop and leave it out for today.</p>\n", ""),
        Plant("title removed", "<h3>Sharp pain</h3>\n", ""),
        Plant(
            "text and title in other order",
            "<h3>Sharp pain</h3>\n<p>Stop and leave it out for today.</p>",
            "<p>Stop and leave it out for today.</p><h3>Sharp pain</h3>"
        ),
        Plant("title and text in one line", "<h3>Sharp pain</h3>\n<p>Stop", "<p><b>Sharp pain</b> Stop", "page-without-cautions"),
        Plant("a stop sign as a thing to feel", "<h2>Stop at once</h2>", "<h2>What you may feel</h2>"),
        Plant("kind swapped with the next", "<h2>Ease off</h2>", "<h2>Take care</h2>"),
        Plant("kind removed", "<h2>Take care</h2>\n", ""),
        Plant("the name of the kind in other words", "<h2>Stop at once</h2>", "<h2>Stop</h2>"),
        Plant(
            "an exercise removed",
            "<p>Goes with: Wall calf stretch, Calf press</p>\n<h2>Ease off</h2>",
            "<p>Goes with: Wall calf stretch</p>\n<h2>Ease off</h2>"
        ),
        Plant("all exercises removed", "<p>Goes with: Wall calf stretch</p>\n", ""),
        Plant(
            "a condition removed from the note",
            "Leave this out if you have: an ankle injury in the last 12 weeks; an operation in the last 12 weeks;",
            "Leave this out if you have: an injury;"
        ),
        Plant(
            "a sentence removed from the note",
            "<p>Ask a doctor before you do this, and start only with their leave, if you have: raised blood pressure; "
                + "raised pressure in an eye, or trouble with the retina; a hernia.</p>\n",
            ""
        ),
        Plant(
            "the note turned round",
            "<p>Leave this out if you have",
            "<p>Do not leave this out if you have",
            "page-without-cautions"
        ),
        Again("a letter of the text, where it is repeated", "Stop at once", "Stop and leave in out for today."),
        Again("the kind, where it is repeated", "Ease off", "Stop and leave it out for today."),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Again("repeated where its exercise begins, without naming it", "Stop at once", "Stop and leave it out for today.") with
        {
            Rules = "",
        },
        Plant("other elements", "<h3>Sharp pain</h3>", "<p><strong>Sharp</strong> <i>pain</i></p>", ""),
        Plant("other spaces", "leave it out for today", "leave it\n\t out&nbsp;for <br> today", ""),
        Plant("letters written as numbers", "Sharp pain", "&#83;harp &#x70;ain", ""),
        Plant(
            "the caution a second time, whole",
            "<h2>Ease off</h2>",
            "<h3>Sharp pain</h3>\n<p>Stop and leave it out for today.</p>\n<p>Goes with: Wall calf stretch, Calf "
                + "press</p><h2>Ease off</h2>",
            ""
        ),
        Plant(
            "the exercises in other order",
            "Goes with: Wall calf stretch, Calf press",
            "Goes with: Calf press, Wall calf stretch",
            ""
        ),
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_however_little_is_other(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Again(string kind, string heading, string text) =>
        Plant(kind, "<p>Stand as for", $"<h3>{heading}</h3><p>Sharp pain</p><p>{text}</p><p>Stand as for");

    private static PlantedFault Plant(string kind, string said, string instead, string rules = "caution-altered") =>
        new(kind, Page, said, instead, rules);
}
