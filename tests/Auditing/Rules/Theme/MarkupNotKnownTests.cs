using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class MarkupNotKnownTests
{
    private const string Sign = "<p>Stop and leave it out for today.</p>";
    private const string Text = "Stop and leave it out for today.";

    /// <summary>Each keeps the caution from somebody, or changes what it says to somebody.</summary>
    public static TheoryData<string> Harms =>
        [
            $"<p inert>{Text}</p>",
            $"<p popover>{Text}</p>",
            $"<p hidden>{Text}</p>",
            $"<p hidden=\"until-found\">{Text}</p>",
            $"<p aria-hidden=\"true\">{Text}</p>",
            $"<p onclick=\"this.remove()\">{Text}</p>",
            $"<p role=\"presentation\">{Text}</p>",
            $"<p dir=\"rtl\">{Text}</p>",
            $"<bdo dir=\"rtl\">{Text}</bdo>",
            $"<p lang=\"ja\">{Text}</p>",
            $"<details open><summary>x</summary>{Text}</details>",
            $"<dialog>{Text}</dialog>",
            $"<template>{Text}</template>",
            $"<noscript>{Text}</noscript>",
            $"<marquee>{Text}</marquee>",
            $"<font size=\"1\" color=\"white\">{Text}</font>",
            $"<s>{Text}</s>",
            $"<del>{Text}</del>",
            $"<small>{Text}</small>",
            $"<sup>{Text}</sup>",
            $"<iframe srcdoc=\"{Text}\"></iframe>",
            $"<object>{Text}</object>",
            $"<canvas>{Text}</canvas>",
            $"<select><option>{Text}</option></select>",
            $"<textarea>{Text}</textarea>",
            $"<svg><text>{Text}</text></svg>",
            $"<svg><foreignObject><p>{Text}</p></foreignObject></svg>",
            $"<math><mtext>{Text}</mtext></math>",
            $"<p contenteditable>{Text}</p>",
            $"<p data-note-of-mine=\"x\">{Text}</p>",
            $"<slot>{Text}</slot>",
            $"<x-caution>{Text}</x-caution>",
            $"<p>{Text}</p><base href=\"https://example.org/\">",
            $"<p>{Text}</p><meta http-equiv=\"refresh\" content=\"0\">",
            $"<p>{Text}</p><form action=\"https://example.org/\"></form>",
        ];

    public static TheoryData<string> Harmless =>
        [
            $"<p class=\"x\" id=\"y\">{Text}</p>",
            $"<div><p><strong>{Text}</strong></p></div>",
            $"<aside><p>{Text}</p></aside>",
            $"<ul><li>{Text}</li></ul>",
            $"<p>{Text}<br></p><hr>",
        ];

    [Theory]
    [MemberData(nameof(Harms))]
    public void Whatever_is_not_on_the_list_is_refused(string html) => Assert.NotEmpty(Found(html));

    [Theory]
    [MemberData(nameof(Harmless))]
    public void What_is_on_the_list_may_stand_there(string html) => Assert.Empty(Found(html));

    private static IEnumerable<Finding> Found(string html) =>
        FinishedSite.Audit(FinishedSite.With("session-1.html", Sign, html)).Where(f => f.Rule.Text == "markup-not-known");
}
