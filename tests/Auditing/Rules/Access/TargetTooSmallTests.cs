using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class TargetTooSmallTests
{
    public static readonly Series<PlantedFault> Faults =
    [
        Styled("a { padding: 0 !important }"),
        Styled("a { padding-block: 2px !important }"),
        Styled("a { padding-top: 0 !important; padding-bottom: 4px !important }"),
        Styled("a { line-height: 0.9; }"),
        Styled("a { font-size: 10px; padding: 0 !important; line-height: 2.3 }"),
        Styled("a { height: 20px !important; padding: 0 !important }"),
        Styled("a { block-size: 1rem; box-sizing: border-box }"),
        Styled("a { display: inline !important; padding: 0 !important; min-height: 44px }"),
        Styled("a { padding: 0 !important; min-block-size: 23.9px }"),
        Styled("a { width: 20px }"),
        Styled("a { max-inline-size: 1em }"),
        Styled("@media (max-width: 30rem) { a { padding: 0 !important } }"),
        Styled(":root { --p: 0 } a { padding: var(--p) !important }"),
        Styled("a { padding: 0 !important; font: 12px/1.5 serif }"),
        Button("min-block-size: 43px"),
        Button("min-block-size: 0; padding: 0.8em"),
        Button("min-block-size: 24px; font-size: 1rem"),
        Button("min-block-size: 2.7rem"),
        Button("block-size: 40px; min-block-size: 0"),
        Button("inline-size: 40px"),
        Body("<div role='button' style='min-block-size: 0'>x</div>"),
        Body("<input type='submit' style='min-height: 20px'>"),
        Body("<select aria-label='x' style='min-block-size: 0; padding: 0'></select>"),
        Body("<input aria-label='x' style='min-block-size: 0; font-size: 0.9rem; padding: 0'>"),
        Body("<input type='checkbox' aria-label='x' style='min-block-size: 0; height: 20px'>"),
        Body("<details open><summary style='min-block-size: 0'>x</summary>y</details>"),
        Body("<p><a href='index.html' style='padding: 0'>x</a> · <a href='index.html'>y</a></p>"),
        Body("<ul><li><a href='index.html' style='padding: 0'>x</a></li></ul>"),
    ];

    public static readonly Series<PlantedFault> Fine = new[]
    {
        Styled("a { padding: 0 !important; min-block-size: 24px }"),
        Styled("a { padding: 0 !important; line-height: 1.5 }"),
        Styled("a { padding: 0 !important; block-size: 10%; }"),
        Styled("a { padding: 0 !important; min-height: calc(10px + 1em) }"),
        Styled("a { padding: 0 !important; font-size: 20px }"),
        Styled("body { line-height: 2 } a { padding: 0 !important; display: inline !important }"),
        Styled("a { width: 50% }"),
        Styled("@media print { a { padding: 0 !important } }"),
        Styled("a { border: 3px solid; padding: 0 !important }"),
        Styled("a { height: 24px; padding: 0 !important }"),
        Styled("a { padding: 0 !important; min-height: 10px; min-block-size: 30px }"),
    }
        .Concat(
            new[]
            {
                Button("min-block-size: 44px"),
                Button("min-block-size: 0; padding: 1em; font-size: 1rem"),
                Button("min-block-size: 3rem"),
                Button("min-block-size: max(44px, 1em)"),
                Body("<button disabled style='min-block-size: 0'>x</button>"),
                Body("<p>Read <a href='index.html' style='padding: 0'>x</a> first.</p>"),
                Body("<p><b>Read</b> <a href='index.html' style='padding: 0'>x</a></p>"),
                Body("<label style='min-block-size: 0; padding: 0'><input type='checkbox'> x</label>"),
                Body("<textarea aria-label='x' style='padding: 0'></textarea>"),
                Body("<input type='checkbox' aria-label='x' style='min-block-size: 0'>"),
                Body("<label><input type='checkbox' style='min-block-size: 0; height: 12px'> x</label>"),
                Body("<input type='hidden' style='height: 1px'>"),
                Body("<a id='x' style='padding: 0'>x</a>"),
                Body("<a href='index.html' style='padding: 0'><img src='look.css' alt='x'></a>"),
                Body("<button style='display: none; min-block-size: 0'>x</button>"),
            }
        )
        .Select(f => f with { Rules = f.Rules.Replace("target-too-small", "", StringComparison.Ordinal).Trim() })
        .ToSeries();

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_whatever_makes_it_small(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Styled(string style) => new(style, "look.css", "body {", style + " body {", "target-too-small");

    private static PlantedFault Button(string style) => Body($"<button style='{style}'>x</button>");

    private static PlantedFault Body(string html) =>
        new(html, "index.html", "</body>", html + "</body>", "script-or-style-from-author target-too-small");
}
