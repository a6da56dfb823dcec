namespace Gradus.Tests.Planning;

public sealed class StancesTests
{
    private static readonly LittlePractice Little = Club
        .Empty.Exercise("sway", "hold 30 s, each side")
        .Member("ansel", ["- use: sway"]);

    [Theory]
    [InlineData(
        "left",
        "Which hand holds your weapon? Your answer: the left.",
        "So your weapon arm is your LEFT arm, your free arm is your RIGHT arm, your front leg is your LEFT leg and your "
            + "rear leg is your RIGHT leg."
    )]
    [InlineData(
        "right",
        "Which hand holds your weapon? Your answer: the right.",
        "So your weapon arm is your RIGHT arm, your free arm is your LEFT arm, your front leg is your RIGHT leg and your "
            + "rear leg is your LEFT leg."
    )]
    public void Question_answer_and_what_follows_are_spelled_out(string stance, string answered, string means) =>
        Assert.Equal(
            [answered, means],
            Assert
                .Single(Little.Edit("clients/ansel/client.yaml", "stance: right", "stance: " + stance).Plan("ansel").Stances)
                .Sentences
        );

    [Fact]
    public void Of_two_sports_each_has_its_answer_and_a_role_of_both_its_sport()
    {
        var plan = Little
            .With(
                "sports/tennis.yaml",
                "name: Court tennis\nstance: Which hand holds the racket?\nroles: { racket arm: right, front leg: left }\n"
            )
            .Edit("clients/ansel/client.yaml", "sport: epee\nstance: right", "sports: { epee: left, tennis: right }")
            .Plan("ansel");
        Assert.Equal(["Épée", "Court tennis"], plan.Stances.Select(s => s.Sport));
        Assert.Equal(
            [
                "Which hand holds your weapon? Your answer for Épée: the left.",
                "So your weapon arm is your LEFT arm, your free arm is your RIGHT arm, your front leg in Épée is your "
                    + "LEFT leg and your rear leg is your RIGHT leg.",
                "Which hand holds the racket? Your answer for Court tennis: the right.",
                "So your racket arm is your RIGHT arm and your front leg in Court tennis is your LEFT leg.",
            ],
            plan.Stances.SelectMany(s => s.Sentences)
        );
        Assert.Equal(
            ["Your racket arm is your right one.", "Your front leg in Court tennis is your left one."],
            plan.Stances[1].Roles.Select(r => r.Sentence)
        );
    }

    /// <summary>A name that ends in no part of the body is called by its side alone; a sport may have no names at all.</summary>
    [Theory]
    [InlineData(
        "{ kicking foot: right, lead: left leg }",
        "Which foot kicks? Your answer: the left.|So your kicking foot is your LEFT foot and your lead is your RIGHT one."
    )]
    [InlineData("{ sword hand: right }", "Which foot kicks? Your answer: the left.|So your sword hand is your LEFT hand.")]
    [InlineData("{}", "Which foot kicks? Your answer: the left.")]
    public void Any_sport_can_be_spelled_out(string roles, string said)
    {
        var plan = Little
            .With("sports/football.yaml", $"name: Football\nstance: Which foot kicks?\nroles: {roles}\n")
            .Edit("clients/ansel/client.yaml", "sport: epee\nstance: right", "sport: football\nstance: left")
            .Plan("ansel");
        Assert.Equal(said, string.Join('|', plan.Stances[0].Sentences));
    }
}
