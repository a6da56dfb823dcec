namespace Gradus.Tests.Auditing;

/// <summary>When two uses of an exercise are one thing written twice: UseTwice.md.</summary>
public sealed class UseTwiceTests
{
    private const string First = "- use: calf-press";

    [Theory]
    [InlineData("side: rear leg", "", 1)]
    [InlineData("side: front leg", "", 0)]
    [InlineData("side: rear leg\n  as: once more", "", 0)]
    [InlineData("side: rear leg\n  from-week: 2", "until-week: 1", 0)]
    [InlineData("side: rear leg\n  until-week: 1", "from-week: 2", 0)]
    [InlineData("side: rear leg\n  from-week: 2", "", 1)]
    [InlineData("side: rear leg\n  from-week: 2", "until-week: 2", 1)]
    public void It_is_told_where_nothing_parts_them(string second, string first, int told) =>
        Assert.Equal(told, Found([$"{First}", .. Lines(first), .. Lines($"- use: calf-press\n  {second}")]));

    /// <summary>What goes around comes back.</summary>
    [Fact]
    public void In_rounds_it_is_meant() =>
        Assert.Equal(
            0,
            Found(
                [
                    "- rounds: 2",
                    "  do:",
                    .. Enumerable.Repeat<string[]>(["    - use: calf-press", "      side: rear leg"], 2).SelectMany(u => u),
                ],
                side: ""
            )
        );

    private static string[] Lines(string text) =>
        text.Length == 0 ? [] : [.. text.Split('\n').Select(l => l.StartsWith('-') || l.StartsWith(' ') ? l : "  " + l)];

    /// <param name="uses">In place of the press, whose side is written where none is given.</param>
    private static int Found(string[] uses, string side = "  side: rear leg") =>
        Trial
            .Of([
                Edit.Of(
                    "clients/tess/programme.md",
                    [
                        "- - use: calf-press",
                        "-   side: rear leg",
                        "-   by-week:",
                        "-     1: 2 x press 10 s at 50%",
                        .. uses.Take(1).Select(l => "+ " + l),
                        .. side.Length > 0 ? ["+ " + side] : Array.Empty<string>(),
                        .. uses.Skip(1).Select(l => "+ " + l),
                    ]
                ),
            ])
            .Count(f => f.Rule.Text == "use-twice");
}
