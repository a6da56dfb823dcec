namespace Gradus.Domain;

/// <summary>What was asked of a practice by whoever works something out for one client. Of exercises and of other clients that
/// hangs on nothing else, so it is the same as long as these are. One thread at a time.</summary>
public sealed class Asked
{
    private readonly HashSet<ExerciseId> exercises = [];

    /// <summary>Those that were looked up by their id, there or not, in the order of their ids.</summary>
    public Series<ExerciseId> Exercises => exercises.OrderBy(e => e.Text, StringComparer.Ordinal).ToSeries();

    /// <summary>Whether what the readings of all clients say about the error of measuring was asked for.</summary>
    public bool IsOfErrors { get; private set; }

    /// <summary>Whether all exercises or all clients were gone through.</summary>
    public bool IsOfEverything { get; private set; }

    public void NoteErrors() => IsOfErrors = true;

    public void NoteEverything() => IsOfEverything = true;

    public void Note(ExerciseId exercise) => exercises.Add(exercise);

    /// <summary>What was asked here or there.</summary>
    public void Add(Asked others)
    {
        exercises.UnionWith(others.exercises);
        IsOfErrors |= others.IsOfErrors;
        IsOfEverything |= others.IsOfEverything;
    }
}
