using Gradus.Auditing;
using Gradus.Trainings;

namespace Gradus.Tests.Auditing;

/// <summary>How long somebody lies is told where it is longer than the practice says, and not where it is as long.</summary>
public sealed class LongInOnePositionTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    public void As_long_as_it_may_be_is_not_too_long(int less, int found)
    {
        var lying = Club
            .Empty.Exercise("lie", "4 x hold 120 s, rest 20 s, each side", position: "supine")
            .Member("ansel", ["- use: lie"], 2);
        var plain = lying.Read();
        var longest = Training
            .Of(plain, plain.Clients[0])
            .Sessions[0]
            .Weeks.SelectMany(w => w.Unbroken)
            .Max(t => t.Seconds.Value);
        var practice = lying.Settings($"{{ one-position: {longest - less} s }}").Read();
        Assert.Equal(
            found,
            RuleBook
                .Check(practice, Planned.Trainings(practice), new DateOnly(2027, 1, 4))
                .Count(f => f.Rule.Text == "long-in-one-position")
        );
    }
}
