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

    /// <summary>None, one or two, the second at times right behind the first.</summary>
    private static IEnumerable<ThisWeekTests.Days> Pauses(Draws draws)
    {
        var day = draws.From(1, 16);
        for (var count = draws.From(0, 2); count > 0; count--)
        {
            var last = day + draws.From(0, 15);
            yield return new(ThisWeekTests.Day(day), ThisWeekTests.Day(last));
            day = last + 1 + (draws.Below(3) == 0 ? 0 : draws.From(0, 12));
        }
    }

    private static ThisWeekTests.Case Made(Draws draws)
    {
        var weeks = draws.From(1, 6);
        var back = draws.From(3, 8);
        var course = new ThisWeekTests.Course(
            ThisWeekTests.Day(0),
            [.. Pauses(draws)],
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
        if (rows.Count == 0 && course.Pauses is [.., var pause] && draws.Below(2) == 0)
            today =
                DateOnly.ParseExact(pause.Until, "yyyy-MM-dd", CultureInfo.InvariantCulture).DayNumber
                - DateOnly.ParseExact(ThisWeekTests.Day(0), "yyyy-MM-dd", CultureInfo.InvariantCulture).DayNumber
                + (7 * draws.From(0, 3))
                + draws.Below(2);
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
        if (today < Day(course.Start))
            return new(1, "early", 1);
        var week = Math.Min(WeekOf(course, today), course.Needs.Length);
        return new(1, week > 1 ? "late" : "calendar", week);
    }

    /// <summary>Every day is crossed out in turn, seven of them make a week, and a day of a pause throws away what was counted of
    /// the week so far.</summary>
    private static int WeekOf(ThisWeekTests.Course course, int today)
    {
        var (week, counted) = (1, 0);
        for (var day = Day(course.Start); ; day++)
        {
            var isPause = course.Pauses.Any(p => Day(p.From) <= day && day <= Day(p.Until));
            if (counted == 7)
                (week, counted) = (week + 1, 0);
            if (day == today)
                return week;
            counted = isPause ? 0 : counted + 1;
        }
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
