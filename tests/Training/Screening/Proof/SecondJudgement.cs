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

    /// <summary>What holds for something that is done, and that the exercise does not name, of a condition answered with
    /// yes.</summary>
    public static IEnumerable<MadeTrait> ByTraits(MadeLibrary library, MadeClient client) =>
        from done in new SecondJudgement(library, client, ProofSlip.None).Done()
        from trait in library.Traits
        where (client.AnswerTo(trait.Condition, ProofSlip.None) ?? "").StartsWith("yes", StringComparison.Ordinal)
        where !done.Done.Exercise.NotWith.Concat(done.Done.Exercise.ClearFirst).Contains(trait.Condition)
        from one in SecondTraits.Of(library, done.Done, trait.Condition, ProofSlip.None)
        where one == trait
        select trait;

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
                .Ids.Append(SecondFloor.From65)
                .Select(id => new MadeCondition(id, SecondFloor.Where(id), false))
                .Concat(MadeLibrary.Own)
        )
        foreach (var kind in Kinds(condition, done))
            yield return $"{session} {done.Exercise.Id} {condition.Id}: {kind}";
    }

    private IEnumerable<string> Kinds(MadeCondition condition, MadeDone done)
    {
        var (exercise, loaded) = (done.Exercise, new SecondLoads(done, slip));
        var notWith = SecondTraits.NotWith(library, done, condition.Id, slip);
        var clearFirst = SecondTraits.ClearFirst(library, done, condition.Id, slip);
        var byLoad = condition.IsSided && (loaded.Says(condition.Where) || loaded.Moves(condition.Where));
        var always = FloorAnswers.Ids.Contains(condition.Id) && slip != ProofSlip.FloorOnlyWhereNamed;
        var answer = client.AnswerTo(condition.Id, slip);
        if (!notWith && !clearFirst && !byLoad && !always && condition.Id != SecondFloor.From65)
            return answer == "yes" ? clearing.Limits(condition.Id, done) : [];
        if (answer is null or "not asked")
            return slip == ProofSlip.NotAskedIsNo ? [] : ["not asked"];
        if (condition.Id == "pain-now")
            return SecondPain
                .Kinds(client, done, slip)
                .Concat(SecondReturned.Kinds(client, done, slip))
                .Concat(clearing.Limits(condition.Id, done));
        if (condition.Id == "regularly-active")
            return answer == "no" ? TooEarly(done) : [];
        if (!answer.StartsWith("yes", StringComparison.Ordinal))
            return [];
        string[] hurt =
            answer is "yes, left" ? ["left"]
            : answer is "yes, right" ? ["right"]
            : ["left", "right"];
        var isSided = answer != "yes" && slip != ProofSlip.SideOfTheAnswerForgotten;

        // "A yes for one side forbids where the exercise loads that side; if loads does not name the region, any side." A side
        // chosen in the programme does not lift it where the position bears the other side as well.
        var touches =
            !isSided
            || (!loaded.Says(condition.Where) && !loaded.Moves(condition.Where) && slip != ProofSlip.UnnamedRegionIsSafe)
            || loaded.Bears(condition.Where)
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
            return Cleared(condition.Id, done, clearFirst && touches);
        }
    }

    /// <summary>What the exercise asks of a clearance by its list and by what it does, and what the table asks.</summary>
    private IEnumerable<string> Cleared(string condition, MadeDone done, bool isNamed) =>
        isNamed || (slip != ProofSlip.WhatWorkDoesForgotten && SecondFloor.Matters(condition, done, slip))
            ? clearing.Of(condition, done, done.Weeks, withinYear: false).Concat(BeforeTraining(condition, done))
            : BeforeTraining(condition, done);

    /// <summary>The printed rows of the decision table, from activity, disease and symptoms to a clearance; hard work rests on
    /// one of at most 12 months in every row.</summary>
    private IEnumerable<string> BeforeTraining(string condition, MadeDone done)
    {
        if (slip == ProofSlip.DecisionTableForgotten)
            return [];
        var hard = clearing.Of(
            condition,
            done,
            [.. done.Weeks.Where(w => IsVigorous(done, w.Line))],
            withinYear: slip != ProofSlip.OldClearanceForHardWork && (IsActive || slip != ProofSlip.OldClearanceForTheInactive)
        );
        var any = clearing.Of(condition, done, done.Weeks, withinYear: false);
        return IsSymptom(condition) || (IsDisease(condition) && !IsActive) ? any.Concat(hard)
            : IsDisease(condition) ? hard
            : [];
    }

    private bool IsActive => client.Answers.GetValueOrDefault("regularly-active") == "yes";

    private static bool IsSymptom(string condition) => condition == "signs-or-symptoms";

    private bool IsDisease(string condition) =>
        slip == ProofSlip.OnlyTheHeartIsADisease ? condition == "heart-disease" : SecondFloor.Diseases.Contains(condition);

    /// <summary>"Somebody not regularly active gets no vigorous work in the first 4 weeks."</summary>
    private IEnumerable<string> TooEarly(MadeDone done) =>
        slip != ProofSlip.HardWorkForTheInactive && done.Weeks.Any(w => w.Week <= 4 && IsVigorous(done, w.Line))
            ? ["too early"]
            : [];

    private bool IsVigorous(MadeDone done, MadeLine line) =>
        slip != ProofSlip.HardWorkIsModerate
        && (SecondWork.IsHard(done.Exercise, line, slip) || done.Exercise.Properties.Contains("jumping"));

    private IEnumerable<string> AgainstClient(SortedSet<string> found)
    {
        var done = Done().ToArray();
        foreach (
            var id in FloorAnswers.Ids.Where(id =>
                slip is not (ProofSlip.NotAskedIsNo or ProofSlip.FloorOnlyWhereNamed) && client.AnswerTo(id, slip) is null
            )
        )
            yield return $"client {id}: not asked";
        foreach (var other in OtherLimbs())
            yield return other;

        // "Under 18 needs a dated agreement of a guardian and the practice's youth limit on effort"; a bare year counts as its
        // last day.
        var young = client.BornAtLast(slip).AddYears(18) > client.Start;
        if (client.BornAtLast(slip).AddYears(13) > client.Start && slip != ProofSlip.YoungestForgotten)
            yield return "client: client-too-young";
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

    /// <summary>"A role of an arm on a leg (or the other way round) is refused", by which version it ever is done.</summary>
    private IEnumerable<string> OtherLimbs() =>
        from session in client.Sessions
        from use in session.Uses
        where use.Side == "rear leg" && slip != ProofSlip.RearLegOfAnArm
        from done in DoneIn(use)
        where done.Weeks.Count > 0
        where done.Exercise.Part is "wrist" or "elbow" or "shoulder"
        select $"client: side-unresolved {done.Exercise.Title}";

    private bool RestsOn(string condition, MadeDone done)
    {
        var answer = client.AnswerTo(condition, slip) ?? "no";
        if (!answer.StartsWith("yes", StringComparison.Ordinal))
            return false;
        var where = MadeLibrary.Own.FirstOrDefault(c => c.Id == condition)?.Where ?? SecondFloor.Where(condition);
        var loaded = new SecondLoads(done, slip);
        if (
            SecondTraits.ClearFirst(library, done, condition, slip)
            && (
                answer == "yes"
                || (!loaded.Says(where) && !loaded.Moves(where))
                || loaded.Bears(where)
                || loaded.On(where).Contains(answer[5..])
            )
        )
            return true;
        if (
            SecondFloor.Matters(condition, done, slip)
            && !SecondTraits.NotWith(library, done, condition, slip)
            && slip != ProofSlip.WhatWorkDoesForgotten
        )
            return true;
        return slip != ProofSlip.DecisionTableForgotten
            && (IsSymptom(condition) || (IsDisease(condition) && (!IsActive || done.Weeks.Any(w => IsVigorous(done, w.Line)))));
    }
}
