using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>Why an exercise is not simply allowed, for the coach.</summary>
internal static class ScreenWords
{
    public static string Of(AllowanceReason reason) =>
        reason switch
        {
            { Against: Objection.Forbidden forbidden } =>
                $"not done with {forbidden.Condition.Name}; answered {Reply(forbidden.Answer)}",
            { Against: Objection.Loaded loaded } =>
                $"loads the {loaded.Condition.Where}; answered {Reply(loaded.Answer)} to {loaded.Condition.Name}",
            { Against: Objection.Painful painful } => $"loads what hurts: {painful.Pain}",
            { Against: Objection.LeftOut left } =>
                $"says nothing about {left.Condition.Name}, which matters with {left.Property}; answered {Reply(left.Answer)}",
            { Against: Objection.NotAsked missing } => $"not asked about {missing.Condition.Name}",
            { Against: Objection.Unread unread } => $"the answer about {unread.Condition.Name} cannot be read",
            { Against: Objection.NotCleared bare } =>
                $"{Need(bare.Need)} with {bare.Condition.Name}; answered {Reply(bare.Answer)}",
            { Against: Objection.ClearanceShort brief } =>
                $"the clearance for {brief.Condition.Name} holds from {brief.Clearance.On.Iso()} to "
                    + $"{brief.Clearance.Until.Iso()}, not for every day from {brief.From.Iso()} to {brief.Until.Iso()}",
            { Against: Objection.BeyondLimit beyond } =>
                $"cleared for {beyond.Condition.Name} within a limit: {beyond.Limit.Words}; its own dose goes beyond it "
                    + $"in week {beyond.Week.Week}{(beyond.Limit is ClearanceLimit.EffortAtMost ? ", or does not say how hard it is" : "")}",
            { Cleared: { } cleared } => $"cleared for {reason.Condition.Name} by {cleared.By} until "
                + $"{cleared.Until.Iso()}{string.Concat(cleared.Limits.Select(l => ", " + l.Words))}",
            _ => throw new ArgumentException("This is no reason.", nameof(reason)),
        };

    /// <summary>The place of the answer or the clearance, and that of the exercise.</summary>
    public static string PlaceOf(AllowanceReason reason, Exercise exercise)
    {
        var at = AnswerAt(reason);
        return at is null ? $"{reason.Against?.At ?? exercise.At}" : $"{at}, {reason.Against?.At ?? exercise.At}";
    }

    /// <summary>Null where nothing was answered.</summary>
    public static Location? AnswerAt(AllowanceReason reason) =>
        reason switch
        {
            { Against: Objection.Forbidden forbidden } => forbidden.Answer.At,
            { Against: Objection.Loaded loaded } => loaded.Answer.At,
            { Against: Objection.Painful painful } => painful.Answer.At,
            { Against: Objection.LeftOut left } => left.Answer.At,
            { Against: Objection.NotCleared bare } => bare.Answer.At,
            { Against: Objection.ClearanceShort brief } => brief.Clearance.At,
            { Against: Objection.BeyondLimit beyond } => beyond.Clearance.At,
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
