using Gradus.Domain;

namespace Gradus.Tests.Reading;

public sealed class ConditionReaderTests
{
    [Fact]
    public void Conditions_are_bound_in_the_order_they_are_asked() => Assert.Equal(
        [
            new(new("calf-strain"), "a calf strain in the last 6 weeks", "Have you strained a calf in the last 6 weeks?", Of("ankle"), true, At(1, 3)),
            new(new("faint-spells"), "fainting or dizzy spells", "Have you fainted or felt dizzy in the last 3 months?", Of("whole body"), false, At(6, 3)),
            new(new("sore-wrist"), "a sore wrist", "Is a wrist of yours sore?", Of("wrist"), true, At(10, 3)),
        ],
        LittlePractice.Golden.Read().Conditions);

    [Fact]
    public void A_condition_that_cannot_be_bound_is_not_called_unknown_elsewhere()
    {
        var wrong = LittlePractice.Golden.Edit("conditions.yaml", "  where: ankle\n", "  where: elbo\n");
        Assert.Equal(["conditions.yaml:4:10"], wrong.Findings().Select(f => f.At.ToString()));
    }

    [Fact]
    public void A_list_of_conditions_that_cannot_be_read_is_said_once()
    {
        Assert.Single(LittlePractice.Golden.With("conditions.yaml", "- id: [calf-strain").Findings());
        Assert.Single(LittlePractice.Golden.Without("conditions.yaml").Findings());
        Assert.Single(LittlePractice.Golden.With("conditions.yaml", "calf-strain: yes").Findings());
    }

    private static Region Of(string name) => Region.Find(name) ?? throw new ArgumentException(name, nameof(name));

    private static Location At(int line, int column) => new("conditions.yaml", line, column);
}
