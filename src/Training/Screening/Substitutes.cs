using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What would serve a client instead of an exercise that is not for them. It is only ever named; nothing is exchanged
/// without the coach.</summary>
public static class Substitutes
{
    /// <summary>The nearest easier version, or else the first exercise (by id) for the same motion and stage, that nothing stands
    /// against in the weeks of that use, on its side, and for which the client has what it takes; null where there is
    /// none.</summary>
    public static Exercise? For(Practice practice, Client client, Use use)
    {
        // Where something came back that is not settled, nobody knows what else would hurt.
        if (ReturnedPains.Unseen(client, DayRules.Of(practice.Card.Settings)).Any(p => p.Overtakes))
            return null;
        var trial = new TrialUse(practice, client);
        var done = client.Programme.AllSessions[use.Session - 1].Do.Select(u => u.Exercise.Value).ToHashSet();
        return EasierThan(practice, use.Exercise.Id)
            .Concat(practice.Exercises.Where(e => e.Trains == use.Exercise.Trains && e.Stage == use.Exercise.Stage))
            .FirstOrDefault(e => e.Id != use.Exercise.Id && !done.Contains(e.Id) && Serves(trial.Instead(use, e)));

        bool Serves(Use instead) =>
            instead.Weeks.Count > 0
            && Hardness.BeyondYouthLimit(practice, client, instead) is null
            && instead.Exercise.Equipment.All(thing => client.Equipment.Contains(thing, StringComparer.Ordinal))
            && instead.Against.Count == 0
            && instead.Restricted.Count == 0;
    }

    private static IEnumerable<Exercise> EasierThan(Practice practice, ExerciseId exercise)
    {
        var seen = new HashSet<ExerciseId> { exercise };
        for (var easier = practice.Find(exercise)?.Easier; easier is not null && seen.Add(easier.Value); )
        {
            if (practice.Find(easier.Value) is not { } found)
                yield break;
            yield return found;
            easier = found.Easier;
        }
    }
}
