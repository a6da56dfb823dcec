using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Programme → uses: every week's dose settled, every side the client's own, each screened.</summary>
internal sealed class Uses
{
    private readonly Practice practice;
    private readonly Programme programme;
    private readonly WeekDoses doses;
    private readonly Beginnings beginnings;

    /// <summary>Those of the sessions so far, on which later sessions may build.</summary>
    private readonly List<Use> before = [];

    private Uses(Practice practice, Programme programme, Stances stances)
    {
        this.practice = practice;
        this.programme = programme;
        doses = new(programme, stances, practice.Card.Settings);
        beginnings = Beginnings.Of(practice, programme, stances);
    }

    /// <summary>The uses of all sessions of a client's programme in order; where the coach takes an easier or harder version in
    /// some weeks, that version is a use of its own behind the exercise it stands in for. An exercise that could not be read has
    /// none.</summary>
    public static Series<Use> Of(Practice practice, Client client, Stances stances)
    {
        var uses = new Uses(practice, client.Programme, stances);
        foreach (var (index, session) in client.Programme.AllSessions.Index())
            uses.before.AddRange(
                session.IsShortened
                    ? uses.Kept(session, index + 1)
                    : uses.Written(session, index + 1).Select(use => Screening.Screened(practice, client, use))
            );
        return uses.before.ToSeries();
    }

    private Use[] Written(ProgrammeSession session, int number) =>
        [
            .. session.Do.SelectMany(written =>
                session.Taken is { } taken ? Taken(session, number, written, taken) : Settled(session, number, written)
            ),
        ];

    private Use[] Settled(ProgrammeSession session, int number, ProgrammeUse written)
    {
        if (practice.Find(written.Exercise.Value) is not { } named)
            return [];
        var lead = LeadOf(session, written);
        return
        [
            .. from version in written.Versions.Select(v => (ExerciseVersion?)v.Version).Distinct().Prepend(null)
            let done = version is null ? named : practice.VersionOf(named, version.Value)
            where done is not null
            let settled = doses.Of(done, written, version, beginnings.Beside(written), lead)
            select new Use(done.Drill, number, version, settled.Weeks, Aside.Of(written))
            {
                Growth = settled.Growth,
                Unresolved = settled.Unresolved,
            },
        ];
    }

    /// <summary>A use of a session that is taken from another, as it is there with its share of the sets; as it is written
    /// where the client does it otherwise here.</summary>
    private IEnumerable<Use> Taken(ProgrammeSession session, int number, ProgrammeUse written, TakenSession taken)
    {
        var whole = NumberOf(taken.Of);
        var times = programme.Sessions[whole - 1].Do.Count(IsSame);
        var done = before.Where(u => u.Session == whole && IsSame(u.Written)).ToArray();
        // What is added beside several uses stands there as often, each time with all its versions.
        return times > 0
            ? done.Take(done.Length / times)
                .Select(u => With(u, taken) with { Session = number, Growth = [], Source = Aside.Of(written) })
            : Settled(session, number, written);

        bool IsSame(ProgrammeUse other) => other with { Rounds = written.Rounds } == written;
    }

    private Use With(Use use, TakenSession taken) =>
        use with
        {
            Weeks = use.Weeks.Select(w => w.Shorter(taken.From(w.Dose), practice.Card.Settings.Dose)).ToSeries(),
        };

    /// <summary>The use that an unnamed dose of an alternate session follows: the same exercise in the session that it stands
    /// for, or else in any; in rounds as this one is, or by itself as this one is.</summary>
    private Use? LeadOf(ProgrammeSession session, ProgrammeUse written) =>
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

    private Use[] Kept(ProgrammeSession shortened, int number)
    {
        var whole = NumberOf(shortened.Name);
        return [.. before.Where(u => u.Session == whole && u.Written.KeepWhenShort).Select(u => u with { Session = number })];
    }

    private int NumberOf(string session) => programme.Sessions.Index().First(s => s.Item.Name == session).Index + 1;
}
