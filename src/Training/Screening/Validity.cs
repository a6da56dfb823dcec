using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>How long what a client was cleared for, and said, carries a programme.</summary>
public static class Validity
{
    /// <summary>The last day on which the client's answers are good, by the practice's own measure.</summary>
    public static DateOnly AnswersUntil(Practice practice, Client client) =>
        client.Answered.AddDays(practice.Card.Settings.AnswersLast);

    /// <summary>The last day on which the pages may be used: that of the programme, of the answers, or of a clearance that some
    /// exercise of theirs rests on, whichever is first.</summary>
    /// <param name="uses">Those of the client's programme.</param>
    public static DateOnly Of(Practice practice, Client client, Series<Use> uses) =>
        practice
            .Conditions.Where(condition => uses.Any(u => Screening.RestsOnClearance(practice, client, u, condition)))
            .Select(condition => ClearedUntil(client, condition))
            .OfType<DateOnly>()
            .Append(client.Programme.End)
            .Append(AnswersUntil(practice, client))
            .Min();

    /// <summary>The last day on which that condition is cleared without a gap since the programme began; null where it is not
    /// cleared then, or later, at all.</summary>
    public static DateOnly? ClearedUntil(Client client, Condition condition)
    {
        DateOnly? until = null;
        foreach (
            var clearance in client
                .Clearances.Where(c => ClearanceCheck.Knows(c, condition, client) && c.Until >= client.Programme.Start)
                .OrderBy(c => c.On)
        )
            if (until is null || (clearance.On <= until.Value.AddDays(1) && clearance.Until > until))
                until = clearance.Until;
        return until;
    }
}
