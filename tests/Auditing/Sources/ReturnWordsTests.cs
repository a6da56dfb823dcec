using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Auditing;

/// <summary>What came back from a client, as the coach reads it.</summary>
public sealed class ReturnWordsTests
{
    private static readonly LogEntry Entry = new(
        new(2027, 1, 4),
        null,
        1,
        1,
        null,
        null,
        null,
        new LogOutcome.Done(),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        [],
        "",
        new("log.csv", 2, 1)
    );

    [Theory]
    [InlineData(null, "chest pain")]
    [InlineData(RedFlag.Chest, "chest pain")]
    [InlineData(RedFlag.Breath, "breathlessness")]
    [InlineData(RedFlag.Faint, "fainting")]
    [InlineData(RedFlag.Weakness, "weakness on one side")]
    [InlineData(RedFlag.Other, "a sign that is not known here")]
    public void A_sign_that_cannot_wait_is_named(RedFlag? sign, string said)
    {
        Assert.Equal(said, ReturnWords.SignOf(Entry with { Alarm = sign }));
        Assert.Equal(said, ReturnWords.Of(Pain(PainKind.Now, Entry with { Alarm = sign })));
    }

    [Theory]
    [InlineData(StopReason.Sharp, "sharp pain")]
    [InlineData(StopReason.Numb, "numbness")]
    [InlineData(StopReason.GivingWay, "giving way")]
    [InlineData(StopReason.Tired, "tiredness")]
    [InlineData(StopReason.Time, "no time")]
    public void A_reason_is_named(StopReason why, string said) => Assert.Equal(said, ReturnWords.Of(why));

    /// <summary>Of several reasons those that belong to the kind, each once.</summary>
    [Fact]
    public void A_stop_says_its_reasons()
    {
        var entry = Entry with
        {
            Exercises = [Stopped(StopReason.Sharp), Stopped(StopReason.Numb), Stopped(StopReason.Sharp), Stopped(null)],
            Outcome = new LogOutcome.EndedEarly(StopReason.GivingWay),
        };
        Assert.Equal("sharp pain and giving way (left knee)", ReturnWords.Of(Pain(PainKind.Stopped, entry)));
        Assert.Equal("sharp pain and giving way (left knee)", ReturnWords.Of(Pain(PainKind.Stopped, entry, 7)));
        Assert.Equal("numbness (left knee)", ReturnWords.Of(Pain(PainKind.SameDay, entry)));
        Assert.Equal("pain of 7 out of 10 (left knee)", ReturnWords.Of(Pain(PainKind.Stopped, Entry, 7)));
        Assert.Equal(
            "giving way (left knee)",
            ReturnWords.Of(Pain(PainKind.Stopped, Entry with { Outcome = new LogOutcome.EndedEarly(StopReason.GivingWay) }, 7))
        );
    }

    [Theory]
    [InlineData(StopReason.Snap)]
    [InlineData(StopReason.Swollen)]
    [InlineData(StopReason.NoWeight)]
    [InlineData(StopReason.Numb)]
    public void What_is_seen_on_the_same_day_is_named(StopReason why) =>
        Assert.Equal(
            $"{ReturnWords.Of(why)} (left knee)",
            ReturnWords.Of(Pain(PainKind.SameDay, Entry with { Exercises = [Stopped(why), Stopped(StopReason.Dull)] }))
        );

    [Fact]
    public void Pain_says_how_much_it_was()
    {
        Assert.Equal(
            "pain of 4 out of 10 before it or on the morning after (left knee)",
            ReturnWords.Of(Pain(PainKind.AboveStop, Entry, 4))
        );
        Assert.Equal(
            "worse on the morning after: pain of 4 out of 10 (left knee)",
            ReturnWords.Of(Pain(PainKind.NextMorning, Entry, 4))
        );
        Assert.Equal("worse on the morning after (left knee)", ReturnWords.Of(Pain(PainKind.NextMorning, Entry)));
    }

    private static ReturnedPain Pain(PainKind kind, LogEntry entry, int? level = null) =>
        new(kind, new(Region.Find("knee"), Side.Left), entry, level, [], PainStep.First);

    private static LoggedExercise Stopped(StopReason? why) =>
        new(new("sway"), null, null, null, "", null, why is not null, why, []);
}
