using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What a coach is told of a programme that several follow. Where one of them must not do a use, the remedy is the
/// client's own, ready to be pasted; and what one does otherwise makes nothing wrong that is right for the others. Tess has
/// raised blood pressure, and a leave for efforts up to 60 %.</summary>
public sealed class SharedProgrammeRulesTests
{
    private const StringComparison Exact = StringComparison.Ordinal;
    private const string Press = "2 x press 10 s at 50%";

    /// <summary>So that nothing hard or loaded may be done, and nothing else serves.</summary>
    private static readonly Edit Forbids = Edit.Of(
        "conditions.yaml",
        ["- where: whole body", "+ where: whole body", "+ not-with-for: { stages: [strengthen] }"]
    );

    [Fact]
    public void What_must_not_be_done_is_left_out() =>
        Assert.EndsWith(
            " Others follow this programme: write it under 'differences' in clients/tess/programme.md, as "
                + "- { leave-out: press, because: \"...\" }",
            Help([.. Shared("        as: press\n"), Forbids])
        );

    [Fact]
    public void A_use_without_a_name_of_its_own_is_called_by_its_exercise() =>
        Assert.EndsWith(" as - { leave-out: calf-press, because: \"...\" }", Help([.. Shared(""), Forbids]));

    [Fact]
    public void What_is_too_much_has_another_dose() =>
        Assert.EndsWith(
            " as - { change: press, by-week: { 1: ... }, because: \"...\" }",
            Help(Shared("        as: press\n", Press.Replace("50", "65", StringComparison.Ordinal)))
        );

    /// <summary>The calf push serves as well, and nothing rules it out. A week that is over stays as it was asked: what is
    /// done in place of a use from now on stands beside it. Today is 7 December: week 1 to its last day, or week 2, or all is
    /// over.</summary>
    [Theory]
    [InlineData("2026-12-07", " as - { instead: calf-press, use: calf-push, because: \"...\" }")]
    [InlineData("2026-12-01", " as - { instead: calf-press, use: calf-push, because: \"...\" }")]
    [InlineData("2026-11-16", " as - { instead: calf-press, use: calf-push, because: \"...\" }")]
    [InlineData(
        "2026-11-30",
        " as - { leave-out: calf-press, because: \"...\" } and - { add: calf-push, after: wall-calf-stretch, from-week: 2, "
            + "because: \"...\" }"
    )]
    public void What_would_serve_takes_its_place_from_the_week_on_that_it_is(string start, string end) =>
        Assert.EndsWith(end, Help([.. Shared("", start: start), .. PushServes()]), Exact);

    [Fact]
    public void What_is_alone_in_its_session_has_nothing_to_stand_beside() =>
        Assert.EndsWith(
            " as - { instead: calf-press, use: wall-calf-stretch, because: \"...\" }",
            Help([
                .. Shared("", start: "2026-11-30", differences: ["{ leave-out: wall-calf-stretch, because: x }"]),
                .. PushServes(),
            ]),
            Exact
        );

    private static Edit[] PushServes() =>
        [
            Edit.Of(
                "exercises/calf-push.md",
                Lines(
                        LittlePractice
                            .Files.Single(f => f.Key == "exercises/calf-press.md")
                            .Value.Replace("title: Calf press", "title: Calf push", Exact)
                    )
                    .Select(l => "+ " + l)
            ),
            Edit.Of("exercises/calf-press.md", ["- not-with: [ankle-injury]", "+ not-with: [raised-blood-pressure]"]),
        ];

    [Fact]
    public void What_is_first_in_its_session_has_what_takes_its_place_before_the_next()
    {
        var stretch = LittlePractice.Files.Single(f => f.Key == "exercises/wall-calf-stretch.md").Value;
        Edit[] other =
        [
            Edit.Of(
                "exercises/calf-hang.md",
                Lines(stretch.Replace("title: Wall calf stretch", "title: Calf hang", Exact)).Select(l => "+ " + l)
            ),
            Edit.Of(
                "exercises/wall-calf-stretch.md",
                [
                    "- not-with: [ankle-injury, recent-surgery, recent-injury, very-mobile-joints]",
                    "+ not-with: [raised-blood-pressure]",
                ]
            ),
        ];
        Assert.EndsWith(
            " as - { leave-out: wall-calf-stretch, because: \"...\" } and - { add: calf-hang, before: calf-press, from-week: 2, "
                + "because: \"...\" }",
            Help([.. Shared("", start: "2026-11-30"), .. other]),
            Exact
        );
    }

    /// <summary>Nothing is taken out of what is shared that the client's own difference brought in.</summary>
    [Fact]
    public void What_a_difference_brings_in_is_not_told_as_the_others() =>
        Assert.DoesNotContain(
            "Others",
            Help([
                .. Shared(
                    "",
                    differences:
                    [
                        "{ instead: wall-calf-stretch, use: calf-press, because: x }",
                        "{ leave-out: calf-press, because: x }",
                    ]
                ),
                Forbids,
            ]),
            Exact
        );

    [Fact]
    public void In_a_programme_of_ones_own_nothing_is_said_of_others() => Assert.DoesNotContain("Others", Help([Forbids]));

    /// <summary>Of the stretch a line is shared for week 2.</summary>
    [Theory]
    [InlineData("{ leave-out: wall-calf-stretch, from-week: 2, because: x }", null)]
    [InlineData(
        "{ leave-out: wall-calf-stretch, from-week: 2, because: x }",
        "{ change: calf-press, by-week: { 2: 2 x press 8 s at 40% }, from-week: 2, because: x }"
    )]
    public void A_line_that_this_client_alone_no_longer_does_is_not_told(string one, string? another) =>
        Assert.Empty(OutOfUse("", [one, .. another is null ? [] : (string[])[another]]));

    /// <summary>A line that nobody does, and a client whose difference has nothing to do with it.</summary>
    [Fact]
    public void One_that_nobody_does_is_told_whatever_the_client_does_otherwise() =>
        Assert.Single(OutOfUse("        until-week: 1\n", ["{ change: wall-calf-stretch, side: front leg, because: x }"]));

    private static Finding[] OutOfUse(string line, string[] differences) =>
        [
            .. Trial
                .Of([.. Shared("", stretch: line, differences: differences)])
                .Where(f => f.Rule.Text == "line-out-of-use" || f.Level == Level.Error),
        ];

    private static string Help(params Edit[] edits) =>
        Assert
            .Single(Trial.Of([.. edits]), f => f.Rule.Text == "contraindicated-exercise" && f.Client == new ClientId("tess"))
            .Help;

    /// <summary>Tess's programme as one that others may follow.</summary>
    /// <param name="name">The line that names the use of the press.</param>
    /// <param name="stretch">A line more of the use before it.</param>
    private static Edit[] Shared(
        string name,
        string press = Press,
        string stretch = "",
        string start = "2026-12-07",
        params string[] differences
    )
    {
        var own = LittlePractice.Files.Single(f => f.Key == "clients/tess/programme.md").Value;
        var shared = own.Replace("start: 2026-12-07\n", "", StringComparison.Ordinal)
            .Replace("- use: calf-press\n", "- use: calf-press\n" + name, StringComparison.Ordinal)
            .Replace("- use: wall-calf-stretch\n", "- use: wall-calf-stretch\n" + stretch, StringComparison.Ordinal)
            .Replace(Press, press, StringComparison.Ordinal);
        return
        [
            Edit.Of("programmes/lunge.md", Lines(shared).Select(l => "+ " + l)),
            Edit.Of(
                "clients/tess/programme.md",
                [
                    .. Lines(own).Select(l => "- " + l),
                    .. (string[])
                        [
                            "+ ---",
                            "+ from: lunge",
                            $"+ start: {start}",
                            .. differences.Length > 0 ? ["+ differences:"] : (string[])[],
                        ],
                    .. differences.Select(d => "+   - " + d),
                    .. (string[])["+ ---", "+ Tess, go on."],
                ]
            ),
        ];
    }

    private static string[] Lines(string text) => text.TrimEnd('\n').Split('\n');
}
