using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class CautionHiddenTests
{
    private const string Page = "session-1.html";
    private const string Title = "<h3>Sharp pain</h3>";
    private const string Body = "<p>Stop and leave it out for today.</p>";
    private const string Whole = Title + "\n" + Body + "\n<p>Applies to: Wall calf stretch, Calf press</p>";

    public static readonly Series<PlantedFault> Faults =
    [
        Marked("hidden"),
        Marked("hidden=\"until-found\""),
        Marked("aria-hidden=\"true\""),
        Marked("ARIA-HIDDEN=\"TRUE\""),
        Marked("inert"),
        Marked("popover"),
        Marked("style=\"display:none\""),
        Marked("style=\"Display: NONE !important\""),
        Marked("style=\"color:navy;visibility:hidden\""),
        Marked("style=\"opacity:0\""),
        Marked("style=\"opacity:5%\""),
        Marked("style=\"position:absolute;left:-9999px\""),
        Marked("style=\"clip-path:inset(50%)\""),
        Marked("style=\"font-size:0\""),
        Marked("style=\"color:transparent\""),
        Marked("style=\"display:var(--shown)\""),
        new("its title hidden", Page, Title, "<h3 hidden>Sharp pain</h3>", "caution-hidden"),
        new("a word of it hidden", Page, Body, "<p>Stop and <span hidden>leave it</span> out for today.</p>", "caution-altered"),
        new(
            "the name of its kind hidden",
            Page,
            "<h2>Stop at once</h2>",
            "<h2><span hidden>Stop at once</span></h2>",
            "caution-hidden"
        ),
        new(
            "its exercises hidden",
            Page,
            Whole,
            Whole.Replace("<p>Applies", "<p hidden>Applies", StringComparison.Ordinal),
            "caution-hidden"
        ),
        new("all of it hidden", Page, Whole, $"<div hidden>{Whole}</div>", "caution-hidden"),
        new("an ancestor hidden", Page, "<section class=\"cautions\">", "<section class=\"cautions\" hidden>", "caution-hidden"),
        new("a note hidden", Page, "<h3>A hernia</h3>", "<h3 hidden>A hernia</h3>", "caution-hidden"),
        new("a sentence of a note hidden", Page, "<p>You have been cleared", "<p hidden>You have been cleared", "caution-hidden"),
        new("the day of the answers hidden", Page, "<p>Asked on", "<p hidden>Asked on", "caution-hidden"),
        new("the pain rule hidden", Page, "<h2>Pain from 0 to 10</h2>", "<h2 hidden>Pain from 0 to 10</h2>", "caution-hidden"),
        new("details", Page, Whole, $"<details><summary>Signs</summary>{Whole}</details>", "caution-hidden"),
        new(
            "details, as bare text",
            Page,
            Whole,
            "<details><summary>Signs</summary>Sharp pain<p></p>Stop and leave it out for today.<p>Applies to: Wall calf "
                + "stretch, Calf press</p></details>",
            "caution-hidden"
        ),
        new(
            "a second summary",
            Page,
            Whole,
            $"<details><summary>Signs</summary><summary>{Whole}</summary></details>",
            "caution-hidden"
        ),
        new("noscript", Page, Whole, $"<noscript>{Whole}</noscript>", "caution-hidden"),
        new("dialog", Page, Whole, $"<dialog>{Whole}</dialog>", "caution-hidden"),
        new("struck out", Page, Body, "<p><del>Stop and leave it out for today.</del></p>", "caution-hidden"),
        new("template", Page, Whole, $"<template>{Whole}</template>", "page-without-cautions"),
        new("a comment", Page, Whole, $"<!-- {Whole} -->", "page-without-cautions"),
        new("a list to choose from", Page, Whole, $"<datalist>{Whole}</datalist>", "page-without-cautions"),
        Styled("h3 { display: none }"),
        Styled("@media print { .cautions { display: none } }"),
        Styled("@media (max-width: 30rem) { .cautions { display: none } }"),
        Styled("@supports (display: grid) { .cautions { display: none } }"),
        Styled("@layer a { .cautions { display: none } }"),
        Styled("@container (width > 1px) { .cautions { display: none } }"),
        Styled("body { .cautions { display: none } }"),
        Styled("body { color: #111; & .cautions { display: none } }"),
        Styled("@media print { body { & h3 { display: none } } }"),
        Styled("h3, .x::before { display: none }"),
        Styled(".cautions:has(h3) { display: none }"),
        Styled(":is(section, .x):not(.y) { display: none }") with
        {
            Rules = "caution-hidden times-do-not-add-up",
        },
        Everything(":root { visibility: hidden }"),
        Everything("html { opacity: 0 }", "caution-hidden contrast-too-low"),
        Everything("* { display: none }"),
        Styled("input:checked ~ .cautions, .cautions:hover { display: none }"),
        Styled(".cautions:unheard-of { display: none }"),
        Styled("[class^=caut] { display: none }"),
        Styled(".\\63 autions { display: none }"),
        Styled("h3 { d\\69splay: none }"),
        Styled(".cautions { opacity: calc(0) }"),
        Unseen(".cautions { opacity: .05 }"),
        Styled(".cautions { height: 1px; overflow: hidden }"),
        Styled(".cautions { max-height: 6em; overflow: hidden }"),
        Styled(".cautions { font: 0/0 a }"),
        Styled(".cautions { font-size: 1px }"),
        Styled(".cautions { text-indent: -999em }"),
        Styled(".cautions { inset: 0 auto auto -9999px; position: fixed }"),
        Styled(".cautions { margin: 0 0 0 -9999px }"),
        Styled(".cautions { position: absolute; top: 9999px }"),
        Styled(".cautions { transform: translateX(-100vw) }"),
        Styled(".cautions { transform: scale(0) }"),
        Styled(".cautions { scale: 0 }"),
        Styled(".cautions { clip: rect(0 0 0 0); position: absolute }"),
        Unseen(".cautions { color: #0000 }"),
        Unseen(".cautions { color: rgb(0 0 0 / 0) }"),
        Unseen(".cautions { -webkit-text-fill-color: transparent }"),
        Styled(".cautions { filter: opacity(0) }"),
        Styled(".cautions { mask-image: linear-gradient(transparent, transparent) }"),
        Styled(".cautions { content-visibility: hidden }"),
        Styled(".cautions { text-decoration: line-through }"),
        Styled(".cautions { -webkit-line-clamp: 1 }"),
        Styled("@keyframes away { to { opacity: 0 } } .cautions { animation: away 1s forwards }"),
        new(
            "a style in a noscript",
            Page,
            "</head>",
            "<noscript><style>.cautions { display: none }</style></noscript></head>",
            "caution-hidden policy-weak script-or-style-from-author"
        ),
        new(
            "a style in the body",
            Page,
            "</body>",
            "<style>.cautions { display: none }</style></body>",
            "caution-hidden policy-weak script-or-style-from-author"
        ),
        new("a style as data", Page, "look.css", "data:text/css,.cautions{display:none}", "address-to-network target-too-small"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Silent(".cautions::before { display: none }"),
        Silent("h3:first-letter { font-size: 2em }"),
        Silent("nav, .skip { display: none }"),
        Silent(".cautions { width: 100%; max-width: 40rem; height: auto; opacity: 1; font-size: 90%; line-height: 1.2 }"),
        Silent(".cautions { margin: -1px -0.5rem; top: 0; left: 50% }"),
        Silent(".cautions { color: rgb(0 0 0 / 0.8); filter: none; clip-path: none; transform: none }"),
        Silent(".cautions { max-inline-size: 1em; overflow: auto }"),
        Silent("@page { margin: 0 } @font-face { font-family: a; src: local(a) }"),
        Silent("not a style at all {{{") with
        {
            Rules = "target-too-small",
        },
        new("details that are open", Page, Whole, $"<details open><summary>Signs</summary>{Whole}</details>", ""),
        new(
            "aria-hidden that says no",
            Page,
            Body,
            Body.Replace("<p>", "<p aria-hidden=\"false\">", StringComparison.Ordinal),
            ""
        ),
        new("an empty thing hidden among it", Page, Body, $"<span hidden></span>{Body}", ""),
        new("a caution hidden beside the one that is shown", Page, Whole, $"{Whole}<div hidden>{Whole}</div>", ""),
        new("something else hidden", Page, "<body>", "<body><p hidden>Hello</p>", ""),
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_however_it_is_hidden(PlantedFault fault) => fault.MustBeFound();

    [Fact]
    public void A_style_file_counts_for_every_page_whoever_asks_for_it()
    {
        var site = FinishedSite
            .With("look.css", "body {", "@import 'print.css'; body {")
            .And("print.css", "h3 { display: none }");
        Assert.Equal(
            ["before-you-start.html", "exercise-calf-press.html", "exercise-wall-calf-stretch.html", "session-1.html"],
            FinishedSite
                .Audit(site)
                .Where(f => f.Rule.Text == "caution-hidden")
                .Select(f => f.At.File)
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
    }

    private static PlantedFault Marked(string attribute) =>
        new(
            attribute,
            Page,
            Body,
            Body.Replace("<p>", $"<p {attribute}>", StringComparison.Ordinal),
            !attribute.StartsWith("style", StringComparison.Ordinal) ? "caution-hidden"
                : attribute.Contains("opacity", StringComparison.Ordinal)
                || attribute.Contains("transparent", StringComparison.Ordinal)
                    ? "caution-hidden contrast-too-low script-or-style-from-author"
                : "caution-hidden script-or-style-from-author"
        );

    private static PlantedFault Styled(string style) => new(style, "look.css", "body {", style + " body {", "caution-hidden");

    /// <summary>Steps, weeks and sides are hidden too, and count as not there.</summary>
    private static PlantedFault Everything(string style, string cautions = "caution-hidden") =>
        Styled(style) with
        {
            Rules =
                $"bar-drawn-wrong {cautions} good-until-missing plan-words-altered side-named-wrong stance-missing "
                + "times-do-not-add-up week-missing",
        };

    /// <summary>Letters that are there and cannot be seen.</summary>
    private static PlantedFault Unseen(string style) => Styled(style) with { Rules = "caution-hidden contrast-too-low" };

    private static PlantedFault Silent(string style) => Styled(style) with { Rules = "" };
}
