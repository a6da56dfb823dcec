using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class ScriptOrStyleFromAuthorTests
{
    public static readonly Series<PlantedFault> Faults =
    [
        Body("<script>1</script>"),
        Body("<SCRIPT>1</SCRIPT>"),
        Body("<script src='look.css'></script>"),
        Body("<script type='module'>1</script>"),
        Body("<svg><script>1</script></svg>"),
        Body("<style>p { color: navy }</style>"),
        Body("<p style='color: navy'>x</p>") with
        {
            Rules = "style-not-known",
        },
        Body("<p STYLE='color: navy'>x</p>") with
        {
            Rules = "style-not-known",
        },
        Body("<p onclick='x()'>x</p>") with
        {
            Rules = "markup-not-known",
        },
        Body("<p OnMouseOver='x()'>x</p>") with
        {
            Rules = "markup-not-known",
        },
        Body("<svg onload='x()'></svg>") with
        {
            Rules = "markup-not-known",
        },
        Body("<details open ontoggle='x()'><summary>x</summary></details>") with
        {
            Rules = "markup-not-known",
        },
        Body("<noscript><style>p { color: navy }</style></noscript>"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Body("<script type='application/json'>{}</script>") with
        {
            Rules = "",
        },
        Body("<p>style='color: navy' onclick='x()'</p>") with
        {
            Rules = "",
        },
        Body("<svg fill='red'></svg>") with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_however_it_is_written_in(PlantedFault fault) => fault.MustBeFound();

    /// <summary>No hash lets it run, so it does nothing.</summary>
    private static PlantedFault Body(string html) =>
        new(
            html,
            "index.html",
            "</body>",
            html + "</body>",
            html.Contains("src=", StringComparison.Ordinal) || !Regex.IsMatch(html, "<(script|style)", RegexOptions.IgnoreCase)
                ? "script-or-style-from-author"
                : "policy-weak script-or-style-from-author"
        );
}
