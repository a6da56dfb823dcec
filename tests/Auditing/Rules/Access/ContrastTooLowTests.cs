using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class ContrastTooLowTests
{
    private const string Dark = "@media (prefers-color-scheme: dark)";

    /// <summary>#767676 is the lightest grey on white that passes with 4.54, #777777 fails with 4.47; #949494 passes for large
    /// text, #959595 fails (computed with the formula of WCAG 2.2).</summary>
    public static readonly Series<PlantedFault> Faults =
    [
        Styled("h1 { color: #959595 }"),
        Styled(".cautions p { color: #777777 }"),
        Styled("body { color: #777 }"),
        Styled("* { color: rgb(119 119 119) }"),
        Styled("h1 { color: rgba(0, 0, 0, 40%) }"),
        Styled("h1 { color: #0006 }"),
        Styled("p { color: hsl(0 0% 47%) }"),
        Styled("p { color: hsl(0deg, 0%, 47%) }"),
        Styled("p { color: lightgray }"),
        Styled("p { color: GrayText }"),
        Styled("p { color: oklch(0.57 0 0) }"),
        Styled("p { color: color-mix(in srgb, #fff 47%, black) }"),
        Styled("p { color: color-mix(in srgb, black, white) }"),
        Styled("p { color: light-dark(#777, #000) }"),
        Styled("p { col\\6fr: #777 }"),
        Styled("p { color: #77\\37 }"),
        Styled("p { color: #777 !important; color: #000 }"),
        Styled("p { background: #666 }"),
        Styled("p { background: #fff; color: #fff }"),
        Styled("p { background: none no-repeat #666 }"),
        Styled("main, body { background-color: #555 }"),
        Styled("body { background: rgb(0 0 0 / 0.7) }"),
        Styled(":root { --a: #777 } p { color: var(--a) }"),
        Styled(":root { --a: var(--b); --b: #777 } p { color: var(--a, #000) }"),
        Styled("p { color: var(--missing, #777) }"),
        Styled(".cautions { --a: #777 } p { color: var(--a) }"),
        Styled(":root { --a: #000; --b: var(--a) } body { --a: #777; --b: var(--a) } p { color: var(--b) }"),
        Styled("p { color: #000 } .cautions p { color: #777 }"),
        Styled(".cautions p { color: #777 } p { color: #000 }"),
        Styled("p { color: #000 } p { color: #777 }"),
        Styled("p:not(.x) { color: #777 } p { color: #000 }"),
        Styled(":where(body) p { color: #777 }"),
        Styled(":is(body, .x) p { color: #777 } .cautions p, p { color: #000 }"),
        Styled("body { & p { color: #777 } }"),
        Styled("body { p { color: #777 } }"),
        Styled("@layer a, b; @layer b { p { color: #777 } } @layer a { p { color: #000 } }"),
        Styled("@layer a { p { color: #000 } } p { color: #777 }"),
        Styled("@layer a { p { color: #777 !important } } p { color: #000 }"),
        Styled("p + p { color: #777 }"),
        Styled("p:first-of-type { color: #777 }"),
        Styled("section > p { color: #777 }"),
        Styled("[class=cautions] p { color: #777 }"),
        Styled("a { color: #777 }"),
        Styled("a[href$=html] { color: #777 }"),
        Styled("@supports (color: red) { p { color: #777 } }"),
        Styled("@media screen and (min-width: 40rem) { p { color: #777 } }"),
        Styled("@media (max-width: 30rem) { p { color: #777 } }"),
        Styled("@media (width <= 30rem) { p { color: #777 } }"),
        Styled("@media not print { p { color: #777 } }"),
        Styled("@media (prefers-contrast: more) { p { color: #777 } }"),
        Styled("@media print, (prefers-reduced-motion: reduce) { p { color: #777 } }"),
        Styled(Dark + " { p { color: #777 } }"),
        Styled(Dark + " { body { background: #000 } }"),
        Styled(":root { color-scheme: light dark } p { color: #000 }"),
        Styled(":root { color-scheme: light dark } body { background: #fff }"),
        Styled(
            ":root { --g: #fff; --i: #000 } "
                + Dark
                + " { :root { --g: #111; --i: #444 } } body { background: var(--g); color: var(--i) } a { color: var(--i) }"
        ),
        Styled("p { opacity: 0.5 }"),
        Styled("body { opacity: 50% }"),
        Styled(".cautions { opacity: 0.5; background: #fff }"),
        Styled("p { -webkit-text-fill-color: #777 }"),
        Styled("body { -webkit-text-fill-color: #777 }"),
        Styled("p { color: currentColor; background: black }"),
        Styled("h1 { font-size: 23px; color: #777; font-weight: 400 }"),
        Styled("p { font-size: 24px; color: #959595 }"),
        Styled("h1 { font: 400 1.2rem serif; color: #777 }"),
        Styled("h1 { font-size: clamp(1rem, 8vw, 4rem); color: #777 }"),
        Styled("p::before { content: 'x'; color: #777 }"),
        Styled("p::after { content: counter(a); color: #777 }"),
        Styled("li::marker { color: #ccc }"),
        Styled("p::first-line { color: #777 }"),
        Styled("p { background: linear-gradient(#fff, #000) }"),
        Styled("p { background-image: url(look.css) }"),
        Styled("p { color: color(display-p3 1 1 1) }"),
        Styled("p { color: lab(50% 0 0) }"),
        Styled("p { background: linear-gradient(#fff, #fff) #fff; color: #000 }"),
        Body("<p hidden style='color: #777'>x</p>"),
        Body("<p style='color: #777'>x</p>"),
        Body("<label>x <input style='color: #777'></label>"),
        Body("<label>x <textarea style='background: #555'></textarea></label>"),
        Body("<button style='color: #fff'>x</button>"),
        Body("<button style='background: #555'>x</button>"),
        Body("<mark style='color: #ff0'>x</mark>"),
        Body("<b style='color: #777'>x</b>"),
    ];

    public static readonly Series<PlantedFault> Fine = new[]
    {
        "h1 { color: #949494 }",
        "p { color: #767676 }",
        "p { font-size: 24px; color: #949494 }",
        "p { font-size: 18.67px; font-weight: bold; color: #949494 }",
        "p { color: #777 } p { color: #000 }",
        "p { color: #777; color: #000 }",
        "p { color: #000 !important; color: #777 }",
        "p { color: #000 !important } body p { color: #777 }",
        "p { color: #777 } p.x, section > p, body p { color: #000 }",
        "@layer a { p { color: #777 } } p { color: #000 }",
        "@layer a, b; @layer b { p { color: #000 } } @layer a { p { color: #777 } }",
        "body { background: #000; color: #fff } a { color: #fff }",
        "@media print { p { color: #777 } }",
        "@media (prefers-color-scheme: dark) { body { background: #000; color: #fff } a { color: #8cf } }",
        "@media (forced-colors: active) { p { color: #777 } }",
        ":root { color-scheme: light dark }",
        ":root { color-scheme: light dark; --i: light-dark(#000, #fff) } p { color: var(--i) }",
        "p:hover { color: #777 }",
        "a:visited { color: #777 }",
        "a:focus-visible { color: #777 }",
        "p::before { content: ''; color: #777 }",
        "p::before { color: #777 }",
        ".nobody { color: #777 }",
        "@keyframes a { to { color: #777 } }",
        "p { background: rgb(0 0 0 / 10%) }",
        "p { opacity: 0.99 }",
        "p { border-color: #eee }",
        "p { background: linear-gradient(#fff, #000); background: #fff }",
        "p { color: var(--missing) }",
        ":root { --a: #000; --b: var(--a) } body { --a: #777 } p { color: var(--b) }",
        ":root { --a: var(--b); --b: var(--a) } p { color: var(--a) }",
        "p { color: #000; --color: #777 }",
        "/* p { color: #777 } */",
        "p { color: oklch(0.4 0.1 250) }",
        "::selection { color: #777 }",
        "section { background: #000; color: #fff } section > * { background: #fff; color: #000 }",
    }
        .Select(style => Styled(style) with { Rules = "" })
        .Concat([
            Body("<button disabled style='color: #777'>x</button>") with
            {
                Rules = "script-or-style-from-author",
            },
            Body("<p style='display: none; color: #777'>x</p>") with
            {
                Rules = "script-or-style-from-author",
            },
            Body("<p style='color: #767676'>x</p>") with
            {
                Rules = "script-or-style-from-author",
            },
            Body("<svg><text fill='#777'>x</text></svg>") with
            {
                Rules = "",
            },
        ])
        .ToSeries();

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_however_the_style_says_it(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Styled(string style) => new(style, "look.css", "body {", style + " body {", "contrast-too-low");

    private static PlantedFault Body(string html) =>
        new(html, "index.html", "</body>", html + "</body>", "contrast-too-low script-or-style-from-author");
}
