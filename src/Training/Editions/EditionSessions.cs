using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>The sessions of two editions → what is other in those of the second.</summary>
public static class EditionSessions
{
    /// <summary>The sessions that are in both: those of the same name, and of the rest those in the same place.</summary>
    public static IEnumerable<(EditionSession Before, EditionSession After)> Both(
        Series<EditionSession> before,
        Series<EditionSession> after
    )
    {
        foreach (var (index, session) in after.Index())
        {
            if (before.FirstOrDefault(s => s.Name == session.Name) is { } same)
                yield return (same, session);
            else if (
                index < before.Count
                && before[index] is var other
                && other.InsteadOf.Length > 0 == session.InsteadOf.Length > 0
                && after.All(s => s.Name != other.Name)
            )
                yield return (other, session);
        }
    }

    /// <summary>The uses that are in both: the same exercise, of several in a session the first with the first.</summary>
    public static IEnumerable<(EditionUse Before, EditionUse After)> Both(EditionSession before, EditionSession after) =>
        Numbered(before).Join(Numbered(after), u => u.Key, u => u.Key, (b, a) => (b.Use, a.Use));

    /// <summary>The uses of a session that have no like in another.</summary>
    public static IEnumerable<EditionUse> Only(EditionSession of, EditionSession other) =>
        Numbered(of).ExceptBy(Numbered(other).Select(u => u.Key), u => u.Key).Select(u => u.Use);

    internal static IEnumerable<EditionChange> Compare(EditionContent before, EditionContent after)
    {
        var both = Both(before.Sessions, after.Sessions).ToArray();
        foreach (var session in after.Sessions.Where(s => both.All(b => b.After != s)))
            yield return new EditionChange.SessionIn(session.Name);
        foreach (var session in before.Sessions.Where(s => both.All(b => b.Before != s)))
            yield return new EditionChange.SessionOut(session.Name);
        foreach (var (earlier, later) in both)
        {
            if (earlier.Name != later.Name)
                yield return new EditionChange.SessionNamed(earlier.Name, later.Name);
            var renamed = both.Any(b => (b.Before.Name, b.After.Name) == (earlier.InsteadOf, later.InsteadOf));
            if (earlier.Days != later.Days || (earlier.InsteadOf != later.InsteadOf && !renamed))
                yield return new EditionChange.Days(later.Name, Done(earlier), Done(later));
            foreach (var change in Compare(earlier, later, before, after))
                yield return change;
        }
    }

    private static string Done(EditionSession session) =>
        session.InsteadOf.Length == 0 ? session.Days : $"instead of '{session.InsteadOf}', {session.Days}";

    private static IEnumerable<EditionChange> Compare(
        EditionSession earlier,
        EditionSession later,
        EditionContent before,
        EditionContent after
    )
    {
        var (olds, news) = (Numbered(earlier).ToArray(), Numbered(later).ToArray());
        foreach (var use in Only(later, earlier))
            yield return new EditionChange.ExerciseIn(later.Name, Named(after, use.Exercise));
        foreach (var use in Only(earlier, later))
            yield return new EditionChange.ExerciseOut(later.Name, Named(before, use.Exercise));
        var stayed = olds.Select(u => u.Key).Intersect(news.Select(u => u.Key)).ToArray();
        if (!stayed.SequenceEqual(news.Select(u => u.Key).Where(stayed.Contains)))
            yield return new EditionChange.Order(later.Name);
        var weeks = Math.Min(before.Weeks, after.Weeks);
        foreach (var (old, now) in Both(earlier, later))
        foreach (var change in Compare(old, now, later.Name, Named(after, now.Exercise), weeks))
            yield return change;
    }

    private static IEnumerable<EditionChange> Compare(
        EditionUse before,
        EditionUse after,
        string session,
        EditionExercise exercise,
        int weeks
    )
    {
        var (olds, news) = (Until(before), Until(after));
        if (!olds.SequenceEqual(news))
            yield return new EditionChange.DoneIn(session, exercise, olds, news);
        if (Changes(d => d.Dose) is { Count: > 0 } doses)
            yield return new EditionChange.Doses(session, exercise, doses);
        if (Changes(d => d.Side) is { Count: > 0 } sides)
            yield return new EditionChange.Sides(session, exercise, sides);
        if (before.Rounds != after.Rounds)
            yield return new EditionChange.Rounds(session, exercise, before.Rounds, after.Rounds);
        if (before.IsKept != after.IsKept)
            yield return new EditionChange.Kept(session, exercise, after.IsKept);
        if (before.MoveOn != after.MoveOn)
            yield return new EditionChange.MoveOn(session, exercise);

        Series<int> Until(EditionUse use) => use.Weeks.Where(w => w <= weeks).ToSeries();

        Series<Changed> Changes(Func<EditionDose, string> part) =>
            InRows(
                olds.Intersect(news)
                    .Select(w => new Changed(w, w, Asked(before, w, part), Asked(after, w, part)))
                    .Where(c => c.Before != c.After)
            );
    }

    private static string Asked(EditionUse use, int week, Func<EditionDose, string> part) =>
        use.In(week) is { } asked ? part(asked) : "";

    private static Series<Changed> InRows(IEnumerable<Changed> weeks)
    {
        var rows = new List<Changed>();
        foreach (var week in weeks)
            if (rows is [.., var last] && last.To == week.From - 1 && last with { From = week.From, To = week.To } == week)
                rows[^1] = last with { To = week.To };
            else
                rows.Add(week);
        return rows.ToSeries();
    }

    /// <summary>In their order; the number is that among the uses of one exercise, from 0.</summary>
    private static IEnumerable<((ExerciseId Exercise, int Number) Key, EditionUse Use)> Numbered(EditionSession session)
    {
        var met = new Dictionary<ExerciseId, int>();
        foreach (var use in session.Uses)
        {
            var number = met.GetValueOrDefault(use.Exercise);
            met[use.Exercise] = number + 1;
            yield return ((use.Exercise, number), use);
        }
    }

    private static EditionExercise Named(EditionContent content, ExerciseId id) =>
        content.Exercises.FirstOrDefault(e => e.Id == id) ?? new(id, id.Text, "");
}
