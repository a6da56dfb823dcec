using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Everything about one client's programme in which no word of any language stands: what is done, on which side, for how
/// long, on which days, and what screening says of it. A value: two are equal where the same is asked of the same client; places
/// in files ride along for findings and count in neither equality nor hash.</summary>
/// <param name="Start">The first day of week 1.</param>
/// <param name="Stances">How the client plays, and which side is which by that.</param>
/// <param name="Exercises">Each exercise that is done in some week once, in the order the sessions meet them.</param>
/// <param name="Uses">In the order of the sessions; one that could not be settled has no weeks.</param>
/// <param name="Loads">Empty where some dose takes longer than 4 h.</param>
/// <param name="Asked">The conditions that concern this programme, in the order they are asked.</param>
/// <param name="GoodUntil">The last day on which the pages may be used.</param>
/// <param name="Refusals">Why nothing can be planned; empty where it can.</param>
public sealed record Training(
    ClientId Client,
    DateOnly Start,
    Stances Stances,
    Series<TrainedExercise> Exercises,
    Series<Use> Uses,
    Series<TrainedSession> Sessions,
    Series<TrainedWeek> Weeks,
    Series<TrainedDate> Dates,
    Series<WeekLoad> Loads,
    Series<ConditionId> Asked,
    DateOnly GoodUntil,
    DayRules Rules,
    Series<Refusal> Refusals
)
{
    /// <summary>Whether no dose is too long to be timed.</summary>
    public bool IsCountable => Refusals.All(r => r is not Refusal.TooLong);

    /// <summary>The same for equal trainings, on every machine and in every run: SHA-256 of every fact, in hexadecimal
    /// digits.</summary>
    public string Hash() => Fingerprint.Of(this);

    /// <summary>Whatever stands in the way, it gives what can be given, and <see cref="Refusals"/> says the rest.</summary>
    public static Training Of(Practice practice, Client client)
    {
        var (programme, settings) = (client.Programme, practice.Card.Settings);
        var stances = Stances.Of(practice, client);
        var uses = Trainings.Uses.Of(practice, client, stances);
        var refusals = RefusalsOf(client, stances, uses).ToSeries();
        var countable = refusals.All(r => r is not Refusal.TooLong);
        var sessions = Enumerable
            .Range(1, programme.AllSessions.Count)
            .Select(number => TrainedSession.Of(number, programme, uses, settings, countable))
            .ToSeries();
        var weeks = Enumerable.Range(1, programme.Weeks).Select(week => TrainedWeek.Of(week, programme, sessions)).ToSeries();
        var exercises = uses.Where(u => u.Weeks.Count > 0)
            .Select(u => practice.Find(u.Exercise.Id))
            .OfType<Exercise>()
            .DistinctBy(e => e.Id)
            .ToArray();
        return new(
            client.Id,
            programme.Start,
            stances,
            exercises.Select(e => TrainedExercise.Of(practice, client, e)).ToSeries(),
            uses,
            sessions,
            weeks,
            TrainedDate.Of(client, weeks).ToSeries(),
            countable ? Trainings.Loads.Of(programme, uses) : [],
            practice
                .Conditions.Where(c => c.IsAlwaysAsked || exercises.Any(e => Screening.Matters(c, e)))
                .Select(c => c.Id)
                .ToSeries(),
            Validity.Of(practice, client, uses),
            DayRules.Of(settings),
            refusals
        );
    }

    private static IEnumerable<Refusal> RefusalsOf(Client client, Stances stances, Series<Use> uses)
    {
        if (stances.Sports.Count < client.Sports.Count)
            yield return new Refusal.SportUnread();
        foreach (var use in uses)
        {
            if (use.Unresolved is { } name)
                yield return new Refusal.SideUnresolved(use.Exercise.Id, use.Session, name);
            if (use.Weeks.Any(w => w.Counted is null))
                yield return new Refusal.TooLong(use.Exercise.Id, use.Session);
        }
    }
}

/// <summary>A reason why nothing can be planned; a rule or a fault of reading says it to the coach.</summary>
public abstract record Refusal
{
    private Refusal() { }

    /// <summary>A sport of the client could not be read, so nobody knows which side is which.</summary>
    public sealed record SportUnread : Refusal;

    /// <summary>A name of a side means no side of this client.</summary>
    public sealed record SideUnresolved(ExerciseId Exercise, int Session, SideName Name) : Refusal;

    /// <summary>A dose takes longer than 4 h.</summary>
    public sealed record TooLong(ExerciseId Exercise, int Session) : Refusal;
}

/// <summary>What a page needs to know to find the day's session.</summary>
/// <param name="DaysBackOneWeek">After more days than these without training the last week is offered again.</param>
/// <param name="DaysBackToFirst">After more days than these the first.</param>
/// <param name="EaseOffAbove">Pain, 0 to 10, above which the client does less today.</param>
/// <param name="StopAbove">Pain, 0 to 10, above which the client does not train today.</param>
public sealed record DayRules(int DaysBackOneWeek, int DaysBackToFirst, int EaseOffAbove, int StopAbove)
{
    public static DayRules Of(PracticeSettings settings) =>
        new(settings.DaysBackOneWeek, settings.DaysBackToFirst, settings.EaseOffAbove, settings.StopAbove);
}
