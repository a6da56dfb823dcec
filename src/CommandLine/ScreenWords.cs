using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>Why an exercise is not simply allowed, for the coach.</summary>
internal static class ScreenWords
{
    public static string Of(AllowanceReason reason, Practice practice)
    {
        var condition = practice.Of(reason.Condition);
        return reason switch
        {
            { Against: Objection.Forbidden forbidden } =>
                $"not done with {condition.Name}; answered {Reply(forbidden.Answer.Value)}",
            { Against: Objection.Loaded loaded } =>
                $"loads the {condition.Where}; answered {Reply(loaded.Answer.Value)} to {condition.Name}",
            { Against: Objection.Painful { IsTooMuch: true } painful } => $"nobody is trained with this pain: {painful.Pain}",
            { Against: Objection.Painful painful } => $"is hard, loaded or jumped where it hurts: {painful.Pain}",
            { Against: Objection.CameBack { IsAsked: false } back } =>
                $"{ReturnWords.Of(back.Kind)} came back on {back.Day.Iso()}, {back.Place}; not asked again since",
            { Against: Objection.CameBack back } =>
                $"{ReturnWords.Of(back.Kind)} came back on {back.Day.Iso()}, {back.Place}; a clinician has not seen it",
            { Against: Objection.TooEarly early } =>
                $"hard work in week {early.Week.Week}; not regularly active, so the first {Hardness.GentleWeeks} weeks are "
                    + "gentle",
            { Against: Objection.NotAsked missing } => $"not asked about {condition.Name}",
            { Against: Objection.Unread unread } => $"the answer about {condition.Name} cannot be read",
            { Against: Objection.NotCleared bare } => $"{Need(bare.Need)} with {condition.Name}; "
                + (
                    bare.Answer.Value.At.File.EndsWith("/log.csv", StringComparison.Ordinal)
                        ? "one came back"
                        : $"answered {Reply(bare.Answer.Value)}"
                ),
            { Against: Objection.ClearanceShort brief } =>
                $"the clearance for {condition.Name} holds from {brief.Clearance.Value.On.Iso()} to "
                    + $"{brief.Clearance.Value.Until.Iso()}, not for every day from {brief.From.Iso()} to {brief.Until.Iso()}",
            { Against: Objection.BeyondLimit beyond } =>
                $"cleared for {condition.Name} within a limit: {beyond.Limit.Words}; its own dose goes beyond it "
                    + $"in week {beyond.Week.Week}"
                    + (beyond.Limit is ClearanceLimit.EffortAtMost ? ", or does not say how hard it is" : ""),
            { Cleared: { } cleared } => $"cleared for {condition.Name} by {cleared.By} until "
                + $"{cleared.Until.Iso()}{string.Concat(cleared.Limits.Select(l => ", " + l.Words))}",
            _ => throw new ArgumentException("This is no reason.", nameof(reason)),
        };
    }

    /// <summary>The place of the answer or the clearance, and that of the exercise.</summary>
    public static string PlaceOf(AllowanceReason reason, Exercise exercise)
    {
        var at = AnswerAt(reason);
        return at is null ? $"{reason.Against?.At.Value ?? exercise.At}" : $"{at}, {reason.Against?.At.Value ?? exercise.At}";
    }

    /// <summary>Null where nothing was answered.</summary>
    public static Location? AnswerAt(AllowanceReason reason) =>
        reason switch
        {
            { Against: Objection.Forbidden forbidden } => forbidden.Answer.Value.At,
            { Against: Objection.Loaded loaded } => loaded.Answer.Value.At,
            { Against: Objection.Painful painful } => painful.Answer.Value.At,
            { Against: Objection.CameBack back } => back.Log.Value,
            { Against: Objection.TooEarly early } => early.Answer.Value.At,
            { Against: Objection.NotCleared bare } => bare.Answer.Value.At,
            { Against: Objection.ClearanceShort brief } => brief.Clearance.Value.At,
            { Against: Objection.BeyondLimit beyond } => beyond.Clearance.Value.At,
            _ => reason.Cleared?.At,
        };

    private static string Reply(Answer answer) => answer.Reply is Reply.Yes { Side: { } side } ? $"yes, {side.Word()}" : "yes";

    private static string Need(ClearanceNeed need) =>
        need switch
        {
            ClearanceNeed.StopUntilCleared => "all training stops until it is cleared",
            ClearanceNeed.BeforeVigorous => "hard work needs a clearance",
            ClearanceNeed.BeforeTraining => "a clearance comes before any training",
            _ => "needs a clearance",
        };
}
