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
        var beginnings = Beginnings.Of(practice, programme, stances);
        var uses = new List<Use>();
        foreach (var (index, session) in programme.AllSessions.Index())
        {
            uses.AddRange(
                session.IsShortened
                    ? Kept(uses, programme, session, index + 1)
                    : Written(practice, programme, session, index + 1, doses, beginnings, uses)
                        .Select(u => Screening.Screened(practice, client, u))
            );
        }

        return uses.ToSeries();
    }

    private static IEnumerable<Use> Written(
        Practice practice,
        Programme programme,
        ProgrammeSession session,
        int number,
        WeekDoses doses,
        Beginnings beginnings,
        List<Use> before
    ) =>
        from written in session.Do
        let named = practice.Find(written.Exercise.Value)
        where named is not null
        from version in written.Versions.Select(v => (ExerciseVersion?)v.Version).Distinct().Prepend(null)
        let done = version is null ? named : practice.VersionOf(named, version.Value)
        where done is not null
        let settled = doses.Of(done, written, version, beginnings.Beside(written), LeadOf(programme, session, written, before))
        select new Use(done.Drill, number, version, settled.Weeks, Aside.Of(written))
        {
            Growth = settled.Growth,
            Unresolved = settled.Unresolved,
        };

    /// <summary>The use that an unnamed dose of an alternate session follows: the same exercise in the session that it stands
    /// for, or else in any; in rounds as this one is, or by itself as this one is.</summary>
    private static Use? LeadOf(Programme programme, ProgrammeSession session, ProgrammeUse written, List<Use> before) =>
        session.InsteadOf is null || written.ByWeek.Count > 0 || written.Versions.Count > 0
            ? null
            : before
                .Where(u =>
                    u.Session <= programme.Sessions.Count
                    && u.Exercise.Id == written.Exercise.Value
                    && u.Version is null
                    && u.Weeks.Count > 0
                    && u.Written.Rounds is null == written.Rounds is null
                )
                .OrderByDescending(u => programme.Sessions[u.Session - 1].Name == session.InsteadOf.Value)
                .FirstOrDefault();

    private static Use[] Kept(List<Use> uses, Programme programme, ProgrammeSession shortened, int number)
    {
        var whole = programme.Sessions.Index().First(s => s.Item.At == shortened.At).Index + 1;
        return [.. uses.Where(u => u.Session == whole && u.Written.KeepWhenShort).Select(u => u with { Session = number })];
    }
}
