using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

[Trait("Slow", "yes")]
public sealed class DemonstrationPracticeTests
{
    private static readonly DateOnly Start = new(2026, 12, 7);

    [Fact]
    public void Nothing_is_found_in_reading_it()
    {
        var findings = new Findings();
        Assert.NotNull(Read(findings));
        Assert.Empty(findings.InOrder().Select(f => $"{f.At} {f.Message}"));
    }

    [Fact]
    public void Every_rule_is_silent_on_the_day_it_starts_but_for_what_the_next_programmes_have_to_add() =>
        Assert.Empty(
            RuleBook
                .Check(Read(new()), Planned.Trainings(Read(new())), Start)
                .Where(f => f.Rule.Text is not ("gain-without-control" or "work-without-demand") && !IsOfOneWeek(f))
                .Select(f => $"{f.At} {f.Rule} {f.Message}")
        );

    /// <summary>The harder chest turn of Rufus's last week, which has no second week to grow in.</summary>
    private static bool IsOfOneWeek(Finding found) =>
        found is { Rule.Text: "growth-unfinished", Client.Text: "rufus", Level: Level.Note }
        && found.Message.StartsWith("In its 1 full week 'Seated chest turn", StringComparison.Ordinal);

    /// <summary>61 days, 30 or 31 apart. Only notes, such as that a programme is over, may come with time.</summary>
    [Fact]
    public void It_is_published_on_any_day_of_the_five_years_after()
    {
        var practice = Read(new());
        var notes = 0;
        for (var i = 0; i <= 60; i++)
        {
            var today = Start.AddDays(i * 1826 / 60);
            foreach (var finding in RuleBook.Check(practice, Planned.Trainings(practice), today))
            {
                Assert.True(finding.Level == Level.Note, $"{today:O}: {finding.Rule} {finding.Message}");
                notes++;
            }
        }

        Assert.True(notes > 0, "A programme that is over is a note, and none came.");
    }

    [Fact]
    public void Everybody_in_it_has_a_plan()
    {
        var practice = Read(new());
        Assert.NotEmpty(practice.Clients);
        Assert.All(practice.Clients, client => Assert.NotEmpty(Planned.For(practice, client).Sessions));
    }

    private static Practice Read(Findings findings)
    {
        var practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), findings).Practice;
        return Assert.IsType<Practice>(practice);
    }
}
