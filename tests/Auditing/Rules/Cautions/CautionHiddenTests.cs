using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class CautionHiddenTests
{
    private const string Page = "session-1.html";
    private const string Title = "<h3>Sharp pain</h3>";
    private const string Body = "<p>Stop and leave it out for today.</p>";
    private const string Whole = Title + "\n<p>A, B</p>\n" + Body;

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
            Whole.Replace("<p>A, B", "<p hidden>A, B", StringComparison.Ordinal),
            "caution-hidden"
        ),
        new("all of it hidden", Page, Whole, $"<div hidden>{Whole}</div>", "caution-hidden"),
        new("an ancestor hidden", Page, "<section class=\"cautions\">", "<section class=\"cautions\" hidden>", "caution-hidden"),
        new("a condition hidden", Page, "<p>A hernia (B)</p>", "<p hidden>A hernia (B)</p>", "caution-hidden"),
        new("a note hidden", Page, "<h3>Leave out with:</h3>", "<h3 hidden>Leave out with:</h3>", "caution-hidden"),
        new("a sentence of a note hidden", Page, "<p>You have been cleared", "<p hidden>You have been cleared", "caution-hidden"),
        new("the day of the answers hidden", Page, "<p>Asked on", "<p hidden>Asked on", "caution-hidden"),
        new("the pain rule hidden", Page, "<h2>Pain from 0 to 10</h2>", "<h2 hidden>Pain from 0 to 10</h2>", "caution-hidden"),
        new("details", Page, Whole, $"<details><summary>Signs</summary>{Whole}</details>", "caution-hidden"),
        new(
            "details, as bare text",
            Page,
            Whole,
            "<details><summary>Signs</summary>Sharp pain<p></p>A, B<p>Stop and leave it out for today.</p></details>",
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
        Placed("on-screen"),
        Placed("on-paper"),
        Placed("by-the-second"),
        Placed("skip"),
        Placed("help choose"),
        new("in a place that print leaves out", Page, Whole, $"<nav>{Whole}</nav>", "caution-hidden"),
        new("on a button", Page, Whole, $"<button type=\"button\">{Whole}</button>", "caution-hidden"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
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

    private static PlantedFault Marked(string attribute) =>
        new(attribute, Page, Body, Body.Replace("<p>", $"<p {attribute}>", StringComparison.Ordinal), "caution-hidden");

    private static PlantedFault Placed(string place) =>
        new(place, Page, Body, Body.Replace("<p>", $"<p class=\"{place}\">", StringComparison.Ordinal), "caution-hidden");
}
