namespace Gradus.Tests.Auditing;

/// <summary>Seven stop signs are common practice, without a source: TooManyCautions.md.</summary>
public sealed class TooManyCautionsTests
{
    private static readonly string[] Signs = ["numb", "cold", "snap", "giving-way", "hot", "dizzy", "breathless"];

    /// <summary>What is left out of a session brings no sign that the whole one has not: once is enough.</summary>
    [Fact]
    public void The_short_version_of_a_session_is_not_counted_beside_it() =>
        Assert.Equal(
            ["too-many-cautions clients/tess/programme.md:6:5"],
            Found(
                Signs,
                Edit.Of("clients/tess/programme.md", ["- - use: calf-press", "+ - use: calf-press", "+   keep-when-short: yes"])
            )
        );

    /// <summary>Nor where it has fewer than the whole, and still too many.</summary>
    [Fact]
    public void The_short_version_is_not_counted_where_it_has_fewer() =>
        Assert.Single(
            Found(
                Signs,
                Edit.Of("clients/tess/programme.md", ["- - use: calf-press", "+ - use: calf-press", "+   keep-when-short: yes"]),
                Edit.Of("cautions/torn.md", ["+ ---", "+ title: Torn", "+ kind: stop", "+ ---", "+ Go."]),
                Edit.Of(
                    "exercises/wall-calf-stretch.md",
                    ["- signs: [sharp-pain, pinch, calf-pull]", "+ signs: [sharp-pain, pinch, calf-pull, torn]"]
                )
            )
        );

    /// <summary>What it is normal to feel is no sign to stop for.</summary>
    [Fact]
    public void Only_signs_to_stop_for_are_counted() => Assert.Empty(Found(Signs, expected: 1));

    private static string[] Found(string[] signs, params Edit[] edits) => Found(signs, 0, edits);

    /// <param name="expected">How many of the signs are normal to feel.</param>
    private static string[] Found(string[] signs, int expected, params Edit[] edits) =>
        [
            .. Trial
                .Of([
                    .. signs.Select(
                        (sign, i) =>
                            Edit.Of(
                                $"cautions/{sign}.md",
                                ["+ ---", $"+ title: {sign}", $"+ kind: {(i < expected ? "expect" : "stop")}", "+ ---", "+ Go."]
                            )
                    ),
                    Edit.Of(
                        "exercises/calf-press.md",
                        [
                            "- signs: [sharp-pain, keep-breathing, calf-pull]",
                            $"+ signs: [sharp-pain, keep-breathing, calf-pull, {string.Join(", ", signs)}]",
                        ]
                    ),
                    .. edits,
                ])
                .Select(f => $"{f.Rule} {f.At}"),
        ];
}
