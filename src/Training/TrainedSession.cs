using Gradus.Domain;

namespace Gradus.Trainings;

/// <param name="Number">From 1, in the coach's order; behind the sessions of the programme those that the client may choose
/// instead.</param>
/// <param name="InsteadOf">The number of the session that it may stand in for; null for a session of the programme
/// itself.</param>
/// <param name="Kind">Why it may stand in for that session; null for a session of the programme itself.</param>
/// <param name="IsShortened">Whether it is the kept part of that session, so that its doses are that session's.</param>
/// <param name="Weeks">Weeks with the same steps together, in the order of their first week; empty where some dose takes longer
/// than 4 h.</param>
public sealed record TrainedSession(
    int Number,
    int? InsteadOf,
    AlternateKind? Kind,
    bool IsShortened,
    SessionDays Days,
    Series<TimedWeeks> Weeks
)
{
    /// <param name="uses">Those of all sessions.</param>
    public static TrainedSession Of(int number, Programme programme, Series<Use> uses, PracticeSettings settings, bool countable)
    {
        var written = programme.AllSessions[number - 1];
        var whole = written.InsteadOf is { } other
            ? programme.Sessions.Index().First(s => s.Item.Name == other.Value).Index + 1
            : (int?)null;
        var own = uses.Where(u => u.Session == number).ToArray();
        return new(
            number,
            whole,
            written.Kind,
            written.IsShortened,
            written.Days,
            countable ? Timelines.Of(own, programme.Weeks, settings) : []
        );
    }
}
