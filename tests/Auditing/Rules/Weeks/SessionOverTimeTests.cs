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

    private static IEnumerable<(int Week, Seconds Total)> Totals(IEnumerable<(Series<int> Weeks, Seconds Total)> weeks) =>
        weeks.SelectMany(w => w.Weeks.Select(week => (week, w.Total))).OrderBy(w => w.week);
}
