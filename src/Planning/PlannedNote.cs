using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>A condition with which some exercise of the plan is left out, or done only with a clinician's leave.</summary>
/// <param name="Name">As it begins a line.</param>
/// <param name="Told">What the client answered, where that is yes, and how far it is cleared: a sentence for each.</param>
/// <param name="Effects">At least one.</param>
public sealed record PlannedConcern(ConditionId Condition, string Name, Series<string> Told, Series<PlannedEffect> Effects)
{
    /// <summary>As far as it concerns those exercises; null where it concerns none of them.</summary>
    internal PlannedConcern? For(HashSet<ExerciseId> shown)
    {
        var effects = Effects
            .Where(e => e.Exercises.Any(shown.Contains))
            .Select(e => e with { Exercises = e.Exercises.Where(shown.Contains).ToSeries() })
            .ToSeries();
        return effects.Count == 0 ? null : this with { Effects = effects };
    }

    /// <summary>What was answered with yes, in full.</summary>
    internal PlannedNote Note(Plan plan, Func<ExerciseId, IEnumerable<string>> names) =>
        new(Name, Told.Concat(Effects.Select(e => e.Sentence(plan, names))).ToSeries());
}

/// <summary>What comes of a condition for some exercises.</summary>
/// <param name="Phrase">The phrase of the catalogue that says it of <c>{exercises}</c>.</param>
/// <param name="Side">The side that the phrase names, in words; empty where it names none.</param>
/// <param name="Exercises">In the order of the plan; at least one.</param>
public sealed record PlannedEffect(string Phrase, string Side, Series<ExerciseId> Exercises)
{
    internal string Sentence(Plan plan, Func<ExerciseId, IEnumerable<string>> names)
    {
        var exercises = plan.Words.Joined([.. Exercises.SelectMany(names)], "comma");
        return Side.Length == 0
            ? plan.Words.Say(Phrase, ("exercises", exercises))
            : plan.Words.Say(Phrase, ("exercises", exercises), ("side", Side));
    }
}

/// <summary>A title and the sentences below it, which stand together and unaltered on a page.</summary>
public sealed record PlannedNote(string Title, Series<string> Sentences)
{
    public IEnumerable<string> Lines() => Sentences.Prepend(Title);
}
