using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;
using Gradus.Trainings;

namespace Gradus.Tests.Auditing;

public sealed class SessionOverTimeTests
{
    private static readonly Practice Practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice!;

    [Fact]
    public void A_session_takes_before_there_is_a_plan_what_it_takes_in_the_plan()
    {
        foreach (var client in Practice.Clients)
        {
            var (uses, plan) = (Planned.Uses(Practice, client), Planned.For(Practice, client));
            foreach (var session in plan.Sessions)
                Assert.Equal(
                    Totals(session.Weeks.Select(w => (w.Weeks, w.Total))),
                    Totals(
                        Timelines
                            .Of(
                                [.. uses.Where(u => u.Session == session.Number && u.Weeks.Count > 0)],
                                plan.Programme.Weeks,
                                Practice.Card.Settings
                            )
                            .Select(w => (w.Weeks, w.Total))
                    )
                );
        }
    }

    [Theory]
    [InlineData(
        "3 x hold 60 s, rest 20 s",
        "2-3 x hold 30-60 s, rest 20 s",
        "2 x hold 60 s, rest 20 s; 3 x hold 30 s, rest 20 s; 2 x hold 30 s, rest 20 s"
    )]
    [InlineData("2 x hold 60 s, rest 20 s", "1-2 x hold 60 s, rest 20 s", "1 x hold 60 s")]
    [InlineData(
        "2 x (press 12 s at 50% then hold 25 s)",
        "2-3 x (press 10-15 s at 40-60% then hold 20-30 s)",
        "2 x (press 10 s at 50% then hold 20 s)"
    )]
    [InlineData("1 x 4 x raise 8 s, pause 4 s", "1 x 3-4 x raise 5-8 s, pause 4 s", "1 x 3 x raise 5 s, pause 4 s")]
    [InlineData("1 x press 30 s at 20 to 80% in 3 steps", "1 x press 20-40 s at 20 to 80% in 4 steps", "")]
    [InlineData("2 x hold 30 s", "2-3 x hold 30-60 s, rest 20 s", "")]
    [InlineData("1 x hold 20 s", "2-3 x hold 30-60 s, rest 20 s", "")]
    [InlineData("2 x hold 60 s", "2 x press 10-60 s", "")]
    public void Shorter_doses_come_with_the_least_change_first(string done, string allowed, string shorter) =>
        Assert.Equal(
            shorter,
            string.Join("; ", ShorterDoses.Of(DoseOf(done).Settled(), DoseOf(allowed)).Select(d => d.ToString()))
        );

    private static Dose DoseOf(string line) =>
        Assert.IsType<DoseLineResult.Understood>(DoseLine.Read(line, DoseSettings.Default)).Dose;

    private static IEnumerable<(int Week, Seconds Total)> Totals(IEnumerable<(Series<int> Weeks, Seconds Total)> weeks) =>
        weeks.SelectMany(w => w.Weeks.Select(week => (week, w.Total))).OrderBy(w => w.week);
}
