using System.Globalization;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>What may be said of what came back, to the coach. What must never be said cannot be said here: no score, no
/// streak, no
/// ranking, no limit for a load, no mean of efforts.</summary>
internal static class ReviewSentences
{
    public const string Again = "The same instrument, method, rater and time of day; not within an hour after training.";

    public const string HomeOnly =
        "The sport itself is not logged; without it these figures say little. No limit is known to hold for anybody: a week "
        + "stands beside the same person's earlier weeks alone.";

    public const string NoRanking = "Blank is never 0 and never no. No log does not mean that nothing was done.";

    public const string Bands =
        "The bands for pain were tested in tendons and a few joint troubles only; one-point changes are never "
        + "called better or worse.";

    /// <summary>Who has stopped, with "on 2026-12-20 (moved away)".</summary>
    public static IEnumerable<(Client Client, string On)> StoppedOf(IEnumerable<ClientReview> reviews) =>
        from review in reviews
        where review.StoppedOn is not null
        let stopped = review.Client.Stopped
        select (review.Client, $"on {stopped.On.Iso()}{Why(stopped.Because)}");

    /// <summary>"; pause from 2026-12-21 to 2027-01-03 (holidays)" for each; nothing where there is none.</summary>
    public static string PausesOf(Programme programme) =>
        string.Concat(programme.Pauses.Select(p => $"; pause from {p.From.Iso()} to {p.Until.Iso()}{Why(p.Because)}"));

    private static string Why(string because) => because.Length == 0 ? "" : $" ({because})";

    /// <summary>"3 of 4: 2 full, 1 short; 1 of them ended early (60 %); and 2 more than planned".</summary>
    public static string Of(ReturnedWeek week)
    {
        var parts = new List<string>();
        if (week.Done > 0)
            parts.Add(
                string.Join(", ", week.Counted.GroupBy(e => e.Kind).OrderBy(g => g.Key ?? (AlternateKind)(-1)).Select(Kind))
            );
        var early = week.EndedEarly.ToArray();
        if (early.Length > 0)
            parts.Add($"{N(early.Length)} of them ended early{Shares(early)}");
        if (week.Extra > 0)
            parts.Add($"and {N(week.Extra)} more than planned");
        if (week.BeforePlay > 0)
            parts.Add($"{N(week.BeforePlay)} before play");
        var count = week.Planned is { } planned
            ? $"{N(week.Done)} of {N(planned)}"
            : $"{N(week.Done)} done, the log does not say of which edition";
        return parts.Count == 0 ? count : $"{count}: {string.Join("; ", parts)}";
    }

    private static string Kind(IGrouping<AlternateKind?, LogEntry> of) =>
        $"{N(of.Count())} {(of.Key is { } kind ? WordFor(kind) : "full")}";

    private static string WordFor(AlternateKind kind) =>
        kind switch
        {
            AlternateKind.Short => "short",
            AlternateKind.Travel => "away from home",
            AlternateKind.Flare => "on a bad day",
        };

    private static string Shares(LogEntry[] early)
    {
        var shares = early
            .Where(e => e is { StepsDone: not null, StepsPlanned: > 0 })
            .Select(e =>
                $"{N((int)Math.Round(100m * (e.StepsDone ?? 0) / (e.StepsPlanned ?? 1), MidpointRounding.AwayFromZero))} %"
            )
            .ToArray();
        return shares.Length == 0 ? "" : $" ({string.Join(", ", shares)})";
    }

    public static string Of(TrainingGap gap) =>
        $"longest time without a session: {N(gap.Days)} days, {gap.From.Iso()} to {gap.Until.Iso()}; the page then offered week "
        + $"{N(gap.Week)}";

    /// <summary>"6 of 4 sets: more than written".</summary>
    public static string Of(SetsDone sets) =>
        $"{N(sets.Done)} of {N(sets.Planned)} sets{(sets.IsMore ? ": more than written" : "")}";

    public static string MotionOf(Motion motion, Side? side) => motion.Name + RangeSentences.SideOf(side);

    /// <param name="isCompared">Whether there is an earlier week to stand beside.</param>
    public static string Of(LoadedWeek week, bool isCompared)
    {
        var minutes = week.Sessions.Sum(s => s.Minutes ?? 0);
        var said =
            $"{(week.IsAtLeast ? "at least " : "")}{Figure(week.Total, "0")}"
            + $", in {Figure(minutes, "0")} min{(week.Sessions.Any(s => s.IsPlannedTime) ? ", some of it planned minutes" : "")}";
        return week switch
        {
            { Monotony: { } monotony, Strain: { } strain } => isCompared
                ? $"{said}; monotony {Figure(monotony, "0.00")} (standard deviation with n − 1), strain {Figure(strain, "0")}"
                : $"{said}; monotony and strain wait for a second week to stand beside",
            { Why: NoMonotony.EveryDayAlike } => $"{said}; every day alike",
            { Why: NoMonotony.FewDays } => $"{said}; fewer than 4 days, so monotony and strain would only count days",
            { Why: NoMonotony.NotCovered } => $"{said}; the week is not over in the log",
            _ => $"{said}; not every session has an effort",
        };
    }

    public static string Of(QuietPain quiet) =>
        quiet.Sessions == 0
            ? "no session"
            : (quiet is { Lowest: { } low, Highest: { } high } ? $"pain {(low == high ? N(low) : $"{N(low)}-{N(high)}")}, " : "")
                + $"not worse on the morning after in {N(quiet.Quiet)} of {N(quiet.Sessions)} sessions"
                + (quiet.NotSaid > 0 ? $"; {N(quiet.NotSaid)} not said" : "");

    /// <summary>Of a pain in the list of a client: what, when, and for which exercises it was stopped.</summary>
    public static string Of(Practice practice, ReturnedPain pain) =>
        $"{pain.Day.Iso()}: {ReturnWords.Of(pain)}"
        + (pain.Stopped.Count == 0 ? "" : $", stopped {string.Join(", ", pain.Stopped.Select(id => TitleOf(practice, id)))}");

    public static string AdviceFor(Practice practice, Training training, ReturnedPain pain) =>
        pain switch
        {
            { Kind: PainKind.Now } => "Do not plan on. Signs or symptoms is now a yes: nothing until a clinician's leave that is "
                + "dated after this day, and asked again.",
            { Kind: PainKind.SameDay } => "To be seen by a clinician today. Nothing is published until that is written down.",
            { Kind: PainKind.Stopped, Step: PainStep.Clinician } => "Twice at one place within 14 days: a clinician before it is "
                + $"done again. {Loaded(practice, training, pain.Place)}",
            { Kind: PainKind.Stopped } => $"Out, and asked next time: the exercise, and what loads the place. "
                + Loaded(practice, training, pain.Place),
            { Kind: PainKind.AboveStop } => "More than you train with: ask again before the next publishing.",
            { Kind: PainKind.NextMorning, Step: PainStep.Clinician } => "Worse again after a week out: a clinician. "
                + Loaded(practice, training, pain.Place),
            { Kind: PainKind.NextMorning, Step: PainStep.Out } => $"Worse again: out for {ReturnedPains.OutFor} days. "
                + Loaded(practice, training, pain.Place),
            { Kind: PainKind.NextMorning } => "Next time the last full week's smaller dose of all that loads the place. "
                + Loaded(practice, training, pain.Place),
            { Kind: PainKind.Rising } => "Do less, and ask.",
            { Kind: PainKind.AboveEase } => "Ask, and do less of what loads the place. " + Loaded(practice, training, pain.Place),
            { Kind: PainKind.Lasting, Step: PainStep.Clinician } => "For six weeks now: a clinician.",
            _ => "Say it, and ask.",
        };

    private static string Loaded(Practice practice, Training training, PainPlace place)
    {
        var titles = training
            .Uses.Where(u => u.Weeks.Count > 0 && place.IsLoadedBy(u))
            .Select(u => TitleOf(practice, u.Exercise.Id))
            .Distinct()
            .ToArray();
        return titles.Length == 0 ? "Nothing planned loads it." : $"What loads it: {string.Join(", ", titles)}.";
    }

    /// <param name="isOpen">Whether something that came back is not settled: then nobody goes on, whatever is met.</param>
    public static string Of(Practice practice, MoveOnCheck check, bool isOpen)
    {
        var about =
            check.Exercise is { } id ? TitleOf(practice, id)
            : check.Stage is { } stage ? $"all that {WordFor(stage)}"
            : "";
        var met = check.Word switch
        {
            MoveOnWord.Met => $"{string.Join(", ", check.Computed)}: met on {check.Since?.Iso()}; "
                + (
                    isOpen ? "not before what came back is settled"
                    : check.Asked.Count > 0 ? "the rest is yours to ask"
                    : "may go on"
                ),
            MoveOnWord.NotMet => $"{string.Join(", ", check.Computed)}: not met",
            MoveOnWord.NotTold => $"{string.Join(", ", check.Computed)}: the log does not tell",
            null => "nothing that a log can answer",
        };
        return $"{about}: {met}{(check.Asked.Count == 0 ? "" : $". Ask: {string.Join("; ", check.Asked.Select(c => c + "?"))}")}";
    }

    private static string WordFor(Stage stage) =>
        stage switch
        {
            Stage.Prepare => "prepares",
            Stage.Gain => "gains range",
            Stage.Strengthen => "strengthens",
            Stage.Control => "controls the end of a range",
            Stage.Load => "loads",
        };

    /// <summary>Those that became due together, in one sentence each.</summary>
    public static IEnumerable<string> OfAll(IEnumerable<DueRetest> due) =>
        from one in due
        group one by (one.Since, one.Why, one.Latest.Last) into same
        select $"{string.Join("; ", same.Select(d => RangeSentences.NameOf(d.Key)))}, last on {same.Key.Last.Iso()}: "
            + Why(same.First());

    public static string Of(DueRetest due) => $"{RangeSentences.NameOf(due.Key)}, last on {due.Latest.Last.Iso()}: {Why(due)}";

    private static string Why(DueRetest due) =>
        $"due since {due.Since.Iso()}, "
        + (
            due.Why switch
            {
                RetestWhy.SetByCoach => "the day that you set",
                RetestWhy.SixWeeks => "six weeks (rule of thumb)",
                RetestWhy.LastWeek => "the programme's last week",
                RetestWhy.MoveOnMet => "what must be true before going on is met",
                RetestWhy.Old => "too old for the demand of the sport",
                RetestWhy.Less => "it was less than before",
            }
        );

    public static string? Of(EffortAgainstPlan effort) =>
        effort is { IsSaid: true, Difference: { } points }
            ? $"over {N(effort.Sessions)} sessions felt {Figure(Math.Abs(points), "0.#")} points "
                + $"{(points > 0 ? "harder" : "easier")} than planned (median against median)"
            : null;

    public static string Of(NotCounted why) =>
        why switch
        {
            NotCounted.OtherCourse => "of another programme",
            NotCounted.OutsideProgramme => "on a day outside the programme",
            NotCounted.Future => "on a day that is still to come",
            NotCounted.NoSuchSession => "of a session that the programme does not have",
        };

    public static string TitleOf(Practice practice, ExerciseId id) => practice.Find(id)?.Title ?? id.Text;

    private static string Figure(decimal number, string format) => number.ToString(format, CultureInfo.InvariantCulture);

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
}
