using Gradus.Auditing;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>What is shown to a coach as allowed is stopped by nothing: a rule that stops a client for health, age or range says
/// itself how whoever shows it comes to know.</summary>
public sealed class StoppingRulesTests
{
    private static readonly string[] Subjects = ["Screening", "Ranges"];

    [Fact]
    public void Every_rule_of_screening_that_stops_a_client_says_whether_it_is_asked_beside_screening()
    {
        var stopping = RuleBook.Rules.Where(r => r is IClientRule && Stops(r)).ToArray();
        Assert.True(stopping.Length >= 12, "Too few to prove anything.");
        Assert.Empty(stopping.Where(r => !SaysHow(r)).Select(r => r.Id.Text));
    }

    /// <summary>One that judges health and says nothing of it would be seen.</summary>
    [Fact]
    public void A_rule_that_does_not_say_is_seen()
    {
        Assert.False(SaysHow(new YesWithoutEffect()));
        Assert.True(Stops(new RestrictionBroken()));
        Assert.False(Stops(new YesWithoutEffect()));
    }

    private static bool SaysHow(IRule rule) => rule is IStoppingRule != rule is IObjectionRule;

    private static bool Stops(IRule rule) =>
        Subjects.Any(s => File.Exists(Repository.Path("src", "Auditing", "Rules", s, rule.GetType().Name + ".cs")))
        && RuleBook
            .Pages()
            .First(p => p.Rule == rule.Id)
            .Text.Split('\n')
            .Single(l => l.StartsWith("Level: ", StringComparison.Ordinal))
            .Contains("error", StringComparison.Ordinal);
}
