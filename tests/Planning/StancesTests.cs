namespace Gradus.Tests.Planning;

public sealed class StancesTests
{
    private static readonly LittlePractice Little = Club
        .Empty.Exercise("sway", "hold 30 s, each side")
        .Member("ansel", ["- use: sway"]);

    [Theory]
    [InlineData(
        "left",
        "Which hand holds your weapon? You said: the left.",
        "Your weapon arm LEFT, free arm RIGHT, front leg LEFT and rear leg RIGHT."
    )]
    [InlineData(
        "right",
        "Which hand holds your weapon? You said: the right.",
        "Your weapon arm RIGHT, free arm LEFT, front leg RIGHT and rear leg LEFT."
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
                "Which hand holds your weapon? You said for Épée: the left.",
                "Your weapon arm LEFT, free arm RIGHT, front leg in Épée LEFT and rear leg RIGHT.",
                "Which hand holds the racket? You said for Court tennis: the right.",
                "Your racket arm RIGHT and front leg in Court tennis LEFT.",
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
        "Which foot kicks? You said: the left.|Your kicking foot LEFT and lead RIGHT."
    )]
    [InlineData("{ sword hand: right }", "Which foot kicks? You said: the left.|Your sword hand LEFT.")]
    [InlineData("{}", "Which foot kicks? You said: the left.")]
    public void Any_sport_can_be_spelled_out(string roles, string said)
    {
        var plan = Little
            .With("sports/football.yaml", $"name: Football\nstance: Which foot kicks?\nroles: {roles}\n")
            .Edit("clients/ansel/client.yaml", "sport: epee\nstance: right", "sport: football\nstance: left")
            .Plan("ansel");
        Assert.Equal(said, string.Join('|', plan.Stances[0].Sentences));
    }
}
