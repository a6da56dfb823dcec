using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What is asked now of weeks that are over, and was not when they were done.</summary>
/// <param name="Session">Its place among the sessions of now, from 0.</param>
/// <param name="Exercise">Null where the session is done another number of times.</param>
/// <param name="Weeks">In rising order; at least one.</param>
public sealed record PastWeeks(int Session, ExerciseId? Exercise, Series<int> Weeks)
{
    /// <summary>An exercise that is taken out of its session is none of it, because that must be possible at any time; nor is
    /// another day of the week, nor a session that may be chosen in place of another and was not there: nobody was asked to do
    /// it.</summary>
    /// <param name="over">The last week that is over.</param>
    public static IEnumerable<PastWeeks> Of(Series<EditionSession> before, Series<EditionSession> now, int over)
    {
        var both = EditionSessions.Both(before, now).ToArray();
        var weeks = Enumerable.Range(1, over).ToArray();
        foreach (var (place, session) in now.Index())
        {
            var earlier = both.FirstOrDefault(b => b.After == session).Before;
            if (earlier is null)
            {
                foreach (var use in session.InsteadOf.Length == 0 ? session.Uses : [])
                    if (Where(w => use.In(w) is not null) is { Count: > 0 } begun)
                        yield return new(place, use.Exercise, begun);
                continue;
            }

            if (Where(w => AnotherTimes(Times(earlier, w), Times(session, w))) is { Count: > 0 } times)
                yield return new(place, null, times);
            foreach (var use in EditionSessions.Only(session, earlier))
                if (Where(w => use.In(w) is not null) is { Count: > 0 } begun)
                    yield return new(place, use.Exercise, begun);
            foreach (var (old, use) in EditionSessions.Both(earlier, session))
                if (Where(w => Asked(old, w) != Asked(use, w)) is { Count: > 0 } other)
                    yield return new(place, use.Exercise, other);
        }

        Series<int> Where(Func<int, bool> differs) => weeks.Where(differs).ToSeries();
    }

    private static bool AnotherTimes(int before, int now) => before > 0 && now > 0 && before != now;

    private static int Times(EditionSession session, int week) => week <= session.Times.Count ? session.Times[week - 1] : 0;

    private static (string Side, string Dose)? Asked(EditionUse use, int week) =>
        use.In(week) is { } asked ? (asked.Side, asked.Dose) : null;
}
