using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class StanceMissingTests
{
    private const string Question = "<p>Which hand holds the weapon? You said: the right.</p>";
    private const string Means = "<p>Your weapon arm RIGHT, front leg RIGHT and rear leg LEFT.</p>";
    private const string Check = "<p>Is any of this wrong? Do not start: ask your coach first.</p>";
    private const string All = Question + "\n" + Means + "\n" + Check;
    private const string Both = "side-named-wrong stance-missing";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("the question with its answer removed", Question, ""),
        Plant("what follows removed", Means, ""),
        Plant("what to do if it is wrong removed", Check, ""),
        Plant("all of it removed", All, ""),
        Plant("the answer removed", " You said: the right.", ""),
        Plant("the question removed", "Which hand holds the weapon? ", ""),
        Plant("the answer turned round", "the right.", "the left."),
        Plant("a left turned into a right", "rear leg LEFT", "rear leg RIGHT") with
        {
            Rules = Both,
        },
        Plant("a right turned into a left", "weapon arm RIGHT", "weapon arm LEFT") with
        {
            Rules = Both,
        },
        Plant("all sides turned round", Means, Mirrored(Means)) with
        {
            Rules = Both,
        },
        Plant("a side in small letters", "rear leg LEFT", "rear leg left"),
        Plant("a role left out", ", front leg RIGHT", ""),
        Plant("two roles exchanged", "front leg RIGHT and rear leg LEFT", "rear leg RIGHT and front leg LEFT") with
        {
            Rules = Both,
        },
        Plant("all of it hidden", All, $"<div hidden>{All}</div>"),
        Plant("a word of it hidden", "Do not start", "Do <span hidden>not</span> start"),
        Plant("all of it only as a comment", All, $"<!-- {All} -->"),
        Plant("a denial before it in the same line", "<p>Your weapon", "<p>It is not so: Your weapon"),
        Plant("a word more", "ask your coach first.", "ask your coach first. Or after."),
        Plant("other words between", Means, "<p>Never mind what stands here.</p>" + Means),
        Plant("another order", Question + "\n" + Means, Means + "\n" + Question),
        Plant("a link to a session before it", Question, "<p><a href=\"session-1.html\">Begin</a></p>" + Question),
        Plant("a link to an exercise between", Check, "<p><a href=\"exercise-calf-press.html#top\"></a></p>" + Check) with
        {
            Rules = "label-missing link-broken-on-page stance-missing",
        },
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Plant("all of it in one paragraph", All, All.Replace("</p>\n<p>", " ", StringComparison.Ordinal)) with
        {
            Rules = "",
        },
        Plant("the question in a paragraph of its own", " You said", "</p><p>You said") with
        {
            Rules = "",
        },
        Plant("the side in an element of its own", "rear leg LEFT", "rear leg <strong>LEFT</strong>") with
        {
            Rules = "",
        },
        Plant(
            "a link to before-you-start before it",
            Question,
            "<p><a href=\"before-you-start.html\">First read this</a></p>" + Question
        ) with
        {
            Rules = "",
        },
        Plant(
            "the last sentence is itself a link to a session",
            Check,
            $"<p><a href=\"session-1.html\">{Check[3..^4]}</a></p>"
        ) with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> Everything => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(Everything))]
    public void It_is_found_on_page_one(PlantedFault fault) => fault.MustBeFound();

    /// <summary>A page may be cut off anywhere.</summary>
    [Theory]
    [InlineData(Means)]
    [InlineData(Check)]
    public void A_page_that_ends_before_all_is_said_is_found(string next)
    {
        var page = FinishedSite.Site.Pages.Single(p => p.Path == "index.html").Html;
        var cut = FinishedSite.With("index.html", page[page.IndexOf(next, StringComparison.Ordinal)..], "");
        Assert.Contains("stance-missing", FinishedSite.Audit(cut).Select(f => f.Rule.Text));
    }

    private static string Mirrored(string text) =>
        text.Replace("LEFT", "?", StringComparison.Ordinal)
            .Replace("RIGHT", "LEFT", StringComparison.Ordinal)
            .Replace("?", "RIGHT", StringComparison.Ordinal);

    private static PlantedFault Plant(string kind, string said, string instead) =>
        new(kind, "index.html", said, instead, "stance-missing");
}
