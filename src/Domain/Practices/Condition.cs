namespace Gradus.Domain;

/// <summary>A fact about a client's health that somebody must know before an exercise is done.</summary>
/// <param name="Name">Reads well after "not with": an ankle injury in the last 12 weeks.</param>
/// <param name="Question">The question that asks it, answered yes, no, or not asked.</param>
/// <param name="Where">The region it touches.</param>
/// <param name="IsSided">Whether a yes may be for one side.</param>
/// <param name="Basis">Why everybody is asked it, whatever the exercises name; null for a question of the practice's own.</param>
public sealed record Condition(
    ConditionId Id,
    string Name,
    string Question,
    Region Where,
    bool IsSided,
    Location At,
    Basis? Basis = null
)
{
    /// <summary>In which they stand.</summary>
    public const string File = "conditions.yaml";

    public bool IsAlwaysAsked => Basis is not null && Id != AlwaysAsked.Age;

    /// <summary>Whether its name and its question are in the words of Gradus, which are in the catalogue of each
    /// language.</summary>
    public bool IsSaidByGradus { get; init; }

    /// <summary>The exercises that a yes forbids, clearance or not, without their naming it; null for none.</summary>
    public ExerciseTraits? NotWithFor { get; init; }

    /// <summary>The exercises that a yes forbids until a clearance is in force, without their naming it; null for none.</summary>
    public ExerciseTraits? ClearFirstFor { get; init; }

    public Condition In(Words words) =>
        IsSaidByGradus ? this with { Name = words.Say($"condition-{Id}"), Question = words.Say($"question-{Id}") } : this;
}

/// <summary>Why a question is asked.</summary>
/// <param name="Mark">How far the source is confirmed: seen, second-hand, memory, or common practice without a source.</param>
/// <param name="MattersFor">The properties, stages and positions with which an exercise must say what comes of a yes; often
/// none.</param>
/// <param name="IsOfNow">Whether it is something that comes and goes, so that only a clearance from the day of the answers on can
/// have known of it.</param>
public sealed record Basis(string Because, string Source, string Mark, Series<string> MattersFor, bool IsOfNow = false);

/// <summary>Those of the questions that are always asked whose answers are judged in a way of their own.</summary>
public static class AlwaysAsked
{
    public static readonly ConditionId Heart = new("heart-disease");
    public static readonly ConditionId Metabolic = new("metabolic-disease");
    public static readonly ConditionId Kidney = new("kidney-disease");
    public static readonly ConditionId Symptoms = new("signs-or-symptoms");
    public static readonly ConditionId RegularlyActive = new("regularly-active");
    public static readonly ConditionId PainNow = new("pain-now");

    /// <summary>Nobody is asked it: it follows from when somebody was born.</summary>
    public static readonly ConditionId Age = new("sixty-five-or-older");

    /// <summary>The three that make one row of the decision before training.</summary>
    public static readonly Series<ConditionId> Diseases = [Heart, Metabolic, Kidney];

    /// <summary>Whether an exercise may be forbidden by it: regular activity is no harm, and pain is judged by where it is and
    /// how much.</summary>
    public static bool MayForbid(ConditionId condition) => condition != RegularlyActive && condition != PainNow;
}
