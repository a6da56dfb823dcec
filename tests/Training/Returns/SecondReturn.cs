using System.Globalization;

namespace Gradus.Tests.Trainings;

/// <summary>A mistake that a review could make.</summary>
internal enum ReturnSlip
{
    None,
    WeekThatIsNotOverCounts,
    OtherCourseCounts,
    FutureCounts,
    NotTodayIsDone,
    NoStepIsDone,
    TwiceADayIsTwo,
    ExtraFillsAPlace,
    BeforePlayIsPlanned,
    ShortIsNone,
    ShareFromTheFirst,
    NoEditionIsPlanned,
    DeviationWithN,
    BlankEffortIsNone,
    FewDaysAreJudged,
    GapFromDayToDayLess,
    MoreSetsUnseen,
    MorningForgotten,
    BlankPainIsNone,
    LastOneIsEnough,
    EffortFromThree,
    HarderOnce,
    BelowHalfOnce,
    MissedTwoRunning,
}

/// <summary>The review a second time, in plain loops over what was made, sentence by sentence from the words of the
/// rule.</summary>
internal sealed class SecondReturn(MadeReturn made, ReturnSlip slip)
{
    private const int Planned = 4;

    private readonly MadeSessionDone[] counted =
    [
        .. made.Told.Where(t =>
            t.Day < 7 * MadeReturn.Weeks
            && (t.Day <= made.Today || slip == ReturnSlip.FutureCounts)
            && (!t.IsOfOtherCourse || slip == ReturnSlip.OtherCourseCounts)
        ),
    ];

    private MadeSessionDone[] Done =>
        [
            .. counted.Where(t =>
                (t.IsBegun || slip == ReturnSlip.NotTodayIsDone) && (t.Steps is null or > 0 || slip == ReturnSlip.NoStepIsDone)
            ),
        ];

    public IEnumerable<string> Everything()
    {
        // "Only weeks that the log covers: its last entry is after the week's end."
        var last = made
            .Told.Where(t => !t.IsOfOtherCourse || slip == ReturnSlip.OtherCourseCounts)
            .Where(t => t.Day <= made.Today || slip == ReturnSlip.FutureCounts)
            .Select(t => t.Day)
            .DefaultIfEmpty(-1)
            .Max();
        var (planned, done, low, wasLow) = (0, 0, false, false);
        var missed = new List<int>();
        var (run, best) = (0, "");
        for (var week = 0; week < MadeReturn.Weeks; week++)
        {
            var covered = last > (7 * week) + 6 || (slip == ReturnSlip.WeekThatIsNotOverCounts && last >= 7 * week);
            foreach (var line in Load(week, covered))
                yield return line;
            if (!covered)
                continue;
            var own = Done.Where(t => t.Day / 7 == week).ToArray();
            var one = Places(own.Where(t => t.Session == 1 || (t.Session == 4 && slip != ReturnSlip.ShortIsNone)));
            var two = Places(own.Where(t => t.Session == 2));
            var play = own.Count(t => t.Session == 3);
            var fill = slip == ReturnSlip.ExtraFillsAPlace ? Math.Min(Planned, one + two) : Math.Min(2, one) + Math.Min(2, two);
            if (slip == ReturnSlip.BeforePlayIsPlanned)
                fill += play;
            var all = own.Count(t => t.Session != 3);
            var unknown = own.Any(t => t.IsOfNoEdition) && slip != ReturnSlip.NoEditionIsPlanned;
            yield return $"week {week + 1}: {fill} of {(unknown ? "?" : "4")}, {all - fill} extra, {play} before play";
            low = !unknown && 2 * fill < Planned;
            if (low && (wasLow || slip == ReturnSlip.BelowHalfOnce))
                best = $"too little until week {week + 1}";
            wasLow = low;
            if (!unknown)
                (planned, done) = (planned + Planned, done + fill);
        }

        if (best != "")
            yield return best;
        if (planned >= (slip == ReturnSlip.ShareFromTheFirst ? 1 : 10))
            yield return $"share {Math.Round(100m * done / planned, MidpointRounding.AwayFromZero)}";
        foreach (var line in Missed(last).Concat(Gap()).Concat(More()).Concat(MoveOn()).Concat(Efforts()))
            yield return line;
    }

    private int Places(IEnumerable<MadeSessionDone> of) =>
        slip == ReturnSlip.TwiceADayIsTwo ? of.Count() : of.Select(t => t.Day).Distinct().Count();

    /// <summary>Effort × minutes by day; the sample's deviation; nothing where a session has no effort, the week is not
    /// covered, or
    /// fewer than four days have a session.</summary>
    private IEnumerable<string> Load(int week, bool covered)
    {
        var own = Done.Where(t => t.Day / 7 == week).ToArray();
        if (!covered && own.Length == 0)
            yield break;
        var days = new double[7];
        foreach (var t in own)
            days[t.Day % 7] += (t.Effort ?? 0) * (t.Minutes ?? PlannedMinutes(t.Session));
        var (sum, mean) = (days.Sum(), days.Sum() / 7);
        var deviation = Math.Sqrt(days.Sum(d => (d - mean) * (d - mean)) / (slip == ReturnSlip.DeviationWithN ? 7 : 6));
        var why =
            own.Any(t => t.Effort is null) && slip != ReturnSlip.BlankEffortIsNone ? "AtLeast"
            : !covered ? "NotCovered"
            : own.Select(t => t.Day).Distinct().Count() < (slip == ReturnSlip.FewDaysAreJudged ? 2 : 4) ? "FewDays"
            : deviation < 1e-6 ? "EveryDayAlike"
            : "";
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"load {week + 1}: {sum:0} {(why == "" ? $"{mean / deviation:0.000} {sum * mean / deviation:0}" : why)}"
        );
    }

    /// <summary>By the rule of times in dose-line.md: 5 s to get ready; each set of a press 2 × 10 s and rests of 20 s; of a
    /// hold 2
    /// × 30 s; 10 s between two uses; 10 s to change sides.</summary>
    private static double PlannedMinutes(int session) => MadeTimes.Seconds[session] / 60.0;

    /// <summary>"Three planned sessions missed running": Monday and Thursday on their days, the two of the week at its
    /// end.</summary>
    private IEnumerable<string> Missed(int last)
    {
        var places = new List<(int Day, bool Done)>();
        for (var week = 0; week < MadeReturn.Weeks && last > (7 * week) + 6; week++)
        {
            var one = Days(week, t => t.Session is 1 or 4);
            var rest = one.Count(d => d % 7 is not (0 or 3));
            foreach (var day in new[] { 7 * week, (7 * week) + 3 })
                places.Add((day, one.Contains(day) || rest-- > 0));
            var two = Days(week, t => t.Session == 2);
            for (var i = 0; i < 2; i++)
                places.Add(i < two.Length ? (two[i], true) : ((7 * week) + 6, false));
        }

        var (run, found) = (0, "");
        foreach (var place in places.OrderBy(p => p.Day))
        {
            run = place.Done ? 0 : run + 1;
            if (run >= (slip == ReturnSlip.MissedTwoRunning ? 2 : 3))
                found = $"missed {run} until {place.Day}";
        }

        if (found != "")
            yield return found;

        int[] Days(int week, Func<MadeSessionDone, bool> isOf) =>
            [.. Done.Where(t => t.Day / 7 == week && isOf(t)).Select(t => t.Day).Distinct()];
    }

    private IEnumerable<string> Gap()
    {
        var (longest, from) = (-1, 0);
        for (var i = 1; i < Done.Length; i++)
            if (Done[i].Day - Done[i - 1].Day > longest)
                (longest, from) = (Done[i].Day - Done[i - 1].Day, Done[i - 1].Day);
        if (longest >= 0)
            yield return $"gap {longest - (slip == ReturnSlip.GapFromDayToDayLess ? 1 : 0)} from {from}";
    }

    private IEnumerable<string> More()
    {
        foreach (var week in Done.Where(t => t.Session != 3 && t.Sets is not null).GroupBy(t => t.Day / 7).Where(w => w.Any()))
            if (week.Sum(t => t.Sets) > MadeReturn.PlannedSets * week.Count() && slip != ReturnSlip.MoreSetsUnseen)
                yield return $"more sets in week {week.Key + 1}";
    }

    /// <summary>"The last two sessions of that exercise, all with m and d at most 2, all sets done"; blank is never 0.</summary>
    private IEnumerable<string> MoveOn()
    {
        var last = Done.Where(t => t.Session != 3).TakeLast(slip == ReturnSlip.LastOneIsEnough ? 1 : 2).ToArray();
        var pains = last.SelectMany(t => slip == ReturnSlip.MorningForgotten ? [t.During] : new[] { t.During, t.Morning })
            .ToArray();
        yield return last.Any(t => t.Sets < MadeReturn.PlannedSets) || pains.Any(p => p > 2) ? "move on: NotMet"
        : last.Length < (slip == ReturnSlip.LastOneIsEnough ? 1 : 2) ? "move on: NotTold"
        : last.Any(t => t.Sets is null) || (pains.Any(p => p is null) && slip != ReturnSlip.BlankPainIsNone) ? "move on: NotTold"
        : "move on: Met";
    }

    /// <summary>The plan says 5 of 10 where something is pressed, and nothing before play.</summary>
    private IEnumerable<string> Efforts()
    {
        int[] told = [.. Done.Where(t => t.Session != 3).Select(t => t.Effort).OfType<int>().Order()];
        if (told.Length >= (slip == ReturnSlip.EffortFromThree ? 3 : 4))
            yield return FormattableString.Invariant(
                $"effort {((told[(told.Length - 1) / 2] + told[told.Length / 2]) / 2.0) - 5:0.0}"
            );
        if (told.Count(e => e >= 9) >= (slip == ReturnSlip.HarderOnce ? 1 : 2))
            yield return "harder than meant";
    }
}
