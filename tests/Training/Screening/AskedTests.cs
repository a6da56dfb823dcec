using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>Who is asked what: everybody what floor.yaml asks, and of the practice's own conditions those that matter for some
/// exercise of its library; the age follows from the day of birth (practice-format.md).</summary>
public sealed class AskedTests
{
    private static readonly LittlePractice Conditions = Club.Empty.With(
        "conditions.yaml",
        """
        - { id: calf-strain, name: a calf strain, question: Have you strained a calf?, where: whole body }
        - { id: faint-spells, name: faint spells, question: Do you faint?, where: whole body }
        - { id: sore-knee, name: a sore knee, question: Is a knee sore?, where: knee, sided: yes }
        """
    );

    [Theory]
    [InlineData("", "calf-strain")] // which the exercise is not done with
    [InlineData("clear-first: [faint-spells]", "calf-strain faint-spells")]
    [InlineData("loads: [knee]", "calf-strain sore-knee")]
    [InlineData("loads: [other knee]", "calf-strain sore-knee")]
    [InlineData("clear-first: [sixty-five-or-older]", "calf-strain")]
    public void Of_the_practice_s_own_those_are_asked_that_matter(string more, string asked)
    {
        var practice = Conditions.Exercise("nod", "2 x hold 30 s", more, "supine", "cervical flexion").Read();
        Assert.Equal(asked.Split(' '), Screening.Asked(practice).Where(c => !c.IsAlwaysAsked).Select(c => c.Id.Text));
    }

    [Fact]
    public void Everybody_is_asked_what_everybody_is_asked_even_without_an_exercise()
    {
        var practice = Conditions.Read();
        Assert.Equal(practice.Conditions.Where(c => c.IsAlwaysAsked), Screening.Asked(practice));
        Assert.Contains(AlwaysAsked.Symptoms, Screening.Asked(practice).Select(c => c.Id));
    }

    /// <summary>What stands against an exercise stands where the exercise names the condition, so that the coach can look there;
    /// at its beginning where it does not.</summary>
    [Theory]
    [InlineData("not-with: [faint-spells]", "faint-spells")]
    [InlineData("clear-first: [faint-spells]", "faint-spells")]
    [InlineData("", "---")]
    public void What_stands_against_it_stands_where_it_is_named(string more, string word)
    {
        var club = Conditions
            .Exercise("nod", "2 x hold 30 s", more, "supine", "cervical flexion")
            .Member(
                "ada",
                ["- use: nod"],
                answers: "{ calf-strain: no, sore-knee: no, back-pain-with-leg-signs: yes, faint-spells: yes }"
            );
        var lines = club["exercises/nod.md"].Split('\n');
        var named = Array.FindIndex(lines, line => line.Contains(word, StringComparison.Ordinal));
        var at = Assert
            .Single(Assert.Single(Planned.Uses(club.Read())).Against, a =>
                a.Condition.Text == (word == "---" ? "back-pain-with-leg-signs" : word)
            )
            .At.Value;
        Assert.Equal("exercises/nod.md", at.File);
        if (word != "---")
            Assert.EndsWith($":{named + 1}:{lines[named].IndexOf(word, StringComparison.Ordinal) + 1}", at.ToString());
        else
            Assert.Equal("exercises/nod.md", at.ToString());
    }
}
