using Gradus.Domain;

namespace Gradus.Auditing;

public sealed class EasierInACircle : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice)
    {
        foreach (var exercise in practice.Exercises)
        {
            if (exercise.Easier is { } easier && Circle(exercise, e => Easier(practice, e)) is { } own)
            {
                yield return Said(
                    Level.Error,
                    own,
                    easier,
                    "Take one 'easier' out of the circle: whoever needs an easier version must come to an end."
                );
            }
            else if (
                Circle(exercise, e => Easier(practice, e).Concat(NamingItHarder(practice, e))) is { } mixed
                && WordIn(mixed, 0) is { } word
                && IsFirst(practice, exercise, mixed)
            )
            {
                yield return Said(
                    Level.Warning,
                    mixed,
                    word,
                    "Look at what they say under 'easier' and 'harder', and turn round the one that is wrong."
                );
            }
        }
    }

    private Finding Said(Level level, Series<Exercise> circle, Mention<ExerciseId> word, string help) =>
        this.Found(level, null, word.At, Message(circle), help, word.Value.Text.Length);

    private static IEnumerable<Exercise> Easier(Practice practice, Exercise exercise) =>
        exercise.Easier is { } easier && practice.Find(easier.Value) is { } found ? [found] : [];

    private static IEnumerable<Exercise> NamingItHarder(Practice practice, Exercise exercise) =>
        practice.Exercises.Where(e => e.Harder?.Value == exercise.Id);

    /// <summary>The shortest way from an exercise over easier ones back to itself, itself at both ends; null where there is
    /// none.</summary>
    private static Series<Exercise>? Circle(Exercise start, Func<Exercise, IEnumerable<Exercise>> easier)
    {
        var reached = new HashSet<ExerciseId>();
        var ways = new Queue<Series<Exercise>>([
            [start],
        ]);
        while (ways.TryDequeue(out var way))
        {
            foreach (var next in easier(way[^1]))
            {
                if (next.Id == start.Id)
                    return way.Append(next).ToSeries();
                if (reached.Add(next.Id))
                    ways.Enqueue(way.Append(next).ToSeries());
            }
        }

        return null;
    }

    /// <summary>A circle is said once: at the first of its exercises that has a word in it, and not at all where 'easier' alone
    /// closes it.</summary>
    private static bool IsFirst(Practice practice, Exercise exercise, Series<Exercise> circle) =>
        circle.All(e => Circle(e, x => Easier(practice, x)) is null)
        && Enumerable
            .Range(0, circle.Count - 1)
            .Where(i => WordIn(circle, i) is not null)
            .MinBy(i => circle[i].Id.Text, StringComparer.Ordinal)
            is var first
        && circle[first].Id == exercise.Id;

    /// <summary>What the exercise at that place says that makes it a part of the circle; null where only its neighbours
    /// do.</summary>
    private static Mention<ExerciseId>? WordIn(Series<Exercise> circle, int place)
    {
        var (own, next, before) = (circle[place], circle[place + 1], circle[place == 0 ? circle.Count - 2 : place - 1]);
        return own.Easier?.Value == next.Id ? own.Easier
            : own.Harder?.Value == before.Id ? own.Harder
            : null;
    }

    private static string Message(Series<Exercise> circle) =>
        circle.Count == 2
            ? $"'{circle[0].Title}' is said to be easier than itself."
            : $"Going from easier to easier, '{circle[0].Title}' leads to "
                + $"{string.Join(", ", circle.Skip(1).SkipLast(1).Select(e => $"'{e.Title}'"))} and back to itself.";
}
