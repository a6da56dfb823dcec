using Gradus.Domain;

namespace Gradus.Tests.Planning;

/// <summary>Which item of what to do belongs to which kind of step, so that somebody who is led sees that one while it
/// runs.</summary>
public sealed class AskedItemTests
{
    private const string Body =
        "## Do\n1. Push for {press}.\n2. Draw it down for {pull}.\n3. Let go for {hold}.\n4. Rest for {rest}.";

    [Fact]
    public void An_item_tells_of_the_work_whose_number_is_in_it() =>
        Assert.Equal(
            [
                "Push for 10 seconds. press",
                "Draw it down for 10 seconds. pull",
                "Let go for 20 seconds. hold",
                "Rest for 30 seconds. ",
            ],
            Items("2 x (press 10 s at 40% then pull 10 s at 40% then hold 20 s), rest 30 s, each side", Body)
        );

    [Theory]
    [InlineData("2 x hold 5 breaths, each side", "1. Stay for {breaths} breaths.", "hold")]
    [InlineData("2 x breathe 5 breaths", "1. Breathe {breaths} times.", "breathe")]
    [InlineData("2 x move 6 reps, each side", "1. Do {reps} of them.", "move")]
    [InlineData("2 x (move 4 reps then raise 5 s)", "1. Lift {reps} times, then stay up for {raise}.", "move raise")]
    [InlineData("2 x hold 30 s, each side", "1. On the {side}, {sets} times.", "")]
    public void By_the_dose_of_the_exercise(string dose, string item, string asks) =>
        Assert.EndsWith($". {asks}", Assert.Single(Items(dose, "## Do\n" + item)), StringComparison.Ordinal);

    private static string[] Items(string dose, string body) =>
        [
            .. Club
                .Empty.Exercise("sway", dose, body: body)
                .Member("ansel", ["- use: sway"])
                .Plan("ansel")
                .Sessions[0]
                .Uses[0]
                .Text.Do.TextsAsked()
                .Select(item => $"{Prose.PlainOf(item.Text)} {item.Asks}"),
        ];

    /// <summary>Another rest comes after each exercise of a round, and none of them is the exercise's.</summary>
    [Theory]
    [InlineData("- use: sway", "Rest for 30 seconds.")]
    [InlineData("- rounds: 2\n  rest: 60 s\n  of:\n    - use: sway\n    - use: lean", "Rest for the time in the list.")]
    public void In_rounds_the_rest_is_that_of_the_list(string use, string said)
    {
        var plan = Club
            .Empty.Exercise("sway", "2 x move 8 reps, rest 30 s", body: "## Do\nRest for {rest}.")
            .Exercise("lean", "2 x move 8 reps, rest 30 s")
            .Member("ansel", [use])
            .Plan("ansel");
        Assert.Equal([said], plan.Sessions[0].Uses[0].Text.Do.Lines());
    }
}
