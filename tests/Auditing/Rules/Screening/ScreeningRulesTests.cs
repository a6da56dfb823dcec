namespace Gradus.Tests.Auditing;

/// <summary>How often the rules of screening speak: of each thing once, and of none less.</summary>
public sealed class ScreeningRulesTests
{
    private static readonly Edit[] AskedAgain =
    [
        Edit.Of("clients/bram/client.yaml", ["- answered: 2026-11-21", "+ answered: 2026-12-06"]),
        Edit.Of("clients/bram/answers.yaml", ["- answered: 2026-11-21", "+ answered: 2026-12-06"]),
    ];

    [Fact]
    public void What_was_worse_twice_and_nobody_asked_about_is_told_once_by_its_last_day() =>
        Assert.Equal(
            ["pain-came-back clients/bram/log.csv:3:1"],
            Found(
                Edit.Of(
                    "clients/bram/log.csv",
                    [
                        "+ date,start,session,week,edition,pain-before,pain-during,pain-morning",
                        "+ 2026-12-01,18:05,1,1,1,0,2 left ankle,4 left ankle",
                        "+ 2026-12-05,18:05,1,1,1,0,2 left ankle,4 left ankle",
                    ]
                )
            )
        );

    [Fact]
    public void What_stopped_three_times_is_told_once() =>
        Assert.Equal(
            ["pain-came-back clients/bram/programme.md:9:14"],
            Found([
                Edit.Of(
                    "clients/bram/log.csv",
                    [
                        "+ date,start,session,week,edition,stopped,stopped-for,pain-during",
                        "+ 2026-11-23,18:05,1,1,1,yes,sharp,4 left ankle",
                        "+ 2026-11-30,18:05,1,1,1,yes,sharp,4 left ankle",
                        "+ 2026-12-03,18:05,1,1,1,yes,sharp,4 left ankle",
                    ]
                ),
                .. AskedAgain,
            ])
        );

    /// <summary>The short version is no second use.</summary>
    [Fact]
    public void A_use_that_stays_in_the_short_version_breaks_a_restriction_once() =>
        Assert.DoesNotContain(
            "Nor do",
            Assert
                .Single(
                    Trial.Of([
                        Edit.Of(
                            "clients/tess/client.yaml",
                            [
                                "- stance: right",
                                "+ stance: right",
                                "+ restrictions:",
                                "+   - by: her doctor",
                                "+     on: 2026-11-23",
                                "+     until: 2027-03-31",
                                "+     movement: ankle dorsiflexion",
                                "+     limit: hold at most 20 s",
                            ]
                        ),
                        Edit.Of(
                            "clients/tess/programme.md",
                            ["- - use: wall-calf-stretch", "+ - use: wall-calf-stretch", "+   keep-when-short: yes"]
                        ),
                    ])
                )
                .Sentence,
            StringComparison.Ordinal
        );

    /// <summary>"Not asked is not no", of each question.</summary>
    [Fact]
    public void Each_of_two_questions_that_nobody_asked_is_named() =>
        Assert.Equal(
            ["condition-not-asked clients/tess/programme.md:9:14", "condition-not-asked clients/tess/programme.md:14:14"],
            Found(
                Edit.Of(
                    "clients/tess/client.yaml",
                    [
                        "- answers:",
                        "-   ankle-injury: no",
                        "-   raised-blood-pressure: yes",
                        "- clearances:",
                        "-   - condition: raised-blood-pressure",
                        "-     by: her general practice",
                        "-     on: 2026-11-16",
                        "-     until: 2027-11-15",
                        "-     limit: effort at most 60 %",
                    ]
                )
            )
        );

    /// <summary>Where what is done matters with a yes, a clearance is asked for, and that is an effect: the stretch goes to the
    /// end of a joint (floor.yaml), the press does not.</summary>
    [Fact]
    public void A_yes_that_matters_for_one_use_has_an_effect() =>
        Assert.Equal(
            ["clearance-missing clients/tess/programme.md:9:14"],
            Found(Edit.Of("clients/tess/answers.yaml", ["- back-pain-with-leg-signs: no", "+ back-pain-with-leg-signs: yes"]))
        );

    /// <summary>Of all leaves the one that ends too early is named.</summary>
    [Fact]
    public void The_leave_that_ends_too_early_is_the_one_that_is_named() =>
        Assert.Equal(
            ["edition-outlives-clearance clients/tess/client.yaml:17:5"],
            Found(
                Edit.Of(
                    "clients/tess/client.yaml",
                    [
                        "- until: 2027-11-15",
                        "- limit: effort at most 60 %",
                        "+ until: 2026-12-16",
                        "+ limit: effort at most 60 %",
                        "- hour: \"18:30\"",
                        "+   - condition: raised-blood-pressure",
                        "+     by: her general practice",
                        "+     on: 2026-11-17",
                        "+     until: 2026-12-10",
                        "+   - condition: ankle-injury",
                        "+     by: her general practice",
                        "+     on: 2026-11-16",
                        "+     until: 2026-12-16",
                        "+ hour: \"18:30\"",
                    ]
                ),
                Edit.Of("clients/tess/programme.md", ["- - use: calf-press", "+ - use: calf-press", "+   until-week: 1"])
            )
        );

    private static string[] Found(params Edit[] edits) => [.. Trial.Of([.. edits]).Select(f => $"{f.Rule} {f.At}")];
}
