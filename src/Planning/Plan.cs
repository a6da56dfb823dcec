using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Everything one client's site must say, before any word of HTML. Rendering writes it down; auditing holds the finished
/// pages against it. Texts are in the client's language, sides are the client's own, times are settled to the second.</summary>
/// <param name="GoodUntil">How long the pages may be used.</param>
/// <param name="Course">What a page's script needs to find this week.</param>
/// <param name="Stances">One for each sport of the client.</param>
/// <param name="Exercises">Each exercise of the programme once, in the order the sessions meet them.</param>
/// <param name="Cautions">Those of all exercises, merged, worst first.</param>
/// <param name="Restrictions">What a clinician asked to be spared, on every page with exercises.</param>
/// <param name="Concerns">The conditions that some exercise asks about, what was answered with yes first.</param>
/// <param name="Asked">The day on which the client was asked about them, as a sentence.</param>
/// <param name="PainRule">How much pain is all right, now and on the next morning.</param>
/// <param name="Progress">What was measured; null where nothing was.</param>
/// <param name="Retest">Null where nobody has said when it is measured again.</param>
/// <param name="Pictures">Every picture that some text of the plan shows, by its path in the practice.</param>
/// <param name="Clips">Every clip, under its path in the site; their stills are among the pictures.</param>
public sealed record Plan(
    ClientId Client,
    string ClientName,
    Words Words,
    Publisher Publisher,
    PlannedEmergency Emergency,
    PlannedEnd GoodUntil,
    PlannedProgramme Programme,
    PlannedCourse Course,
    Series<PlannedStance> Stances,
    PlannedHealth Health,
    Series<PlannedSession> Sessions,
    Series<PlannedWeek> Weeks,
    Series<PlannedDate> Dates,
    Series<PlannedExercise> Exercises,
    Series<PlannedCaution> Cautions,
    Series<PlannedNote> Restrictions,
    Series<PlannedConcern> Concerns,
    string Asked,
    PlannedNote PainRule,
    PlannedProgress? Progress,
    PlannedRetest? Retest,
    Series<Picture> Pictures,
    Series<Clip> Clips
)
{
    /// <summary>What is other than in the edition before; null where nothing is said of it.</summary>
    public PlannedNews? News { get; init; }

    /// <summary>Start and end of each exercise that is drawn, each once.</summary>
    public Series<PlannedFigure> Figures { get; init; } = [];

    /// <summary>The number of the edition that this is, or will be once it is recorded; from 1.</summary>
    public int Edition { get; init; } = 1;

    /// <summary>Puts the words of one client's site to what is asked of them.</summary>
    /// <exception cref="ArgumentException">The training has refusals, or a text that it needs could not be read; check the
    /// practice first.</exception>
    public static Plan For(Training training, Texts texts, ClientRanges ranges) =>
        GlossaryMarks.Of(PlanWords.Of(training, texts, ranges), texts.Glossary);

    /// <summary>The same wherever the same is to be shown, from the same places of the sources, on every machine; 64 hexadecimal
    /// digits.</summary>
    public string Hash() => PlanHash.Of(this);

    /// <summary>Whether the client measures something alone.</summary>
    public bool Measures => Sessions.Any(s => s.Uses.Any(u => u.Unit.Length > 0));

    /// <summary>The words that a page has to explain, in the order in which its coach-written text has them.</summary>
    public Series<Inline.Term> TermsOn(string path) =>
        TextsOn(path).SelectMany(p => p.Inlines()).OfType<Inline.Term>().DistinctBy(t => t.Number).ToSeries();

    private IEnumerable<Prose> TextsOn(string path)
    {
        if (path == PagePath.Home)
            return [Programme.Letter];
        if (path == PagePath.BeforeYouStart)
            return Cautions.Select(c => c.Body).Append(Publisher.Scope);
        if (Sessions.FirstOrDefault(s => s.Path == path) is { } session)
            return CautionsFor(session.Exercises).Select(c => c.Body).Concat(session.Uses.SelectMany(u => u.Text.Instructions));
        return Exercises
            .Where(e => e.Path == path)
            .SelectMany(e => CautionsFor([e.Id]).Select(c => c.Body).Prepend(e.Text.Why).Concat(e.Text.Instructions));
    }

    /// <summary>That session of the programme and those that the client may choose instead; for one of these all of them as well.
    /// Those with nothing to do are left out.</summary>
    public Series<PlannedSession> VersionsOf(PlannedSession session) =>
        Sessions.Where(s => (s.InsteadOf ?? s.Number) == (session.InsteadOf ?? session.Number) && s.Weeks.Count > 0).ToSeries();

    /// <summary>What is said in that week of measuring again, or behind the last week where that is null; null where it is
    /// nothing.</summary>
    public string? RetestIn(int? week) => Retest is { } retest && retest.Week == week ? retest.Sentence : null;

    public PlannedExercise Exercise(ExerciseId id) => Exercises.First(e => e.Id == id);

    /// <summary>The cautions that belong to any of those exercises, merged, worst first, each naming only those of them that it
    /// belongs to.</summary>
    public Series<PlannedCaution> CautionsFor(IEnumerable<ExerciseId> exercises)
    {
        var shown = exercises.ToHashSet();
        return Cautions
            .Where(c => c.Exercises.Any(shown.Contains))
            .Select(c => c with { Exercises = c.Exercises.Where(shown.Contains).ToSeries() })
            .ToSeries();
    }

    /// <summary>What the page at that path says before it tells anybody to move, where it has those exercises.</summary>
    public PageSigns SignsOn(string path, IEnumerable<ExerciseId> exercises) => PageSigns.Of(this, path, exercises);
}

/// <param name="Day">The last day.</param>
/// <param name="Sentence">What every page says of it.</param>
/// <param name="Past">What it says after that day.</param>
public sealed record PlannedEnd(DateOnly Day, string Sentence, string Past);

/// <summary>Whom the client calls in an emergency.</summary>
/// <param name="Call">As it is read.</param>
/// <param name="Address">Where a link to it leads: "tel:999".</param>
/// <param name="Sentence">What every page says, each number in it a link.</param>
/// <param name="ChestFirst">What is said first where somebody is in pain, likewise.</param>
public sealed record PlannedEmergency(string Call, string Address, Series<Inline> Sentence, Series<Inline> ChestFirst);

/// <summary>Who speaks.</summary>
public sealed record Publisher(string Practice, string Coach, Contact Contact, Prose Scope);

/// <param name="End">The last day of the last week.</param>
/// <param name="Minutes">The time the client has for a session.</param>
/// <param name="MoveOn">When to go on from one stage of training to the next.</param>
public sealed record PlannedProgramme(
    string Title,
    DateOnly Start,
    DateOnly End,
    int Weeks,
    int Minutes,
    Series<PlannedCheck> MoveOn,
    Prose Letter
);

/// <summary>A checklist.</summary>
/// <param name="Heading">What it is for.</param>
public sealed record PlannedCheck(string Heading, Series<string> Conditions);

/// <summary>How the client plays a sport, and which side is which by that.</summary>
/// <param name="Answer">What the client answered the stance question, as a sentence, which names the sport where there are
/// several.</param>
/// <param name="OtherAnswer">What somebody would have answered who plays the other way round.</param>
/// <param name="Roles">What each side's name of the sport means for this client.</param>
/// <param name="Sentences">What page one says: the question with its answer, and what follows from it.</param>
public sealed record PlannedStance(
    string Sport,
    string Question,
    string Answer,
    string OtherAnswer,
    Series<PlannedRole> Roles,
    Series<string> Sentences
);

/// <param name="Role">front leg, weapon arm</param>
/// <param name="Side">left, right</param>
/// <param name="Sentence">"Your front leg is your left one."</param>
/// <param name="OtherSentence">The same with the other side, which would be wrong.</param>
/// <param name="Clause">"your front leg is your LEFT leg", as it stands among the sentences of the stance.</param>
/// <param name="OtherClause">The same with the other side, which would be wrong.</param>
public sealed record PlannedRole(
    string Role,
    string Side,
    string Sentence,
    string OtherSentence,
    string Clause,
    string OtherClause
);

/// <summary>One caution with the exercises it belongs to.</summary>
/// <param name="Exercises">In the order of the plan; at least one.</param>
public sealed record PlannedCaution(CautionId Id, CautionKind Kind, string Title, Prose Body, Series<ExerciseId> Exercises)
{
    /// <summary>The lines that must stand together and unaltered on a page.</summary>
    public IEnumerable<string> Lines() => Body.Lines().Prepend(Title);
}

/// <summary>One exercise as this client does it.</summary>
/// <param name="Text">Filled with the ranges over all of its uses.</param>
/// <param name="Easier">The exercise of this plan that is its easier version; null where there is none in it.</param>
/// <param name="Harder">The exercise of this plan that is its harder version; null where there is none in it.</param>
public sealed record PlannedExercise(
    ExerciseId Id,
    string Title,
    string Path,
    string Trains,
    string Stage,
    string Position,
    Series<string> Equipment,
    ExerciseText Text,
    Series<PlannedUse> Uses,
    ExerciseId? Easier,
    ExerciseId? Harder
);

/// <summary>The dose that weeks in a row share.</summary>
/// <param name="Weeks">In rising order, without a gap.</param>
/// <param name="Change">What is other than before, in plain words.</param>
/// <param name="Seconds">Dose time: without get ready, transitions and the rests of rounds.</param>
public sealed record PlannedDose(Series<int> Weeks, string Change, Seconds Seconds, bool About, SettledDose Dose);

/// <param name="Number">From 1, in the coach's order; behind the sessions of the programme those that the client may choose
/// instead.</param>
/// <param name="InsteadOf">The number of the session that it may stand in for; null for a session of the programme
/// itself.</param>
/// <param name="Kind">Why it may stand in for that session; null for a session of the programme itself.</param>
/// <param name="IsShortened">Whether it is the kept part of that session, so that its doses are that session's.</param>
/// <param name="Days">When it is done, or when it may be chosen.</param>
/// <param name="Weekdays">Its fixed days; empty where there are none.</param>
/// <param name="Weeks">Weeks with the same steps together, in the order of their first week.</param>
public sealed record PlannedSession(
    int Number,
    string Name,
    string Path,
    int? InsteadOf,
    AlternateKind? Kind,
    bool IsShortened,
    string Days,
    Series<DayOfWeek> Weekdays,
    Series<string> Equipment,
    Series<PlannedUse> Uses,
    Series<PlannedWeeks> Weeks
)
{
    private const string NoValue = "–";

    /// <summary>What a column of a week is wide enough for: "150 s".</summary>
    private const int LongestInColumn = 5;

    public IEnumerable<ExerciseId> Exercises => Uses.Select(u => u.Exercise).Distinct();

    /// <summary>The weeks in which there is something to do, in rising order.</summary>
    public IEnumerable<int> AllWeeks => Weeks.SelectMany(w => w.Weeks).Order();

    /// <summary>A row of its table: a cell for each week, or one for all of them where they say the same, or for neighbours
    /// that say the same at more length than a column has room for.</summary>
    /// <returns>How many weeks each cell is for, and what it says; a dash where the week has nothing of it.</returns>
    public IEnumerable<(int Weeks, string Said)> Cells(PlannedRow row)
    {
        var weeks = AllWeeks.ToArray();
        if (row.Values is [var same] && same.Weeks.Count == weeks.Length)
            return [(weeks.Length, same.Said)];
        var cells = new List<(int Weeks, string Said)>();
        foreach (var said in weeks.Select(w => row.Values.FirstOrDefault(v => v.Weeks.Contains(w))?.Said ?? NoValue))
            if (said.Length > LongestInColumn && cells is [.., var last] && last.Said == said)
                cells[^1] = (last.Weeks + 1, said);
            else
                cells.Add((1, said));
        return cells;
    }

    /// <summary>Its fixed days as a page writes them for its script: 1 for Monday to 7 for Sunday (ISO 8601), with blanks
    /// between.</summary>
    public string WeekdayNumbers() => string.Join(' ', Weekdays.Select(d => d == DayOfWeek.Sunday ? 7 : (int)d));

    /// <summary>Its kind as a page writes it for its script: "short", "travel", "flare"; empty for a session of the programme
    /// itself.</summary>
    public string KindName() => Kind is { } kind ? Kebab.Of(kind.ToString()) : "";

    /// <summary>Its seconds in each week in which there is something to do, as a page writes them for its script: "1=610
    /// 2=727".</summary>
    public string Lengths() =>
        string.Join(
            ' ',
            Weeks
                .SelectMany(w => w.Weeks.Select(week => (Week: week, w.Total)))
                .OrderBy(w => w.Week)
                .Select(w => FormattableString.Invariant($"{w.Week}={w.Total.Value}"))
        );

    /// <summary>What each of its exercises loads on the client's own sides, over all weeks, as a page writes it for its script:
    /// "ankle-rock=ankle:left,ankle:right plank=lower-back".</summary>
    public string LoadedPlaces() => string.Join(' ', Uses.DistinctBy(u => u.Exercise).Select(u => PlacesLoaded.Of(u, Weeks)));
}

/// <summary>The timeline of a session in weeks that share it.</summary>
/// <param name="Heading">"Weeks 1 and 2"</param>
/// <param name="About">Whether some of it is counted by an average, such as repetitions without a tempo.</param>
public sealed record PlannedWeeks(Series<int> Weeks, string Heading, Series<Step> Steps, bool About)
{
    public Seconds Total => new(Steps.Sum(s => s.Seconds.Value));

    public TimeShares Shares => TimeShares.Of(Steps);
}

/// <summary>One session on one fixed day, or the day of measuring again.</summary>
/// <param name="Uid">The same as long as it is the same session of the same week, whatever its day and hour; made of ids, and
/// nobody's name can be read from it.</param>
/// <param name="Title">Says nothing of what is trained, or why.</param>
/// <param name="Note">How long it takes, and which page of the site it is on.</param>
/// <param name="Start">In UTC; null where there is no hour, so that it belongs to the whole day.</param>
/// <param name="Length">Zero where it is not known.</param>
public sealed record PlannedDate(string Uid, string Title, string Note, DateOnly Date, DateTime? Start, Seconds Length);
