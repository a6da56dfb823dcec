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
            "<h3>Sharp pain</h3>\n<p>A, B</p>\n<p>Stop and leave it out for today.</p>",
            "<p>A, B</p><p>Stop and leave it out for today.</p><h3>Sharp pain</h3>"
        ),
        Plant("title and text in one line", "<h3>Sharp pain</h3>\n<p>A, B</p>\n<p>Stop", "<p><b>Sharp pain</b> A, B</p><p>Stop"),
        Plant("a stop sign as a thing to feel", "<h2>Stop at once</h2>", "<h2>What you may feel</h2>"),
        Plant("kind swapped with the next", "<h2>Ease off</h2>", "<h2>Take care</h2>"),
        Plant("kind removed", "<h2>Take care</h2>\n", ""),
        Plant("the name of the kind in other words", "<h2>Stop at once</h2>", "<h2>Stop</h2>"),
        Plant("an exercise removed", "<h3>Sharp pain</h3>\n<p>A, B</p>", "<h3>Sharp pain</h3>\n<p>A</p>"),
        Plant("all exercises removed", "<p>A</p>\n", ""),
        Plant(
            "an exercise removed from a note",
            "An ankle injury in the last 12 weeks (A, B)",
            "An ankle injury in the last 12 weeks (B)"
        ),
        Plant("a condition removed", "<p>A hernia (B)</p>\n", ""),
        Plant("a note turned round", "<h3>Leave out with:", "<h3>Never leave out with:", "page-without-cautions"),
        Plant("a note in which to leave out became to ask", "<h3>Leave out with:", "<h3>Ask with:", "page-without-cautions"),
        Plant("another condition", "<p>A hernia (B)", "<p>A hernia, long ago (B)"),
        Plant("the client's answer turned round", "<p>Your answer: Yes.</p>", "<p>Your answer: No.</p>"),
        Plant("the client's answer removed", "<p>Your answer: Yes.</p>\n", ""),
        Plant("a clearance that lasts longer", "cleared until 15 November 2027", "cleared until 15 November 2028"),
        Plant("the limit of a clearance changed", "effort up to 60 per cent", "effort up to 90 per cent"),
        Plant("the limit of a clearance removed", ": effort up to 60 per cent.", "."),
        Plant("what was cleared removed", "Applies to: B</p>\n<h3>Leave out", "Applies to: C</p>\n<h3>Leave out"),
        Plant("another day of the answers", "Asked on 20 November 2026.", "Asked on 20 November 2025."),
        Plant("nobody to tell", "tell Ottoline Marsh before you train.</p>", "tell somebody.</p>"),
        Plant("a bound of the pain rule", "Up to 2: go on", "Up to 7: go on"),
        Plant(
            "a sentence removed from the pain rule",
            "<p>Above 5, or sharp pain of any strength: stop, and tell Ottoline Marsh.</p>\n",
            ""
        ),
        Plant(
            "the next morning removed",
            "<p>If it is worse the next morning",
            "<p hidden>If it is worse the next morning",
            "caution-hidden"
        ),
        Again("a letter of the text, where it is repeated", "Stop at once", "A, B", "Stop and leave in out for today."),
        Again("the kind, where it is repeated", "Ease off", "A, B", "Stop and leave it out for today."),
        Again("its exercises, where it is repeated", "Stop at once", "A", "Stop and leave it out for today."),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Again("repeated where its exercise begins", "Stop at once", "A, B", "Stop and leave it out for today.") with
        {
            Rules = "",
        },
        Plant("other elements", "<h3>Sharp pain</h3>", "<p><strong>Sharp</strong> <i>pain</i></p>", ""),
        Plant("other spaces", "leave it out for today", "leave it\n\t out&nbsp;for <br> today", ""),
        Plant("letters written as numbers", "Sharp pain", "&#83;harp &#x70;ain", ""),
        Plant(
            "the caution a second time, whole",
            "<h2>Ease off</h2>",
            "<h3>Sharp pain</h3>\n<p>A, B</p>\n<p>Stop and leave it out for today.</p><h2>Ease off</h2>",
            ""
        ),
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_however_little_is_other(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Again(string kind, string heading, string where, string text) =>
        Plant(kind, "<p>Stand as for", $"<h3>{heading}</h3><p>Sharp pain</p><p>{where}</p><p>{text}</p><p>Stand as for");

    private static PlantedFault Plant(string kind, string said, string instead, string rules = "caution-altered") =>
        new(kind, Page, said, instead, rules);
}
