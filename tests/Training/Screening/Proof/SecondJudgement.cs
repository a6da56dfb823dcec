namespace Gradus.Tests.Trainings;

/// <summary>The judgement a second time, and simply: for one client, sentence by sentence from what the screening promises, on
/// the made case itself and not on the practice that is read from it.</summary>
internal sealed class SecondJudgement(MadeLibrary library, MadeClient client, ProofSlip slip)
{
    private static readonly DateOnly Today = ScreeningProofTests.Today;

    private readonly SecondClearing clearing = new(client, slip);

    private DateOnly End => client.Start.AddDays((7 * client.Weeks) - 1);

    /// <summary>Everything that stands in the way, as "session exercise condition: kind" or "client: kind". Empty where the
    /// client may have a site.</summary>
    public SortedSet<string> Everything()
    {
        var all = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var (session, done) in Done())
            all.UnionWith(Against(session, done));
        all.UnionWith(AgainstClient(all));
        return all;
    }

    /// <summary>The titles of everything that is done in some week.</summary>
    public HashSet<string> Titles() => [.. Done().Select(d => d.Done.Exercise.Title)];

    /// <summary>The titles of what may not be done.</summary>
    public HashSet<string> Forbidden() =>
        [.. Done().Where(d => Against(d.Session, d.Done).Any()).Select(d => d.Done.Exercise.Title)];

    private IEnumerable<(int Session, MadeDone Done)> Done() =>
        from session in client.Sessions.Index()
        where slip != ProofSlip.AlternatesForgotten || !session.Item.IsAlternate
        from use in session.Item.Uses
        from done in DoneIn(use)
        where done.Weeks.Count > 0
        select (session.Index + 1, done);

    /// <summary>The exercise itself in its weeks, and each version in the weeks that take it.</summary>
    private IEnumerable<MadeDone> DoneIn(MadeUse use)
    {
        var exercise = library.Exercises.Single(e => e.Id == use.Exercise);
        var sides = SidesOf(use.Side);
        foreach (var version in new[] { null, "easier", "harder" })
        {
            var weeks = new List<(int, MadeLine)>();
            var done = version is null
                ? exercise
                : library.Exercises.SingleOrDefault(e => e.Id == (version == "easier" ? exercise.Easier : exercise.Harder));
            if (done is null || (slip == ProofSlip.VersionsForgotten && version is not null))
                continue;
            for (var week = use.From; week <= use.Until; week++)
            {
                var entry = use.Weeks.LastOrDefault(w => w.Week <= week) ?? new MadeWeek(week, 0, null);
                if (entry.Version == version)
                    weeks.Add((week, version is null ? exercise.Dose.Lines[entry.Line ?? 0] : done.Dose.Lines[0]));
            }

            yield return new(done, sides, slip == ProofSlip.OnlyTheFirstWeek ? [.. weeks.Take(1)] : weeks);
        }
    }

    /// <summary>"Left- and right-handed players swap roles": the rear leg of the right-handed is the left one.</summary>
    private string[] SidesOf(string? side) =>
        side switch
        {
            "left" or "right" => [side],
            "rear leg" => [client.Plays == "right" || slip == ProofSlip.StanceForgotten ? "left" : "right"],
            _ => slip == ProofSlip.EachSideIsTheLeft ? ["left"] : ["left", "right"],
        };

    private IEnumerable<string> Against(int session, MadeDone done)
    {
        foreach (
            var condition in FloorAnswers
                .Ids.Select(id => new MadeCondition(id, id == "numb-feet" ? "foot" : "whole body", false))
                .Concat(MadeLibrary.Own)
        )
        foreach (var kind in Kinds(condition, done))
            yield return $"{session} {done.Exercise.Id} {condition.Id}: {kind}";
    }

    private IEnumerable<string> Kinds(MadeCondition condition, MadeDone done)
    {
        var (exercise, loaded) = (done.Exercise, new SecondLoads(done, slip));
        var (notWith, clearFirst) = (exercise.NotWith.Contains(condition.Id), exercise.ClearFirst.Contains(condition.Id));
        var byLoad = condition.IsSided && (loaded.Says(condition.Where) || exercise.Part == condition.Where);
        var always = FloorAnswers.Ids.Contains(condition.Id) && slip != ProofSlip.FloorOnlyWhereNamed;
        if (!notWith && !clearFirst && !byLoad && !always)
            return client.Answers.GetValueOrDefault(condition.Id) == "yes" ? clearing.Limits(condition.Id, done) : [];
        if (!client.Answers.TryGetValue(condition.Id, out var answer) || answer == "not asked")
            return slip == ProofSlip.NotAskedIsNo ? [] : ["not asked"];
        if (condition.Id == "pain-now")
            return Pains(answer, loaded);
        if (!answer.StartsWith("yes", StringComparison.Ordinal) || condition.Id == "regularly-active")
            return [];
        string[] hurt =
            answer is "yes, left" ? ["left"]
            : answer is "yes, right" ? ["right"]
            : ["left", "right"];
        var isSided = answer != "yes" && slip != ProofSlip.SideOfTheAnswerForgotten;

        // "A yes for one side forbids where the exercise loads that side; if loads does not name the region, any side."
        var touches =
            !isSided
            || (!loaded.Says(condition.Where) && slip != ProofSlip.UnnamedRegionIsSafe)
            || loaded.On(condition.Where).Intersect(hurt).Any();
        var limits =
            !isSided || (clearFirst && touches) || loaded.On(condition.Where).Intersect(hurt).Any()
                ? clearing.Limits(condition.Id, done)
                : [];
        return OfYes().Concat(limits);

        IEnumerable<string> OfYes()
        {
            if (notWith && touches)
                return slip == ProofSlip.ClearanceFreesNotWith && client.Clearances.Any(c => c.Condition == condition.Id)
                    ? []
                    : ["forbidden"];
            if (!notWith && !clearFirst && byLoad && loaded.On(condition.Where).Intersect(hurt).Any())
                return slip == ProofSlip.OnlyNamedConditions ? [] : ["loaded"];
            if (
                !notWith
                && !clearFirst
                && slip != ProofSlip.PropertiesForgotten
                && SecondFloor.Matters(exercise).Contains(condition.Id)
            )
                return ["left out"];
            var named = clearFirst && touches ? clearing.Of(condition.Id, done, done.Weeks, withinYear: false).ToArray() : [];
            return named.Length > 0 ? named : BeforeTraining(condition.Id, done);
        }
    }

    /// <summary>"Pain now: where, 0 to 10": more than the practice trains with (5) forbids what loads the place.</summary>
    private IEnumerable<string> Pains(string answer, SecondLoads loaded) =>
        from pain in answer.Trim('[', ']').Split(", ")
        let words = pain.Split(' ')
        let level = int.Parse(words[0], System.Globalization.CultureInfo.InvariantCulture)
        let side = words.Skip(1).FirstOrDefault(w => w is "left" or "right")
        let place = string.Join(' ', words.Skip(side is null ? 1 : 2))
        where level > (slip == ProofSlip.PainOfSixIsFine ? 6 : 5)
        where
            place is "whole body" or "chest"
            || (slip != ProofSlip.StandingLoadsNothing && loaded.Stands(place))
            || (
                side is null || slip == ProofSlip.SideOfThePainForgotten
                    ? loaded.On(place).Length > 0
                    : loaded.On(place).Contains(side)
            )
        select $"painful {pain}";

    /// <summary>The printed rows of the decision table, from activity, disease and symptoms to a clearance.</summary>
    private IEnumerable<string> BeforeTraining(string condition, MadeDone done)
    {
        if (slip == ProofSlip.DecisionTableForgotten)
            return [];
        var active = client.Answers.GetValueOrDefault("regularly-active") == "yes";
        return (condition, active) switch
        {
            ("signs-or-symptoms", _) => clearing.Of(condition, done, done.Weeks, withinYear: false),
            ("heart-disease", false) => clearing.Of(condition, done, done.Weeks, withinYear: false),
            ("heart-disease", true) => clearing.Of(
                condition,
                done,
                [.. done.Weeks.Where(w => IsVigorous(done, w.Line))],
                withinYear: slip != ProofSlip.OldClearanceForHardWork
            ),
            _ => [],
        };
    }

    private bool IsVigorous(MadeDone done, MadeLine line) =>
        slip != ProofSlip.HardWorkIsModerate && (line.Effort is null or >= 70 || done.Exercise.Properties.Contains("jumping"));

    private IEnumerable<string> AgainstClient(SortedSet<string> found)
    {
        var done = Done().ToArray();
        foreach (
            var id in FloorAnswers.Ids.Where(id =>
                slip is not (ProofSlip.NotAskedIsNo or ProofSlip.FloorOnlyWhereNamed) && !client.Answers.ContainsKey(id)
            )
        )
            yield return $"client {id}: not asked";

        // "Under 18 needs a dated agreement of a guardian and the practice's youth limit on effort"; a bare year counts as its
        // last day.
        var born =
            client.Born.Length == 4
                ? new DateOnly(
                    int.Parse(client.Born, System.Globalization.CultureInfo.InvariantCulture),
                    slip == ProofSlip.BareYearIsItsFirstDay ? 1 : 12,
                    slip == ProofSlip.BareYearIsItsFirstDay ? 1 : 31
                )
                : DateOnly.ParseExact(client.Born, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        var young = born.AddYears(18) > client.Start;
        if (
            (young && client.Guardian is null && slip != ProofSlip.GuardianForgotten)
            || client.Agreed > client.Start
            || client.Guardian > client.Start
            || client.Agreed > Today
            || client.Guardian > Today
        )
            yield return "client: agreement-missing";
        if (
            young
            && slip != ProofSlip.YouthLimitForgotten
            && done.Any(d => d.Done.Weeks.Any(w => w.Line.Effort is null || w.Line.Effort > library.YouthEffort))
        )
            yield return "client: effort-above-youth-limit";

        // "Answers older than the practice allows warn, then block": no day of the programme, or none from today on, is covered.
        var good = client.Answered.AddDays(library.AnswersLast);
        if (
            slip != ProofSlip.OldAnswersAreGood
            && (client.Answered > Today || good < client.Start || (good < Today && Today <= End))
        )
            yield return "client: answers-stale";

        // "Each plan is good until the earliest ... so that it is planned, not met": the pages do not outlive a clearance that
        // they rest on.
        foreach (var condition in client.Clearances.Select(c => c.Condition).Distinct())
        {
            var rests = done.Any(d => RestsOn(condition, d.Done));
            if (
                rests
                && slip != ProofSlip.EditionMayOutlive
                && !found.Any(f => f.EndsWith($" {condition}: short", StringComparison.Ordinal))
                && clearing.Until(condition) < End
            )
                yield return $"client: edition-outlives-clearance {condition}";
        }
    }

    private bool RestsOn(string condition, MadeDone done)
    {
        if (!client.Answers.GetValueOrDefault(condition, "no").StartsWith("yes", StringComparison.Ordinal))
            return false;
        var (answer, where) = (
            client.Answers[condition],
            MadeLibrary.Own.FirstOrDefault(c => c.Id == condition)?.Where ?? "whole body"
        );
        var loaded = new SecondLoads(done, slip);
        if (
            done.Exercise.ClearFirst.Contains(condition)
            && (answer == "yes" || !loaded.Says(where) || loaded.On(where).Contains(answer[5..]))
        )
            return true;
        var active = client.Answers.GetValueOrDefault("regularly-active") == "yes";
        return slip != ProofSlip.DecisionTableForgotten
            && (
                condition == "signs-or-symptoms"
                || (condition == "heart-disease" && (!active || done.Weeks.Any(w => IsVigorous(done, w.Line))))
            );
    }
}
