using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What a coach is told of a dose that cannot grow as it should: the work alone, without its rests.</summary>
public sealed class GrowthSentencesTests
{
    [Theory]
    [InlineData(
        1,
        "30 s",
        "In its 1 full week 'Sway' stays at 2 x hold 30 s, at most 10 per cent a week; its high end would take 5."
    )]
    [InlineData(
        2,
        "33 s",
        "In its 2 full weeks 'Sway' grows from 2 x hold 30 s to 2 x hold 33 s, at most 10 per cent a week; its high end would "
            + "take 5."
    )]
    public void What_is_not_reached_is_told(int weeks, string last, string said) =>
        Assert.Equal(said, GrowthSentences.Unfinished("'Sway'", weeks, 5, Held("30 s"), Held(last), 10));

    [Fact]
    public void A_step_that_is_too_large_is_told() =>
        Assert.Equal(
            "From '2 x hold 30 s' to '2 x hold 40 s' this line has no smaller step than 33 per cent.",
            GrowthSentences.Coarse(Held("30 s"), Held("40 s"), 33)
        );

    private static SettledDose Held(string time) => DoseOf.Line($"2 x hold {time}, rest 20 s, each side").Settled();
}
