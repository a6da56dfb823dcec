namespace Gradus.Domain;

/// <summary>Everything that a sheet of questions says to somebody who is about to train: who asks, and exactly what the library
/// and the floor need.</summary>
/// <param name="Words">In the practice's language.</param>
/// <param name="Questions">In the order in which they are asked.</param>
public sealed record IntakeSheet(string Practice, string Coach, Contact Contact, Words Words, Series<IntakeQuestion> Questions)
{
    /// <summary>What the sheet saves, by the name under which the practice reads it beside client.yaml.</summary>
    public const string AnswersFile = "answers.yaml";

    public static IntakeSheet Of(Practice practice) =>
        new(
            practice.Card.Name,
            practice.Card.Coach,
            practice.Card.Contact,
            practice.Words.In(practice.Card.Language)
                ?? throw new ArgumentException($"No catalogue for '{practice.Card.Language}'.", nameof(practice)),
            Screening.Asked(practice).Select(c => new IntakeQuestion(c.Id, c.Question, RepliesTo(c))).ToSeries()
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
