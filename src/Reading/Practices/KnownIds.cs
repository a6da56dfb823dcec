using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What the files of a practice may name. Whatever has its file, or its place in conditions.yaml, counts as known even
/// where it cannot be read: that is said once, where it is written.</summary>
/// <param name="Countries">Those for which practice.md says whom to call in an emergency; null where it cannot be read.</param>
internal sealed record KnownIds(
    IReadOnlySet<string> Exercises,
    IReadOnlySet<string> Cautions,
    AskedConditions Conditions,
    IReadOnlySet<string> Sports,
    IReadOnlyDictionary<string, Measure> Measures,
    MediaFiles Media,
    Series<string>? Countries
)
{
    private static readonly HashSet<string> Nothing = [];

    public Series<Mention<CautionId>> CautionsOf(SourceFile sheet, Series<Mention<string>> names) =>
        Known(sheet, names, Cautions, "caution", "Write cautions/{0}.md", id => new CautionId(id));

    public Series<Mention<ConditionId>> ConditionsOf(SourceFile sheet, Series<Mention<string>> names)
    {
        foreach (var old in names.Where(n => Conditions.Former.Has(n.Value)))
            sheet.Fault(
                Faults.ConditionUnknown,
                old.At,
                Conditions.Former.Message(old.Value),
                Conditions.Former.Help(old.Value),
                old.Value.Length
            );
        return Known(
            sheet,
            names.Where(n => !Conditions.Former.Has(n.Value)).ToSeries(),
            Conditions.Ids,
            "condition",
            "Add it to conditions.yaml",
            id => new ConditionId(id),
            Faults.ConditionUnknown
        );
    }

    public Mention<ExerciseId>? ExerciseOf(SourceFile sheet, Mention<string>? name) =>
        Known(sheet, name is null ? [] : [name], Exercises, "exercise", "Write exercises/{0}.md", id => new ExerciseId(id))
            .FirstOrDefault();

    public Mention<SportId>? SportOf(SourceFile sheet, Mention<string>? name) =>
        Known(sheet, name is null ? [] : [name], Sports, "sport", "Write sports/{0}.yaml", id => new SportId(id))
            .FirstOrDefault();

    /// <summary>What an exercise trains or a clinician limits: a motion of a joint, not one of several ways to measure
    /// it.</summary>
    public Motion? MotionOf(SourceFile sheet, Mention<string>? name)
    {
        if (Known(sheet, name) is not { Of: { } of } way)
            return name is null ? null : Measures.GetValueOrDefault(name.Value)?.Motion;
        sheet.Fault(
            Faults.ValueWrong,
            name?.At ?? sheet.Whole,
            $"{Quote.Of(way.Motion.Name)} is a way to measure {of}.",
            $"Write {of}: what is trained is the motion, however it is measured.",
            way.Motion.Name.Length
        );
        return null;
    }

    /// <summary>What is read, demanded or needed: a motion in the one way in which it is measured.</summary>
    public Measure? MeasureOf(SourceFile sheet, Mention<string>? name)
    {
        if (name is null || Known(sheet, name) is not { } measure)
            return null;
        var ways = Measures.Values.Where(m => m.Of == measure.Motion.Name).Select(m => m.Motion.Name).ToArray();
        if (ways.Length == 0)
            return measure;
        sheet.Fault(
            Faults.ValueWrong,
            name.At,
            $"{Quote.Of(name.Value)} is measured in {ways.Length} ways that do not compare.",
            $"Write which one: {string.Join(", ", ways.Order(StringComparer.Ordinal))}.",
            name.Value.Length
        );
        return null;
    }

    private Measure? Known(SourceFile sheet, Mention<string>? name)
    {
        if (name is null)
            return null;
        if (Measures.TryGetValue(name.Value, out var measure))
            return measure;
        SayUnknown(
            sheet,
            name,
            Measures.Keys.Order(StringComparer.Ordinal),
            "motion",
            "Write the name of a motion, as ankle dorsiflexion."
        );
        return null;
    }

    private static Series<Mention<T>> Known<T>(
        SourceFile sheet,
        Series<Mention<string>> names,
        IReadOnlySet<string>? known,
        string kind,
        string remedy,
        Func<string, T> id,
        RuleId? fault = null
    )
    {
        var found = new List<Mention<T>>();
        foreach (var name in names)
        {
            if (known?.Contains(name.Value) ?? Id.IsValid(name.Value))
                found.Add(new(id(name.Value), name.At));
            else
                SayUnknown(
                    sheet,
                    name,
                    (known ?? Nothing).Order(StringComparer.Ordinal),
                    kind,
                    RemedyFor(name.Value, remedy),
                    fault
                );
        }

        return found.DistinctBy(m => m.Value).ToSeries();
    }

    private static void SayUnknown(
        SourceFile sheet,
        Mention<string> name,
        IEnumerable<string> known,
        string kind,
        string remedy,
        RuleId? fault = null
    ) =>
        sheet.Fault(
            fault ?? Faults.IdUnknown,
            name.At,
            $"There is no {kind} {Quote.Of(name.Value)} in this practice.",
            Nearest.Ask(name.Value, known, remedy),
            name.Value.Length
        );

    private static string RemedyFor(string name, string remedy) =>
        Id.IsValid(name)
            ? $"{remedy.Replace("{0}", name, StringComparison.Ordinal)}, or take its name out here."
            : "Take its name out here; a name that can be used has small letters, digits and hyphens only.";
}
