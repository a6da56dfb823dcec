namespace Gradus.Domain;

/// <summary>How long what a client was cleared for, and said, carries a programme.</summary>
public static class Validity
{
    /// <summary>The last day on which the client's answers are good, by the practice's own measure.</summary>
    public static DateOnly AnswersUntil(Practice practice, Client client) => client.Answered.AddDays(practice.Card.Settings.AnswersLast);

    /// <summary>The last day on which the pages may be used: that of the programme, of the answers, or of a clearance that some exercise of theirs rests on, whichever is first.</summary>
    /// <param name="exercises">Those of the client's programme.</param>
    public static DateOnly Of(Practice practice, Client client, IEnumerable<Exercise> exercises)
    {
        var needed = exercises.SelectMany(e => e.ClearFirst).Select(c => c.Value).Where(c => client.AnswerTo(c)?.Reply is Reply.Yes).ToHashSet();
        var clearances = client.Clearances.Where(c => needed.Contains(c.Condition)).GroupBy(c => c.Condition).Select(c => c.Max(one => one.Until));
        return clearances.Append(client.Programme.End).Append(AnswersUntil(practice, client)).Min();
    }
}
