using System.Globalization;

namespace Gradus.Tests.Trainings;

/// <summary>"Clearances name condition, who, when, until when and a limit; the limit is enforced on every dose of every week and
/// every alternate." "Judged for every date of every week."</summary>
internal sealed class SecondClearing(MadeClient client, ProofSlip slip)
{
    public IEnumerable<string> Of(string condition, MadeDone done, List<(int Week, MadeLine Line)> weeks, bool withinYear)
    {
        if (weeks.Count == 0)
            return [];
        var own = Counted(condition);
        if (own.Length == 0)
            return slip == ProofSlip.NoClearanceNeeded ? [] : ["not cleared"];
        foreach (var (week, _) in weeks)
            for (
                var day = FirstOf(week);
                day <= FirstOf(week).AddDays(slip == ProofSlip.OnlyTheFirstDayOfAWeek ? 0 : 6);
                day = day.AddDays(1)
            )
                if (
                    slip != ProofSlip.DatesForgotten
                    // A sign of the log needs no leave for days that are over: before the client was asked again, and where
                    // nobody asked yet, which stops them anyway, before the first leave.
                    && (
                        condition != "signs-or-symptoms"
                        || !SecondReturned.NeedsNoLeaveBefore(client, slip)
                        || day >= (SecondReturned.IsAskedAgain(client, slip) ? client.Answered : own.Min(c => c.On))
                    )
                    && !own.Any(c => c.On <= day && day <= c.Until && (!withinYear || day <= c.On.AddYears(1)))
                )
                    return ["short"];
        return [];
    }

    /// <summary>"The limit is enforced on every dose of every week and every alternate": it belongs to the person, so to every
    /// exercise.</summary>
    public IEnumerable<string> Limits(string condition, MadeDone done) =>
        slip == ProofSlip.LimitsOnlyWhereNamed && !done.Exercise.ClearFirst.Contains(condition)
            ? []
            : from clearance in client.Clearances
            where clearance.Condition == condition
            from limit in slip == ProofSlip.OnlyTheFirstLimit ? clearance.Limits.Take(1) : clearance.Limits
            where
                done.Weeks.Any(w =>
                    clearance.On <= FirstOf(w.Week).AddDays(6)
                    && clearance.Until >= FirstOf(w.Week)
                    && IsBroken(limit, done, w.Line)
                )
            select "beyond " + limit;

    /// <summary>The last day on which that condition is cleared without a gap.</summary>
    public DateOnly Until(string condition)
    {
        var own = Counted(condition).Where(c => c.Until >= client.Start).ToArray();
        if (own.Length == 0)
            return DateOnly.MaxValue;
        var day = own.Min(c => c.On) > client.Start ? own.Min(c => c.On) : client.Start;
        while (own.Any(c => c.On <= day && day <= c.Until))
            day = day.AddDays(1);
        return day.AddDays(-1);
    }

    /// <summary>What comes and goes: who gave a clearance before it was said cannot have known of it.</summary>
    private static readonly string[] OfNow =
    [
        "signs-or-symptoms",
        "breathless-at-night",
        "dizzy-spells",
        "calf-pain-or-swelling",
        "hot-swollen-joint",
        "fever",
    ];

    private DateOnly From(string condition) =>
        condition == "signs-or-symptoms" ? SecondReturned.LeaveFrom(client, slip) : client.Answered;

    /// <summary>"A clearance of symptoms is dated on or after the day of the answers that name them."</summary>
    private MadeClearance[] Counted(string condition) =>
        [
            .. client.Clearances.Where(c =>
                c.Condition == condition
                && (!OfNow.Contains(condition) || c.On >= From(condition) || slip == ProofSlip.SymptomsClearedBeforeTheAnswers)
            ),
        ];

    private DateOnly FirstOf(int week) => client.Start.AddDays(7 * (week - 1));

    private bool IsBroken(string limit, MadeDone done, MadeLine line)
    {
        var number = limit.Split(' ').Select(w => int.TryParse(w, CultureInfo.InvariantCulture, out var n) ? n : 0).Max();
        if (limit.StartsWith("effort", StringComparison.Ordinal))
            return slip != ProofSlip.EffortLimitForgotten
                && (line.Effort is null ? slip != ProofSlip.UnknownEffortIsLight : line.Effort > number);
        if (limit.StartsWith("hold", StringComparison.Ordinal))
            return slip != ProofSlip.HoldLimitForgotten
                && line.Hold > number
                && (done.Exercise.Dose.Verb != "carry" || slip != ProofSlip.CarryIsNoHold);
        return limit.StartsWith("no end", StringComparison.Ordinal)
            ? slip != ProofSlip.BendingLimitForgotten && SecondWork.Does(done, slip).Contains("trunk-end-range")
            : slip != ProofSlip.ProneLimitForgotten && done.Exercise.Position == "prone";
    }
}
