using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Whether a clinician must clear somebody before training.</summary>
public enum ClearanceNeed
{
    None,

    /// <summary>Before any training.</summary>
    BeforeTraining,

    /// <summary>Not for moderate training; before vigorous training, within 12 months.</summary>
    BeforeVigorous,

    /// <summary>Stop training, and seek a clearance.</summary>
    StopUntilCleared,
}

/// <summary>The decision before training: Riebe D et al. 2015, Med Sci Sports Exerc 47:2473-9 (second-hand for the rows; symptoms
/// outweigh the rest). Where the table recommends a clearance, this programme waits for one.</summary>
public static class PreParticipation
{
    /// <summary>How many months a clearance is recent enough for vigorous training, both ends inclusive.</summary>
    public const int VigorousMonths = 12;

    /// <param name="active">At least 30 minutes of at least moderate effort on 3 days of every week for the last 3
    /// months.</param>
    /// <param name="disease">Known disease of heart, metabolism or kidneys.</param>
    /// <param name="symptoms">Signs or symptoms of one.</param>
    public static ClearanceNeed Of(bool active, bool disease, bool symptoms) =>
        (active, disease, symptoms) switch
        {
            (false, _, true) => ClearanceNeed.BeforeTraining,
            (true, _, true) => ClearanceNeed.StopUntilCleared,
            (false, true, false) => ClearanceNeed.BeforeTraining,
            (true, true, false) => ClearanceNeed.BeforeVigorous,
            (_, false, false) => ClearanceNeed.None,
        };

    /// <summary>What a client's yes to a disease of heart, metabolism or kidneys or to symptoms asks for; none for any other
    /// condition, or any other answer. A disease is judged by its own row even beside symptoms, which have a clearance of their
    /// own. Who was not asked about activity is taken not to be active.</summary>
    public static ClearanceNeed For(Client client, ConditionId condition)
    {
        if (!IsYes(condition))
            return ClearanceNeed.None;
        var active = IsYes(AlwaysAsked.RegularlyActive);
        if (condition == AlwaysAsked.Symptoms)
            return Of(active, AlwaysAsked.Diseases.Any(IsYes), true);
        return AlwaysAsked.Diseases.Contains(condition) ? Of(active, true, false) : ClearanceNeed.None;

        bool IsYes(ConditionId asked) => client.AnswerTo(asked)?.Reply is Reply.Yes;
    }
}
