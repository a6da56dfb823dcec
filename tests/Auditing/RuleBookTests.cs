using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Auditing;

/// <summary>Which rules are asked, and in what order.</summary>
public sealed class RuleBookTests
{
    private static readonly DateOnly Today = new(2027, 1, 4);
    private static readonly Practice Practice = Gradus.Tests.Reading.LittlePractice.Golden.Read();
    private static readonly Client Ansel = Practice.Clients.Single();
    private static readonly Training Training = Gradus.Trainings.Training.Of(Practice, Ansel);

    [Fact]
    public void What_all_share_comes_first_and_then_each_client()
    {
        var shared = RuleBook.CheckShared(Practice).ToArray();
        var own = RuleBook.Check(Practice, Ansel, Training, Today).ToArray();
        Assert.NotEmpty(shared);
        Assert.NotEmpty(own);
        Assert.Equal(shared.Concat(own), RuleBook.Check(Practice, Trainings, Today));
        Assert.Equal(RuleBook.Rules.OfType<IPracticeRule>().SelectMany(r => r.Check(Practice)), shared);
        Assert.Equal(RuleBook.Rules.OfType<IClientRule>().SelectMany(r => r.Check(Practice, Ansel, Training, Today)), own);
    }

    /// <summary>Where a file could not be read, nobody knows what is unused.</summary>
    [Fact]
    public void What_is_unused_is_asked_only_where_all_could_be_read()
    {
        var whole = Rules(RuleBook.Check(Practice, Trainings, Today));
        var part = Rules(RuleBook.Check(Practice, Trainings, Today, whole: false));
        Assert.Contains(whole, r => r is IWholeRule);
        Assert.Equal(whole.Where(r => r is not IWholeRule), part);
    }

    /// <summary>Where a dose is too long to be timed, nothing is counted.</summary>
    [Fact]
    public void What_cannot_be_counted_is_not()
    {
        var endless = Training with { Refusals = [new Refusal.TooLong(new("calf-sway"), 1)] };
        Assert.Equal(
            RuleBook
                .Rules.OfType<IClientRule>()
                .Where(r => r is not ICountingRule)
                .SelectMany(r => r.Check(Practice, Ansel, endless, Today)),
            RuleBook.Check(Practice, Ansel, endless, Today)
        );
        Assert.Contains(RuleBook.Rules, r => r is ICountingRule);
    }

    [Fact]
    public void What_stops_today_is_an_error() =>
        Assert.Equal(
            RuleBook
                .Rules.OfType<IStoppingRule>()
                .SelectMany(r => r.Check(Practice, Ansel, Training, Today))
                .Where(f => f.Level == Level.Error),
            RuleBook.StopsToday(Practice, Ansel, Training, Today)
        );

    [Fact]
    public void Every_rule_has_its_page_in_the_same_order() =>
        Assert.Equal(RuleBook.Rules.Select(r => r.Id), RuleBook.Pages().Select(p => p.Rule));

    private static Dictionary<ClientId, Training> Trainings => new() { [Ansel.Id] = Training };

    private static IRule[] Rules(IEnumerable<Finding> found) =>
        [.. found.Select(f => RuleBook.Rules.Single(r => r.Id == f.Rule))];
}
