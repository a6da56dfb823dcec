using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>Whom an exercise makes somebody ask about: practice-format.md, a condition that may be of one side concerns what
/// loads its region; any other what names it.</summary>
public sealed class ConditionMattersTests
{
    private static readonly LittlePractice Practice = Club.Empty.With(
        "conditions.yaml",
        """
        - { id: calf-strain, name: a calf strain, question: Have you strained a calf?, where: ankle, sided: yes }
        - { id: bad-ankle, name: a bad ankle, question: Is an ankle of yours bad?, where: ankle, sided: yes }
        - { id: old-sprain, name: an old sprain, question: Did you ever sprain an ankle?, where: ankle }
        - { id: sore-wrist, name: a sore wrist, question: Does a wrist hurt?, where: wrist, sided: yes }
        """
    );

    [Theory]
    [InlineData("calf-strain", "", true)] // named
    [InlineData("bad-ankle", "", true)]
    [InlineData("old-sprain", "", false)]
    [InlineData("sore-wrist", "", false)]
    [InlineData("sore-wrist", "loads: [wrist]", true)]
    [InlineData("heart-disease", "", true)] // everybody is asked
    public void It_matters_where_it_is_named_or_its_side_is_loaded(string condition, string more, bool matters)
    {
        var practice = Practice.Exercise("sway", "2 x hold 30 s, each side", more, "side-lying").Read();
        var asked = practice.Conditions.Single(c => c.Id.Text == condition);
        Assert.Equal(matters, Screening.Matters(asked, practice.Exercises.Single()));
    }
}
