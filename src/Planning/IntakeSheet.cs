using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>Everything that a sheet of questions says to somebody who is about to train: who asks, and exactly what the library
/// and the floor need.</summary>
/// <param name="Words">In the practice's language.</param>
/// <param name="Questions">In the order in which they are asked.</param>
public sealed record IntakeSheet(string Practice, string Coach, Contact Contact, Words Words, Series<IntakeQuestion> Questions)
{
    /// <param name="asked">Every condition that some exercise cares about, or that everybody is asked for.</param>
    public static IntakeSheet Of(PracticeCard card, Words words, IEnumerable<Condition> asked) =>
        new(
            card.Name,
            card.Coach,
            card.Contact,
            words,
            asked.Select(c => new IntakeQuestion(c.Id, c.Question, RepliesTo(c))).ToSeries()
        );

    private static IntakeReplies RepliesTo(Condition condition) =>
        condition.Id == AlwaysAsked.PainNow ? IntakeReplies.Pains
        : condition.IsSided ? IntakeReplies.YesOrNoBySide
        : IntakeReplies.YesOrNo;
}

public sealed record IntakeQuestion(ConditionId Id, string Question, IntakeReplies Replies);

/// <summary>What a question can be answered with; each may also be left open, which is "not asked".</summary>
public enum IntakeReplies
{
    YesOrNo,

    /// <summary>Yes may be for the left, the right, or both.</summary>
    YesOrNoBySide,

    /// <summary>Nothing hurts; or what hurts, each with how much, where, and on which side.</summary>
    Pains,
}
