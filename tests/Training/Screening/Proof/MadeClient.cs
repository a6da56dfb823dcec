namespace Gradus.Tests.Trainings;

/// <param name="Limits">"effort at most 60 %" and the like.</param>
internal sealed record MadeClearance(string Condition, DateOnly On, DateOnly Until, string[] Limits);

/// <summary>What is done from a week on.</summary>
/// <param name="Line">The number of the exercise's line; null for its easier or harder version.</param>
internal sealed record MadeWeek(int Week, int? Line, string? Version);

/// <param name="Side">left, right, "rear leg", "each side"; null for an exercise without sides.</param>
/// <param name="Weeks">Empty for an exercise whose dose is the same in every week.</param>
internal sealed record MadeUse(string Exercise, string? Side, int From, int Until, MadeWeek[] Weeks);

/// <param name="IsAlternate">Whether the client may choose it instead of the first session.</param>
internal sealed record MadeSession(MadeUse[] Uses, bool IsAlternate);

/// <summary>One client of a made practice: one case.</summary>
/// <param name="Answers">By the id of the condition; one that is missing was not asked.</param>
/// <param name="Plays">left or right, as the stance is written.</param>
internal sealed record MadeClient(
    string Id,
    string Plays,
    string Born,
    DateOnly? Guardian,
    DateOnly Agreed,
    DateOnly Answered,
    DateOnly Start,
    int Weeks,
    SortedDictionary<string, string> Answers,
    MadeClearance[] Clearances,
    MadeSession[] Sessions
)
{
    /// <summary>What came back, in the order of the days.</summary>
    public MadeEntry[] Log { get; init; } = [];

    private static readonly string[] Health =
    [
        .. FloorAnswers.Ids.Where(id => id is not "regularly-active" and not "pain-now"),
        .. SecondFloor.Diseases,
        "signs-or-symptoms",
        "signs-or-symptoms",
        "raised-blood-pressure",
        "eye-pressure-or-retina",
    ];

    /// <summary>The highest that is trained with is 5, and 2 with anything.</summary>
    private static readonly string[] Pains =
    [
        "1 left ankle",
        "2 right knee",
        "3 left knee",
        "3 lower-back",
        "4 left wrist",
        "5 right shoulder",
        "6 left ankle",
        "6 right wrist",
        "7 knee",
        "8 lower-back",
        "9 whole body",
        "6 left hip",
        "[1 neck, 7 right ankle]",
        "[2 left foot, 4 head]",
        "4 neck",
        "5 upper-back",
        "3 whole body",
        "1 chest",
        "3 chest",
        "[2 chest, 4 right elbow]",
        "6 chest",
        "4 left groin",
        "5 right thigh",
        "3 left calf",
        "4 right calf",
        "5 ribs",
        "3 belly",
        "4 head",
        "6 head",
        "4 left foot",
        "5 right hand",
        "3 ankle",
    ];
    private static readonly string[] Limits =
    [
        "effort at most 50 %",
        "effort at most 80 %",
        "hold at most 20 s",
        "hold at most 40 s",
        "no end-range trunk bending",
        "not lying on the front",
    ];
    private static readonly string[] BornDays =
    [
        "1950",
        "1962",
        "1962-01-20",
        "1962-02-20",
        "2014",
        "2013",
        "2014-01-04",
        "2014-01-12",
        "1980",
        "1990",
        "1999",
        "2008",
        "2009",
        "2008-12-31",
        "2009-01-04",
        "2009-01-05",
        "2012",
    ];

    public static MadeClient Of(Reading.Chance chance, string id, MadeLibrary library)
    {
        var start = new DateOnly(2027, 1, 4).AddDays(7 * chance.Below(3));
        var weeks = 2 + chance.Below(6);
        var answers = AnswersOf(chance);
        var born = chance.Below(3) == 0 ? chance.Of(BornDays) : "1985";
        DateOnly? guardian = born != "1985" && chance.Below(2) == 0 ? start.AddDays(chance.Of([-5, -1, 0, 1])) : null;
        return new(
            id,
            chance.Of(["left", "right"]),
            born,
            guardian,
            start.AddDays(chance.Below(12) == 0 ? 1 : -30),
            start.AddDays(-chance.Of([10, 20, 30, 40, 200])),
            start,
            weeks,
            answers,
            [.. ToClear(answers, born).SelectMany(id => ClearancesOf(chance, id, start, start.AddDays((7 * weeks) - 1)))],
            SessionsOf(chance, library, weeks)
        );
    }

    /// <summary>What counts as answered, whichever way it was said: pain in the chest is a symptom, and from 65 on follows from
    /// the day of birth. Null where it was not asked.</summary>
    public string? AnswerTo(string condition, ProofSlip slip)
    {
        if (condition == SecondFloor.From65)
            return slip != ProofSlip.AgeOf65Forgotten && IsFrom65(slip) ? "yes" : "no";
        return condition == "signs-or-symptoms" && SecondReturned.SignCounts(this, slip) ? "yes" : Said(condition, slip);
    }

    /// <summary>The same without what came back.</summary>
    public string? Said(string condition, ProofSlip slip)
    {
        var answer = Answers.GetValueOrDefault(condition);
        var hurts = condition == "signs-or-symptoms" && SecondPain.Of(this).Any(p => p.Place == "chest" && p.Level > 0);

        // Pain in the chest is one of the symptoms, whatever was answered about them, and where nothing was.
        return answer != "yes" && hurts && slip != ProofSlip.ChestPainIsNoSymptom ? "yes" : answer;
    }

    /// <summary>A bare year is its last day: who may be too young is.</summary>
    public DateOnly BornAtLast(ProofSlip slip) => BornOn(slip == ProofSlip.BareYearIsItsFirstDay ? "-01-01" : "-12-31");

    /// <summary>On any day of the programme; a bare year is its first day: who may be as old is.</summary>
    private bool IsFrom65(ProofSlip slip) =>
        BornOn(slip == ProofSlip.BareYearOf65IsItsLastDay ? "-12-31" : "-01-01").AddYears(65) <= Start.AddDays((7 * Weeks) - 1);

    private DateOnly BornOn(string ofYear) =>
        DateOnly.ParseExact(
            Born.Length == 4 ? Born + ofYear : Born,
            "yyyy-MM-dd",
            System.Globalization.CultureInfo.InvariantCulture
        );

    private static IEnumerable<string> ToClear(SortedDictionary<string, string> answers, string born)
    {
        foreach (var (id, answer) in answers)
            if (answer.StartsWith("yes", StringComparison.Ordinal) && id != "regularly-active")
                yield return id;
        if (
            answers.GetValueOrDefault("signs-or-symptoms") == "no"
            && answers.GetValueOrDefault("pain-now", "0").Contains("chest")
        )
            yield return "signs-or-symptoms";
        if (born.CompareTo("1963") < 0)
            yield return SecondFloor.From65;
    }

    private static SortedDictionary<string, string> AnswersOf(Reading.Chance chance)
    {
        var answers = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var id in FloorAnswers.Ids)
            answers[id] = id == "pain-now" ? "0" : "no";
        foreach (var condition in MadeLibrary.Own)
            answers[condition.Id] = "no";
        answers["regularly-active"] = chance.Of(["yes", "no"]);
        for (var times = chance.Below(4); times > 0; times--)
        {
            var own = chance.Of(MadeLibrary.Own);
            switch (chance.Below(12))
            {
                case 0:
                    answers.Remove(chance.Of(FloorAnswers.Ids));
                    break;
                case 1:
                    answers[own.Id] = "not asked";
                    break;
                case 2 or 3:
                    answers["pain-now"] = chance.Of(Pains);
                    break;
                case 4 or 5 or 6:
                    answers[chance.Of(Health)] = "yes";
                    break;
                case 7:
                    answers[own.Id] = "yes";
                    break;
                default:
                    answers[own.Id] = own.IsSided ? chance.Of(["yes, left", "yes, right"]) : "yes";
                    break;
            }
        }

        return answers;
    }

    /// <summary>None; one that covers the programme, with a limit or without; one that begins late or ends early; two without a
    /// gap or with one; one that is old.</summary>
    private static IEnumerable<MadeClearance> ClearancesOf(Reading.Chance chance, string condition, DateOnly start, DateOnly end)
    {
        string[] limits =
            chance.Below(2) == 0 ? []
            : chance.Below(4) == 0 ? [Limits[1], Limits[3]]
            : [chance.Of(Limits)];
        var middle = start.AddDays(chance.Below(end.DayNumber - start.DayNumber));
        return chance.Below(11) switch
        {
            0 => [],
            1 => [new(condition, middle, end.AddYears(1), limits)],
            2 => [new(condition, start.AddDays(-20), middle, limits)],
            3 => [new(condition, start.AddDays(-20), middle, limits), new(condition, middle.AddDays(1), end, [])],
            4 => [new(condition, start.AddDays(-20), middle, []), new(condition, middle.AddDays(2), end.AddDays(50), limits)],
            5 or 8 or 9 => [new(condition, end.AddYears(-1).AddDays(chance.Below(3) - 1), end.AddYears(2), limits)],
            6 => [new(condition, start, end, limits)],
            _ => [new(condition, start.AddDays(-30), end.AddDays(chance.Of([0, 10, -1])), limits)],
        };
    }

    private static MadeSession[] SessionsOf(Reading.Chance chance, MadeLibrary library, int weeks)
    {
        var sessions = new List<MadeSession> { new(UsesOf(chance, library, weeks, 2), false) };
        if (chance.Below(2) == 0)
            sessions.Add(new(UsesOf(chance, library, weeks, 1), false));
        if (chance.Below(2) == 0)
            sessions.Add(new(UsesOf(chance, library, weeks, 1), true));
        return [.. sessions];
    }

    private static MadeUse[] UsesOf(Reading.Chance chance, MadeLibrary library, int weeks, int number)
    {
        var first = chance.Below(library.Exercises.Length);
        return
        [
            .. Enumerable
                .Range(0, number)
                .Select(i => UseOf(chance, library.Exercises[(first + i) % library.Exercises.Length], weeks)),
        ];
    }

    private static MadeUse UseOf(Reading.Chance chance, MadeExercise exercise, int weeks)
    {
        var side = exercise.IsPaired
            ? chance.Of(["left", "right", exercise.Part is "wrist" or "elbow" or "shoulder" ? "left" : "rear leg", "each side"])
            : null;
        var from = 1 + chance.Below(2);
        var until = chance.Below(3) == 0 ? Math.Max(from, weeks - 1) : weeks;
        if (exercise.IsFixed)
            return new(exercise.Id, side, from, until, []);
        MadeWeek[] entries =
        [
            .. Enumerable
                .Range(from, until - from + 1)
                .Where(w => w == from || chance.Below(3) == 0)
                .Select(w =>
                    chance.Below(4) == 0 && w > from
                        ? new MadeWeek(w, null, chance.Of(["easier", "harder"]))
                        : new MadeWeek(w, chance.Below(exercise.Dose.Lines.Length), null)
                ),
        ];
        return new(exercise.Id, side, from, until, entries);
    }
}
