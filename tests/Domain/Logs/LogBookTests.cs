using CsCheck;
using Gradus.Domain;
using Gradus.Tests.Reading.Logs;

namespace Gradus.Tests.Domain.Logs;

/// <summary>Tellings of the same sessions, put together.</summary>
public sealed class LogBookTests
{
    private const ulong Seed = 20261210;

    private static readonly LogEntry Monday = MadeLogs.Entry.Made(1, Seed).First() with
    {
        Day = new(2026, 12, 7),
        Outcome = new LogOutcome.Done(),
        Effort = 4,
        Morning = null,
        Exercises = [],
        Note = "",
    };

    [Fact]
    public void The_last_telling_counts_and_days_stand_in_their_order()
    {
        var later = Monday with { Day = new(2026, 12, 8) };
        var again = Monday with { Effort = 5 };
        Assert.Equal([again, later], LogBook.Joined([Monday, later, again]));
        Assert.Equal([again, later], LogBook.Joined([later, Monday, again]));
    }

    [Fact]
    public void A_line_that_says_nothing_of_an_alarm_takes_none_back()
    {
        var alarm = Monday with { Alarm = RedFlag.Chest };
        Assert.Equal([alarm], LogBook.Joined([alarm, Monday with { Alarm = null }]));
    }

    [Fact]
    public void Two_sessions_of_one_number_on_a_day_differ_in_when_they_began()
    {
        var evening = Monday with { Start = new(19, 0) };
        Assert.Equal([Monday, evening], LogBook.Joined([Monday, evening]));
    }

    [Fact]
    public void The_morning_after_is_more_and_then_known()
    {
        var morning = new LoggedPain(3, Region.Find("knee"), Side.Left);
        var more = Monday with { Morning = morning, Effort = null };
        Assert.False(Monday.Tells(more));
        Assert.Equal(Monday with { Morning = morning }, Monday.With(more));
        Assert.True(Monday.With(more).Tells(more));
        Assert.True(Monday.With(more).Tells(Monday));
    }

    [Fact]
    public void A_line_without_a_side_is_told_by_one_with_a_side()
    {
        var left = new LoggedExercise(new("plank"), Side.Left, 2, null, "", null, true, StopReason.Sharp, []);
        var whole = Monday with { Exercises = [left] };
        Assert.True(whole.Tells(Monday with { Exercises = [left with { Side = null, Sets = null, For = null }] }));
        Assert.False(whole.Tells(Monday with { Exercises = [left with { Side = null, Sets = 3 }] }));
        Assert.False(whole.Tells(Monday with { Exercises = [left with { Side = Side.Right }] }));
        Assert.Equal(2, whole.With(Monday with { Exercises = [left, left] }).Exercises.Count);
    }

    /// <summary>For any two tellings of any session: what is put together says all that the second says, and once more adds
    /// nothing; and of two that differ somewhere most are not the same, or the property would say nothing.</summary>
    [Fact]
    public void What_was_put_together_tells_what_was_put_in()
    {
        var differ = 0;
        foreach (var (one, other) in Gen.Select(MadeLogs.Entry, MadeLogs.Entry).Made(2000, Seed))
        {
            Assert.True(one.Tells(one));
            Assert.True(one.With(other).Tells(other));
            Assert.Equal(one.With(other), one.With(other).With(other));
            differ += one.Tells(other) ? 0 : 1;
        }

        Assert.True(differ > 1000, $"{differ}");
    }
}
