using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What a coach accepts, at its limits. AcceptTests has what is left to be said.</summary>
public sealed class AcceptedTests
{
    private static readonly DateOnly Day = new(2026, 12, 7);
    private static readonly Acceptance Skipped = Acceptance("heading-skipped");
    private static readonly Series<RulePage> Pages = RuleBook.Pages().ToSeries();

    [Fact]
    public void It_holds_until_the_end_of_its_last_day()
    {
        Assert.True(Of(Skipped).Holds(Day.AddDays(-1)));
        Assert.True(Of(Skipped).Holds(Day));
        Assert.False(Of(Skipped).Holds(Day.AddDays(1)));
    }

    [Fact]
    public void A_rule_may_say_for_how_long_at_most()
    {
        var limited = Of(Skipped) with { Days = 30 };
        Assert.True(limited.Holds(Day.AddDays(-30)));
        Assert.False(limited.IsTooLong(Day.AddDays(-30)));
        Assert.False(limited.Holds(Day.AddDays(-31)));
        Assert.True(limited.IsTooLong(Day.AddDays(-31)));
        Assert.False(Of(Skipped).IsTooLong(Day.AddDays(-3000)));
        Assert.All(RuleBook.Rules, r => Assert.Equal(r.AcceptedDays, Of(Acceptance(r.Id.Text)).Days));
        Assert.Contains(RuleBook.Rules, r => r.AcceptedDays is not null);
    }

    [Fact]
    public void What_is_no_rule_or_an_error_is_refused()
    {
        Assert.False(Of(Skipped).IsRefused);
        Assert.True(Of(Acceptance("heading-skiped")).IsRefused);
        Assert.Equal("heading-skipped", Of(Acceptance("heading-skiped")).Nearest);
        Assert.True(Of(Skipped, Found("x", Level.Error)).IsRefused);
        Assert.True(Of(Skipped with { Saw = "y" }, Found("x", Level.Error)).IsRefused);
        Assert.False(Of(Skipped, Found("x", Level.Error) with { At = new("b.html", 1, 1) }).IsRefused);
        Assert.False(Of(Skipped, Found("x", Level.Warning)).IsRefused);
    }

    /// <summary>New pain is a new warning: what is about a client must be what the coach saw.</summary>
    [Theory]
    [InlineData(null, null, true)]
    [InlineData(null, "tess", false)]
    [InlineData("Pain  of 4.", "tess", true)]
    [InlineData("Pain of 5.", "tess", false)]
    [InlineData("Pain of 4.", null, true)]
    public void It_fits_what_the_coach_saw(string? saw, string? client, bool fits)
    {
        var found = Found("Pain of 4.", Level.Warning) with { Client = client is null ? null : new ClientId(client) };
        var accepted = Of(Skipped with { Saw = saw }, found);
        Assert.Equal((fits ? 1 : 0, fits ? 0 : 1), (accepted.Fits.Count, accepted.Others.Count));
    }

    [Fact]
    public void Another_file_and_another_rule_are_neither()
    {
        var accepted = Of(
            Skipped,
            Found("x", Level.Warning) with
            {
                At = new("b.html", 1, 1),
            },
            Found("x", Level.Warning) with
            {
                Rule = new("label-missing"),
            }
        );
        Assert.Empty(accepted.Fits.Concat(accepted.Others));
    }

    private static Accepted Of(Acceptance acceptance, params Finding[] found) =>
        Assert.Single(Accepted.Of([acceptance], found, Pages));

    private static Acceptance Acceptance(string rule) =>
        new(new(rule), "a.html", null, "It is meant so.", "Ottoline Marsh", Day, new("accepted.yaml", 1, 9));

    private static Finding Found(string message, Level level) =>
        new(new("heading-skipped"), level, null, new("a.html", 1, 1), message, "y");
}
