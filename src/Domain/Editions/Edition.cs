namespace Gradus.Domain;

/// <summary>One published state of one client's programme, as it was recorded: <c>clients/ID/editions/1.yaml</c>.</summary>
/// <param name="Number">From 1; each that is recorded has one more than the last.</param>
/// <param name="Date">The day on which it was published.</param>
/// <param name="TrainingHash">Of everything that was asked, as <c>Training.Hash</c> gave it on that day.</param>
/// <param name="PlanHash">Of <see cref="Content"/>: 64 hexadecimal digits. Two editions are the same where it is the
/// same.</param>
/// <param name="Content">What was asked, and what the coach said.</param>
public sealed record Edition(int Number, DateOnly Date, string TrainingHash, string PlanHash, EditionContent Content, Location At)
{
    /// <summary>The folder inside a client's own.</summary>
    public const string Folder = "editions";

    public const string Ending = ".yaml";

    /// <summary>Inside the practice, with <c>/</c> between folders.</summary>
    public static string PathOf(ClientId client, int number) =>
        FormattableString.Invariant($"clients/{client}/{Folder}/{number}{Ending}");
}

/// <summary>What an edition asks of a client, and what the coach wrote and decided for it. The sentences of Gradus are not in it,
/// so that another wording of theirs makes no edition.</summary>
/// <param name="Programme">The key under which a browser keeps what was done, 16 hexadecimal digits: another one is another
/// programme.</param>
/// <param name="Sessions">Those of the programme and the coach's own alternatives, in their order; without the short versions,
/// which are made of the uses that are kept.</param>
/// <param name="Exercises">Each that is done in some week once.</param>
/// <param name="Cautions">Those of all exercises, worst first.</param>
/// <param name="Clearances">A line for each: condition, who cleared it, from when to when, within what.</param>
/// <param name="Restrictions">A line for each, likewise.</param>
/// <param name="Others">What else stands on the pages, by a name of its own, as a hash.</param>
public sealed record EditionContent(
    string Programme,
    string Title,
    DateOnly Start,
    int Weeks,
    Series<EditionSession> Sessions,
    Series<EditionExercise> Exercises,
    Series<EditionCaution> Cautions,
    Series<string> Clearances,
    Series<string> Restrictions,
    Series<EditionPart> Others
)
{
    /// <summary>When nothing is done, in the order of the days.</summary>
    public Series<Pause> Pauses { get; init; } = [];

    /// <summary>The last day of the last week.</summary>
    public DateOnly End => LastDayOf(Weeks);

    public DateOnly LastDayOf(int week) => new WeekCalendar(Start, Pauses).LastDayOf(week);
}

/// <param name="Days">"Mon, Thu", "every 2 days", "3 times a week", "before play"</param>
/// <param name="InsteadOf">The name of the session that it may stand in for; empty for a session of the programme.</param>
/// <param name="Times">How often in each week, from the first; 0 where it is not done, or goes by the days of play.</param>
/// <param name="Uses">In their order.</param>
public sealed record EditionSession(string Name, string Days, string InsteadOf, Series<int> Times, Series<EditionUse> Uses);

/// <summary>One exercise in one session.</summary>
/// <param name="Rounds">"1: 3 times, rest 60 s" for the first rounds of the session; empty where it is done by itself.</param>
/// <param name="IsKept">Whether it is kept on a day with little time.</param>
/// <param name="MoveOn">A hash of what must be true before the client goes on; empty where nothing must.</param>
/// <param name="Asks">In the order of the weeks.</param>
public sealed record EditionUse(ExerciseId Exercise, string Rounds, bool IsKept, string MoveOn, Series<EditionDose> Asks)
{
    /// <summary>In rising order.</summary>
    public IEnumerable<int> Weeks => Asks.SelectMany(a => Enumerable.Range(a.From, a.To - a.From + 1));

    /// <summary>Null where it is not done in that week.</summary>
    public EditionDose? In(int week) => Asks.FirstOrDefault(a => a.From <= week && week <= a.To);
}

/// <summary>What weeks in a row ask.</summary>
/// <param name="From">The first week, from 1.</param>
/// <param name="To">The last.</param>
/// <param name="Side">"left", "each side, plus 1 x on left"; empty where there is none.</param>
/// <param name="Dose">The canonical line without its side.</param>
public sealed record EditionDose(int From, int To, string Side, string Dose)
{
    /// <summary>The same as a dose, where its line was read from a record and is understood today; otherwise null.</summary>
    public Aside<SettledDose?> Asked { get; init; } = Aside.Of<SettledDose?>(null);
}

/// <param name="Words">A hash of what the coach wrote of it, and of what it asks of a body.</param>
public sealed record EditionExercise(ExerciseId Id, string Title, string Words);

/// <param name="Words">A hash of its text.</param>
/// <param name="Exercises">Those of the programme that carry it.</param>
public sealed record EditionCaution(CautionId Id, CautionKind Kind, string Title, string Words, Series<ExerciseId> Exercises);

/// <param name="Name">"letter", "contact"</param>
public sealed record EditionPart(string Name, string Words);
