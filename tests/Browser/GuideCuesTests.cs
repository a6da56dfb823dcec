using System.Text.Json.Nodes;
using static Gradus.Tests.Browser.GuideScripts;

namespace Gradus.Tests.Browser;

/// <summary>Which sound when, how high the gauge stands, when to breathe in and out.</summary>
public sealed class GuideCuesTests
{
    private static readonly Piece[] Four =
    [
        new("get-ready", "a", "left", 5, []),
        new("hold", "a", "left", 30, []),
        new("switch", "a", "right", 4, []),
        new("hold", "a", "right", 5, []),
    ];

    [Theory]
    [InlineData(
        false,
        "0 rest left, 2000 count, 3000 count, 4000 count, 5000 work left, 32000 count, 33000 count, 34000 count, 35000 "
            + "switch right, 39000 work right, 41000 count, 42000 count, 43000 count, 44000 end"
    )]
    [InlineData(
        true,
        "0 rest left, 2000 count, 3000 count, 4000 count, 5000 work left, 32000 count, 33000 count, 34000 count, 35000 "
            + "switch right, 39000 end"
    )]
    public async Task Work_rest_a_change_of_sides_and_the_end_sound_each_their_own_way(bool wait, string sounds)
    {
        var heard = (
            await Ask<string[]>([
                new
                {
                    Kind = "sounds",
                    Steps = Four,
                    Wait = wait,
                },
            ])
        )[0];
        Assert.Equal(sounds, string.Join(", ", heard));
    }

    /// <summary>A level for each fifth of the hardest, or for two points of ten; each time that somebody asks for less it is one
    /// lower, and never none.</summary>
    [Theory]
    [InlineData(null, null, 0, 0)]
    [InlineData(1, null, 0, 1)]
    [InlineData(20, null, 0, 1)]
    [InlineData(21, null, 0, 2)]
    [InlineData(60, null, 0, 3)]
    [InlineData(80, null, 0, 4)]
    [InlineData(100, null, 0, 5)]
    [InlineData(null, 3, 0, 2)]
    [InlineData(null, 10, 0, 5)]
    [InlineData(80, null, 1, 3)]
    [InlineData(80, null, 9, 1)]
    [InlineData(null, null, 2, 0)]
    public async Task The_gauge_has_a_level_for_each_effort(int? percent, int? felt, int softer, int level) =>
        Assert.Equal(
            level,
            (
                await Ask<int>([
                    new
                    {
                        Kind = "effort",
                        Step = new Piece("press", "a", "", 5, [], percent, felt),
                        Softer = softer,
                    },
                ])
            )[0]
        );

    /// <summary>Eight breaths in 80 seconds: four seconds in, six out. In a contraction, and where the effort is medium or more,
    /// nothing is paced.</summary>
    [Theory]
    [InlineData("hold", null, 8, 0, "in 1 of 8")]
    [InlineData("hold", null, 8, 3999, "in 1 of 8")]
    [InlineData("hold", null, 8, 4000, "out 1 of 8")]
    [InlineData("hold", null, 8, 10000, "in 2 of 8")]
    [InlineData("hold", null, 8, 79999, "out 8 of 8")]
    [InlineData("breathe", 40, 8, 0, "in 1 of 8")]
    [InlineData("hold", 41, 8, 0, "none")]
    [InlineData("press", 10, 8, 0, "none")]
    [InlineData("pull", null, 8, 0, "none")]
    [InlineData("raise", null, 8, 0, "none")]
    [InlineData("hold", null, 0, 0, "none")]
    public async Task Breath_is_paced_only_where_it_is_slow_and_nothing_is_hard(
        string kind,
        int? percent,
        int breaths,
        int at,
        string expected
    ) =>
        Assert.Equal(
            expected,
            (
                await Ask<string>([
                    new
                    {
                        Kind = "breath",
                        Step = new Piece(kind, "a", "", 80, [], percent, null, breaths),
                        At = at,
                    },
                ])
            )[0]
        );

    [Theory]
    [InlineData("""{"time": 1000}""", 1000, "true")]
    [InlineData("""{"time": 1000}""", 10801000, "true")]
    [InlineData("""{"time": 1000}""", 10801001, "false")]
    [InlineData("""{"time": 20000000}""", 1000, "false")]
    [InlineData("""{"time": "soon"}""", 1000, "false")]
    [InlineData("null", 1000, "false")]
    [InlineData("7", 1000, "false")]
    public async Task What_was_kept_is_fresh_for_three_hours_whichever_way_the_clock_went(
        string kept,
        long now,
        string expected
    ) =>
        Assert.Equal(
            expected,
            await Ask(
                new JsonObject
                {
                    ["kind"] = "fresh",
                    ["kept"] = JsonNode.Parse(kept),
                    ["now"] = now,
                    ["hours"] = 3,
                }
            )
        );
}
