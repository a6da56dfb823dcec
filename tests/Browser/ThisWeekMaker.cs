using System.Globalization;
using Gradus.Tests.Benchmarks;

namespace Gradus.Tests.Browser;

/// <summary>Made programmes, and what somebody did of them: faithfully, with gaps, in the wrong week, twice, with a clock that
/// was set back.</summary>
internal static class ThisWeekMaker
{
    public static IEnumerable<ThisWeekTests.Case> Cases(int count)
    {
        var draws = new Draws(20261207);
        for (var i = 0; i < count; i++)
            yield return Made(draws);
    }

    private static ThisWeekTests.Case Made(Draws draws)
    {
        var weeks = draws.From(1, 6);
        var back = draws.From(3, 8);
        var course = new ThisWeekTests.Course(
            ThisWeekTests.Day(0),
            [back, back + draws.From(1, 9)],
            [
                .. Enumerable
                    .Range(0, weeks)
                    .Select(_ =>
                        Enumerable.Range(1, draws.From(0, 2)).Select(s => new ThisWeekTests.Need(s, draws.From(1, 2))).ToArray()
                    ),
            ],
            draws.Below(2) == 0 ? new(StringComparer.Ordinal) : new(StringComparer.Ordinal) { ["3"] = 1 }
        );
        var rows = new List<ThisWeekTests.Row>();
        var (day, week) = (draws.From(-2, 3), 1);
        for (var done = draws.From(0, 3) == 0 ? 0 : draws.From(1, 15); done > 0; done--)
        {
            rows.Add(new(ThisWeekTests.Day(day), week, draws.From(1, 3)));
            day += draws.Below(8) == 0 ? draws.From(5, 19) : draws.From(0, 3);
            if (draws.Below(3) == 0)
                week = Math.Clamp(week + draws.From(-1, 2), 0, weeks + 1);
        }

        var today = rows.Count == 0 ? draws.From(-3, 59) : day + draws.From(-4, 11);
        if (draws.Below(3) == 0)
            today = ((today / 7) * 7) + draws.Below(2);
        var chosen =
            draws.Below(3) == 0
                ? new ThisWeekTests.Choice(draws.From(0, weeks + 1), ThisWeekTests.Day(today - draws.From(-1, 11)))
                : null;
        return new(course, [.. rows.OrderBy(_ => draws.Below(5) == 0 ? 1 : 0)], chosen, ThisWeekTests.Day(today));
    }
}

/// <summary>The rule in its own words: what was done is gone through day by day, from the first one, as somebody would with a
/// pencil.</summary>
internal static class SecondWeekJudgement
{
    public static ThisWeekTests.Said Of(ThisWeekTests.Case asked)
    {
        var (course, today) = (asked.Course, Day(asked.Today));
        var weeks = course.Needs.Length;
        var rows = asked
            .Rows.Where(r => Day(r.Day) <= today && r.Week >= 1 && r.Week <= weeks)
            .OrderBy(r => r.Day, StringComparer.Ordinal)
            .ToArray();
        var found = rows.Length == 0 ? ByCalendar(course, today) : ByDeeds(course, rows, today);
        if (asked.Chosen is not { } chosen)
            return found;
        var lastDone = rows.Length == 0 ? Day(course.Start) : rows.Max(r => Day(r.Day));
        var counts =
            Day(chosen.Day) <= today
            && Day(chosen.Day) >= lastDone
            && today - Day(chosen.Day) <= course.Back[0]
            && chosen.Week >= 1
            && chosen.Week <= found.Most;
        return counts ? new(chosen.Week, "chosen", found.Most) : found;
    }

    private static ThisWeekTests.Said ByCalendar(ThisWeekTests.Course course, int today)
    {
        var gone = today - Day(course.Start);
        if (gone < 0)
            return new(1, "early", 1);
        var week = Math.Min((gone / 7) + 1, course.Needs.Length);
        return new(1, week > 1 ? "late" : "calendar", week);
    }

    private static ThisWeekTests.Said ByDeeds(ThisWeekTests.Course course, ThisWeekTests.Row[] rows, int today)
    {
        var (week, begun, before, finished) = (0, 0, 0, 0);
        var open = new List<int>();
        foreach (var row in rows)
        {
            var day = Day(row.Day);
            if (row.Week != week || day - before > course.Back[0])
            {
                (week, begun) = (row.Week, day);
                open = [.. course.Needs[week - 1].SelectMany(n => Enumerable.Repeat(n.Session, n.Times))];
            }

            open.Remove(course.Instead.GetValueOrDefault(row.Session.ToString(CultureInfo.InvariantCulture), row.Session));
            before = day;
            if (open.Count == 0)
                finished = week;
        }

        if (today - before > course.Back[1])
            return new(1, "long-break", week);
        if (today - before > course.Back[0])
            return new(finished > 0 ? finished : week, "break", week);
        var next = open.Count == 0 && today - begun >= 7 && week < course.Needs.Length ? week + 1 : week;
        return new(next, "log", next);
    }

    private static int Day(string iso) => DateOnly.ParseExact(iso, "yyyy-MM-dd", CultureInfo.InvariantCulture).DayNumber;
}
