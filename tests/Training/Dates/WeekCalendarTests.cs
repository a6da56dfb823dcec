using Gradus.Domain;

namespace Gradus.Tests.Trainings;

/// <summary>Where weeks lie, held against a second judgement: every day is crossed out in turn, seven of them on end make a
/// week, and a day of a pause throws away what was counted of the week so far.</summary>
public sealed class WeekCalendarTests(ITestOutputHelper output)
{
    private static readonly DateOnly Start = new(2027, 1, 4);

    [Fact]
    public void Weeks_lie_where_the_second_judgement_has_them()
    {
        var (cut, whole, none) = (0, 0, 0);
        for (var seed = 1UL; seed <= 2000; seed++)
        {
            var calendar = new WeekCalendar(Start, Made(new Chance(seed)));
            var seen = Crossed(calendar.Pauses).Take(12 * 7 + 200).ToArray();
            for (var week = 1; week <= 10; week++)
            {
                var days = seen.Where(d => d.Week == week && !d.IsPause).Select(d => d.Day).ToArray();
                Assert.Equal(days, calendar.DaysOf(week));
                Assert.Equal((days[^7], days[^1]), (calendar.FirstDayOf(week), calendar.LastDayOf(week)));
                Assert.Equal(6, days[^1].DayNumber - days[^7].DayNumber);
                Assert.All(seen.Where(d => d.Week == week), d => Assert.Equal(week, calendar.WeekOf(d.Day)));
                var pauses = calendar.Pauses.Where(p => seen.First(d => d.Day == p.From).Week == week).ToSeries();
                Assert.Equal(pauses, calendar.PausesBefore(week));
                if (pauses.Count == 0)
                    none++;
                else if (days.Length > 7)
                    cut++;
                else
                    whole++;
            }
        }

        output.WriteLine(
            $"weeks without a pause {none}, behind one that cuts a week off {cut}, behind one that does not {whole}"
        );
        Assert.All([none, cut, whole], n => Assert.InRange(n, 300, 20_000));
    }

    private static IEnumerable<(DateOnly Day, int Week, bool IsPause)> Crossed(Series<Pause> pauses)
    {
        var (week, counted) = (1, 0);
        for (var day = Start; ; day = day.AddDays(1))
        {
            if (counted == 7)
                (week, counted) = (week + 1, 0);
            var isPause = pauses.Any(p => p.From <= day && day <= p.Until);
            yield return (day, week, isPause);
            counted = isPause ? 0 : counted + 1;
        }
    }

    /// <summary>None to three, some right behind each other, half of them over whole weeks.</summary>
    private static Series<Pause> Made(Chance chance)
    {
        var (pauses, day) = (new List<Pause>(), 1 + chance.Below(20));
        for (var count = chance.Below(4); count > 0; count--)
        {
            if (chance.Below(2) == 0)
                day = (day + 6) / 7 * 7;
            var last = day + (chance.Below(2) == 0 ? 6 : chance.Below(20));
            pauses.Add(new(Start.AddDays(day), Start.AddDays(last)));
            day = last + 1 + (chance.Below(3) == 0 ? 0 : chance.Below(20));
        }

        return pauses.ToSeries();
    }
}
