using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>When two uses of an exercise are one thing written twice: UseTwice.md.</summary>
public sealed class UseTwiceTests
{
    private static readonly string[] Press = ["- use: calf-press", "  side: rear leg"];

    [Theory]
    [InlineData("", "side: rear leg", 1)]
    [InlineData("", "side: front leg", 0)]
    [InlineData("", "side: rear leg\n  as: once more", 0)]
    [InlineData("until-week: 1", "side: rear leg", 1)]
    [InlineData("until-week: 1", "side: rear leg\n  from-week: 2", 0)]
    [InlineData("from-week: 2", "side: rear leg\n  until-week: 1", 0)]
    [InlineData("", "side: rear leg\n  from-week: 2", 1)]
    [InlineData("until-week: 2", "side: rear leg\n  from-week: 2", 1)]
    public void It_is_told_where_nothing_parts_them(string first, string second, int told) =>
        Assert.Equal(
            told,
            Found([.. Press, .. first.Length > 0 ? ["  " + first] : (string[])[], Press[0], .. $"  {second}".Split('\n')])
        );

    /// <summary>What goes around comes back.</summary>
    [Fact]
    public void In_rounds_it_is_meant()
    {
        string[] inside = [.. Press.Select(l => "    " + l)];
        Assert.Equal(0, Found(["- rounds: 2", "  of:", .. inside, .. inside]));
    }

    /// <summary>What another session takes from it is written once.</summary>
    [Fact]
    public void In_a_session_that_is_taken_from_it_nothing_is_told_again() =>
        Assert.Equal(
            1,
            Found(
                [.. Press, .. Press],
                Edit.Of(
                    "clients/tess/programme.md",
                    ["- weeks: 2", "+ weeks: 2", "+ alternate:", "+   - name: Away", "+     of: Ankles", "+     kind: travel"]
                )
            )
        );

    /// <param name="uses">In place of the press.</param>
    private static int Found(string[] uses, params Edit[] more)
    {
        var found = Trial.Of([
            .. more,
            Edit.Of(
                "clients/tess/programme.md",
                [
                    "- - use: calf-press",
                    "-   side: rear leg",
                    "-   by-week:",
                    "-     1: 2 x press 10 s at 50%",
                    .. uses.Select(l => "+ " + l),
                ]
            ),
        ]);
        Assert.DoesNotContain(found, f => f.Level == Level.Error);
        return found.Count(f => f.Rule.Text == "use-twice");
    }
}
