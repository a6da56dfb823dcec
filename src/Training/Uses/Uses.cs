using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Programme → uses: every week's dose settled, every side the client's own, each screened.</summary>
internal static class Uses
{
    /// <summary>The uses of all sessions of a client's programme in order; where the coach takes an easier or harder version in
    /// some weeks, that version is a use of its own behind the exercise it stands in for. An exercise that could not be read has
    /// none.</summary>
    public static Series<Use> Of(Practice practice, Client client, Stances stances)
    {
        var programme = client.Programme;
        var doses = new WeekDoses(programme, stances, practice.Card.Settings);
        var uses = new List<Use>();
        foreach (var (index, session) in programme.AllSessions.Index())
        {
            uses.AddRange(
                session.IsShortened
                    ? Kept(uses, programme, session, index + 1)
                    : Written(practice, session, index + 1, doses)
                        .Select(u => u with { Against = Screening.Of(practice, client, u).ToSeries() })
            );
        }

        return uses.ToSeries();
    }

    private static IEnumerable<Use> Written(Practice practice, ProgrammeSession session, int number, WeekDoses doses) =>
        from written in session.Do
        let named = practice.Find(written.Exercise.Value)
        where named is not null
        from version in written.Versions.Select(v => (ExerciseVersion?)v.Version).Distinct().Prepend(null)
        let done = version is null ? named : practice.VersionOf(named, version.Value)
        where done is not null
        let settled = doses.Of(done, written, version)
        select new Use(done.Drill, number, version, settled.Weeks, Aside.Of(written)) { Unresolved = settled.Unresolved };

    private static Use[] Kept(List<Use> uses, Programme programme, ProgrammeSession shortened, int number)
    {
        var whole = programme.Sessions.Index().First(s => s.Item.At == shortened.At).Index + 1;
        return [.. uses.Where(u => u.Session == whole && u.Written.KeepWhenShort).Select(u => u with { Session = number })];
    }
}
