using System.Globalization;

namespace Gradus.Domain;

/// <summary>Somebody who trains alone with what the coach hands over.</summary>
/// <param name="Sports">Every sport that the client plays, at least one, each once.</param>
/// <param name="Born">A bare year keeps only the year.</param>
/// <param name="Country">ISO 3166 two letters, as the emergency texts are keyed.</param>
/// <param name="Minutes">The time the client has for a session.</param>
public sealed record Client(
    ClientId Id,
    string Name,
    Series<SportStance> Sports,
    Birth Born,
    Mention<string> Country,
    string Language,
    ZoneName Zone,
    Series<DayOfWeek> Days,
    TimeOnly? Hour,
    int Minutes,
    Series<string> Equipment,
    Agreement Agreed,
    DateOnly Answered,
    Series<Answer> Answers,
    Series<Clearance> Clearances,
    Series<Restriction> Restrictions,
    Programme Programme,
    Series<RangeReading> Readings,
    Location At
)
{
    public const int MostMinutes = 240;

    /// <summary>Null where the client goes on.</summary>
    public Stopped? Stopped { get; init; }

    public bool HasStopped(DateOnly today) => Stopped is { } stopped && stopped.On <= today;

    /// <summary>Where the client's site is hosted; null where it is not.</summary>
    public SiteLink? Link { get; init; }

    /// <summary>What came back, each session once, in the order of the days; of those in <c>log.csv</c> that tell of the same
    /// session the last one counts.</summary>
    public Series<LogEntry> Log { get; init; } = [];

    /// <summary>What was published so far, as far as its records could be read, in the order of their numbers.</summary>
    public Series<Edition> Editions { get; init; } = [];

    /// <summary>The highest number that a record has, read or not; 0 where nothing was recorded.</summary>
    public int LastEdition { get; init; }

    /// <summary>What the client said, or what follows from it: of the age from when they were born; and pain in the chest,
    /// however little, is a sign of the heart. A sign that cannot wait in what came back is a yes, whatever was answered before
    /// it.</summary>
    public Answer? AnswerTo(ConditionId condition) =>
        SignFor(condition) is { } sign ? new(condition, new Reply.Yes(null), sign.At) : Told(condition);

    /// <summary>The entry of the log that counts as a yes to that condition, where the client did not say yes: the last sign that
    /// cannot wait, whatever programme it was told in. Null where there is none, and where a clinician's leave that was dated
    /// after it has run its time and the client was asked again since.</summary>
    public LogEntry? SignFor(ConditionId condition) =>
        condition == AlwaysAsked.Symptoms && Told(condition)?.Reply is not Reply.Yes ? OpenSign : null;

    /// <summary>The first day on which who clears it can have known of all that was said of it: that of the answers, or the day
    /// after the last sign in the log.</summary>
    public DateOnly ClearableFrom(ConditionId condition) =>
        condition != AlwaysAsked.Symptoms || OpenSign is not { } sign ? Answered
        : SignFor(condition) is null && Answered > sign.Day ? Answered
        : sign.Day.AddDays(1);

    /// <summary>The last sign that cannot wait in what came back, whatever was answered since; null where there is none, or its
    /// leave has run its time.</summary>
    public LogEntry? OpenSignFor(ConditionId condition) => condition == AlwaysAsked.Symptoms ? OpenSign : null;

    private LogEntry? OpenSign =>
        Log.Where(e => e.IsSign()).MaxBy(e => e.Day) is { } last
        && !Clearances.Any(c => c.Condition == AlwaysAsked.Symptoms && c.On > last.Day && c.Until < Answered)
            ? last
            : null;

    private Answer? Told(ConditionId condition)
    {
        if (condition == AlwaysAsked.Age)
            return new(condition, Born.IsIn(AgeBand.Over65, Programme) ? new Reply.Yes(null) : new Reply.No(), At);
        if (
            condition == AlwaysAsked.Symptoms
            && Given(AlwaysAsked.PainNow) is { Reply: Reply.Pains pains } hurting
            && pains.Places.Any(p => p.Where.Name == "chest")
        )
            return new(condition, new Reply.Yes(null), hurting.At);
        return Given(condition);
    }

    private Answer? Given(ConditionId condition) => Answers.FirstOrDefault(a => a.Condition == condition);
}

/// <summary>When somebody was born, as far as it is known.</summary>
/// <param name="Date">Null where only the year was given.</param>
public sealed record Birth(int Year, DateOnly? Date)
{
    /// <summary>Whether somebody is of that age on any day of a programme. Of a bare year the day is taken that brings more care:
    /// the last for under 18, the first for over 65. Over 65 begins on the 65th birthday.</summary>
    public bool IsIn(AgeBand band, Programme programme) =>
        band switch
        {
            AgeBand.Under18 => AgeOn(programme.Start, Date ?? new DateOnly(Year, 12, 31)) < 18,
            AgeBand.Over65 => AgeOn(programme.End, Date ?? new DateOnly(Year, 1, 1)) >= 65,
            _ => throw new ArgumentOutOfRangeException(nameof(band)),
        };

    /// <summary>Years of age on that day, the lower of two where only the year is known.</summary>
    public int AtLeastOn(DateOnly day) => AgeOn(day, Date ?? new DateOnly(Year, 12, 31));

    private static int AgeOn(DateOnly day, DateOnly born) => day.Year - born.Year - (day < Birthday(born, day.Year) ? 1 : 0);

    /// <summary>Who is born on 29 February is a year older on 1 March of a common year.</summary>
    private static DateOnly Birthday(DateOnly born, int year) =>
        born is { Month: 2, Day: 29 } && !DateTime.IsLeapYear(year) ? new(year, 3, 1) : new(year, born.Month, born.Day);
}

public enum AgeBand
{
    Under18,
    Over65,
}

/// <param name="Stance">Right for the right-handed stance of the sport, left for its mirror image.</param>
public sealed record SportStance(Mention<SportId> Sport, Side Stance);

public sealed record Agreement(DateOnly Training, DateOnly? Guardian);

/// <summary>What the client said of one condition. A condition without an answer was not asked, which is not "no".</summary>
public sealed record Answer(ConditionId Condition, Reply Reply, Location At);

public abstract record Reply
{
    private Reply() { }

    public sealed record No : Reply;

    /// <param name="Side">The side it is on; null means both, or a condition without sides.</param>
    public sealed record Yes(Side? Side) : Reply;

    /// <summary>Something hurts: the answer to the question about pain at the moment.</summary>
    /// <param name="Places">At least one.</param>
    public sealed record Pains(Series<Pain> Places) : Reply;

    /// <summary>Something was answered, but what is written cannot be read, which is a finding where it is written. Nothing is
    /// allowed by it.</summary>
    public sealed record Unread : Reply;
}

/// <param name="Level">1 to 10, the worst one can think of.</param>
/// <param name="Side">Null where the region has no sides, or both hurt.</param>
public sealed record Pain(int Level, Region Where, Side? Side)
{
    /// <summary>"4 left knee", as it is written in an answer.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Level} {Where.On(Side)}");
}

/// <summary>A licensed clinician's leave for one condition.</summary>
/// <param name="On">The first day it holds.</param>
/// <param name="Until">The last day it holds.</param>
public sealed record Clearance(
    ConditionId Condition,
    string By,
    DateOnly On,
    DateOnly Until,
    Series<ClearanceLimit> Limits,
    Location At
);

public abstract record ClearanceLimit(string Words)
{
    /// <param name="Percent">1 to 100.</param>
    public sealed record EffortAtMost(int Percent, string Words) : ClearanceLimit(Words);

    public sealed record HoldAtMost(Seconds Seconds, string Words) : ClearanceLimit(Words);

    public sealed record NoEndRangeTrunkBending(string Words) : ClearanceLimit(Words);

    public sealed record NotLyingOnTheFront(string Words) : ClearanceLimit(Words);

    public sealed record NotLyingOnTheBack(string Words) : ClearanceLimit(Words);
}
