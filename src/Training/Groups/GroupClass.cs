using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>One class of a group: who does what of the session that they share, in an order and in times that everybody can
/// follow.</summary>
/// <param name="Members">In the order of the group.</param>
/// <param name="Parts">In the order of the session; what only some do stands where they do it.</param>
public sealed record GroupClass(DateOnly Day, Series<GroupMember> Members, Series<GroupPart> Parts)
{
    /// <summary>How long it takes who waits for the slowest at every exercise.</summary>
    public Seconds Total => new(Parts.Sum(p => p.Seconds.Value));

    /// <param name="clients">The members who could be read, in the order of the group.</param>
    /// <param name="trainingOf">Null where an error stands in the way of a plan.</param>
    public static GroupClass Of(Group group, IEnumerable<Client> clients, DateOnly day, Func<Client, Training?> trainingOf)
    {
        var members = clients.Select(c => GroupMember.Of(group, c, day, trainingOf(c))).ToSeries();
        return new(day, members, GroupPart.Of(group, members).ToSeries());
    }
}

/// <summary>Why somebody does not train on the day of a class.</summary>
public enum Absence
{
    /// <summary>An error stands in the way of a plan.</summary>
    NotReady,
    Stopped,
    NotBegun,
    Paused,
    Over,

    /// <summary>Nothing of the session is done in the week.</summary>
    NothingToDo,
}

/// <param name="Week">Of the client's own programme; null where there is an absence before a week can be told.</param>
/// <param name="Absence">Null where the client takes part.</param>
/// <param name="Does">In order.</param>
/// <param name="Leaves">The uses of the session that the client leaves out in that week, by name.</param>
public sealed record GroupMember(Client Client, int? Week, Absence? Absence, Series<MemberUse> Does, Series<string> Leaves)
{
    internal static GroupMember Of(Group group, Client client, DateOnly day, Training? training)
    {
        var programme = client.Programme;
        var absence =
            client.HasStopped(day) ? Trainings.Absence.Stopped
            : training is null ? Trainings.Absence.NotReady
            : day < programme.Start ? Trainings.Absence.NotBegun
            : day > programme.End ? Trainings.Absence.Over
            : programme.Pauses.Any(p => p.Has(day)) ? Trainings.Absence.Paused
            : (Absence?)null;
        if (absence is not null || training is null)
            return new(client, null, absence, [], []);
        var week = programme.WeekOf(day);
        var differences = programme.From?.Differences ?? [];
        var does = DoesIn(group.Session, differences, programme, training, week).ToSeries();
        var leaves = differences
            .OfType<Difference.LeaveOut>()
            .Where(d => d.IsIn(group.Session) && !(d.FromWeek > week) && group.Session.Do.Any(u => u.Name == d.Use))
            .Select(d => d.Use)
            .ToSeries();
        return new(client, week, does.Count == 0 ? Trainings.Absence.NothingToDo : null, does, leaves);
    }

    private static IEnumerable<MemberUse> DoesIn(
        ProgrammeSession shared,
        Series<Difference> differences,
        Programme programme,
        Training training,
        int week
    )
    {
        var number = programme.Sessions.Index().First(s => s.Item.Name == shared.Name).Index + 1;
        var steps = training.Sessions[number - 1].Weeks.FirstOrDefault(w => w.Weeks.Contains(week))?.Steps ?? [];
        var all = Difference.Placed(shared, differences).ToArray();
        return from at in all.Index()
            let placed = at.Item
            // What is added beside two uses of one name stands there twice, each time by itself.
            let times = all.Count(p => p.Use == placed.Use)
            let turn = all.Take(at.Index).Count(p => p.Use == placed.Use)
            from use in Share(training.Uses.Where(u => u.Session == number && u.Written == placed.Use), times, turn)
            from dose in use.Weeks
            where dose.Week == week
            select new MemberUse(placed, use, dose, Share(RunsOf(steps, placed.Use), times, turn).SelectMany(r => r).ToSeries());
    }

    /// <summary>The steps of a use, each time that it is come to.</summary>
    private static IEnumerable<List<SessionStep>> RunsOf(Series<SessionStep> steps, ProgrammeUse use)
    {
        var run = new List<SessionStep>();
        foreach (var step in steps)
            if (step.Source.Value == use)
                run.Add(step);
            else if (run.Count > 0)
            {
                yield return run;
                run = [];
            }

        if (run.Count > 0)
            yield return run;
    }

    /// <summary>Of things that stand for several equal uses those of one of them.</summary>
    private static IEnumerable<T> Share<T>(IEnumerable<T> things, int times, int turn)
    {
        var all = things.ToArray();
        return all.Skip(turn * (all.Length / times)).Take(all.Length / times);
    }
}

/// <summary>What a member does of the session in that week.</summary>
/// <param name="Placed">Where it stands, and whether it is the client's own.</param>
/// <param name="Steps">From the transition to it on; in rounds those of every round.</param>
public sealed record MemberUse(PlacedUse Placed, Use Use, WeekDose Dose, Series<SessionStep> Steps)
{
    /// <summary>Done in place of another: the name of that one; null where it is not.</summary>
    public string? InsteadOf =>
        Placed.By is Difference.Instead instead && instead.Other.Exercise == Placed.Use.Exercise ? instead.Use : null;

    /// <summary>Whether the client does it beside what is shared.</summary>
    public bool IsAdded => Placed.By is Difference.Add;
}

/// <summary>One exercise of the class, as long as it takes whoever needs longest.</summary>
/// <param name="Name">Of the shared use; of what is added, the exercise.</param>
/// <param name="Rounds">How often it is gone through with the other parts beside it that have the same place; null where it is
/// done by itself.</param>
/// <param name="Does">Who does it, and how, in the order of the group.</param>
public sealed record GroupPart(string Name, Rounds? Rounds, Seconds Seconds, Series<(Client Client, MemberUse Use)> Does)
{
    internal static IEnumerable<GroupPart> Of(Group group, Series<GroupMember> members) =>
        members
            .SelectMany(m => m.Does.Select(use => (m.Client, Use: use)))
            .GroupBy(done => PlaceOf(done.Use))
            .OrderBy(same => same.Key.Index)
            .ThenBy(same => same.Key.Order)
            .Select(same => new GroupPart(
                same.Key.Order == 0 ? group.Session.Do[same.Key.Index].Name : same.Key.Added,
                same.First().Use.Placed.Use.Rounds,
                Longest([.. same.Select(s => s.Use.Steps)]),
                same.ToSeries()
            ));

    /// <summary>What is added stands before or behind its use, and what is done in its place in its place.</summary>
    private static (int Index, int Order, string Added) PlaceOf(MemberUse use) =>
        use.Placed.By is Difference.Add add
            ? (use.Placed.Index, add.IsBefore ? -1 : 1, use.Use.Exercise.Id.Text)
            : (use.Placed.Index, 0, "");

    /// <summary>The longest of each step, where all go through the same kinds of steps; of other ways the longest.</summary>
    private static Seconds Longest(Series<SessionStep>[] ways) =>
        ways.All(w => w.Select(s => s.Kind).SequenceEqual(ways[0].Select(s => s.Kind)))
            ? new(Enumerable.Range(0, ways[0].Count).Sum(step => ways.Max(w => w[step].Seconds.Value)))
            : new(ways.Max(w => w.Sum(s => s.Seconds.Value)));
}
