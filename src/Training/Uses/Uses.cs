using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Programme → uses: every week's dose settled, every side the client's own.</summary>
public static class Uses
{
    /// <summary>The uses of all sessions of a client's programme in order; where the coach takes an easier or harder version in
    /// some weeks, that version is a use of its own behind the exercise it stands in for. An exercise that could not be read has
    /// none; a side that cannot be resolved keeps its name, for the rule side-unresolved to find.</summary>
    public static Series<Use> Of(Practice practice, Client client)
    {
        var programme = client.Programme;
        var settling = new Settling(programme, Playing.Of(practice, client), practice.Card.Settings);
        var uses = new List<Use>();
        foreach (var (index, session) in programme.AllSessions.Index())
            uses.AddRange(
                session.IsShortened ? Kept(uses, programme, session, index + 1) : Written(practice, session, index + 1, settling)
            );
        return uses.ToSeries();
    }

    /// <summary>The exercise that stands in; null where the exercise has none, or it could not be read.</summary>
    public static Exercise? VersionOf(Practice practice, Exercise exercise, ExerciseVersion version) =>
        (version == ExerciseVersion.Easier ? exercise.Easier : exercise.Harder) is { } named ? practice.Find(named.Value) : null;

    private static IEnumerable<Use> Written(Practice practice, ProgrammeSession session, int number, Settling settling) =>
        from written in session.Do
        let named = practice.Find(written.Exercise.Value)
        where named is not null
        from version in written.Versions.Select(v => (ExerciseVersion?)v.Version).Distinct().Prepend(null)
        let done = version is null ? named : VersionOf(practice, named, version.Value)
        where done is not null
        select new Use(done, written, number, version, settling.Weeks(done, written, version));

    private static Use[] Kept(List<Use> uses, Programme programme, ProgrammeSession shortened, int number)
    {
        var whole = programme.Sessions.Index().First(s => s.Item.At == shortened.At).Index + 1;
        return [.. uses.Where(u => u.Session == whole && u.Written.KeepWhenShort).Select(u => u with { Session = number })];
    }
}
