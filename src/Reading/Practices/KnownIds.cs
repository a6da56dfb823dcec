using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What the files of a practice may name. An exercise counts as known when its file is there, even where the file cannot be
/// read: that is said once, at the file.</summary>
internal sealed record KnownIds(
    IReadOnlySet<string> Exercises, IReadOnlySet<string> Cautions, IReadOnlySet<string> Conditions, IReadOnlySet<string> Sports, IReadOnlyDictionary<string, Motion> Motions)
{
    public Series<Mention<CautionId>> CautionsOf(Sheet sheet, Series<Mention<string>> names) =>
        Known(sheet, names, Cautions, "caution", id => new CautionId(id));

    public Series<Mention<ConditionId>> ConditionsOf(Sheet sheet, Series<Mention<string>> names) =>
        Known(sheet, names, Conditions, "condition", id => new ConditionId(id));

    public Mention<ExerciseId>? ExerciseOf(Sheet sheet, Mention<string>? name) =>
        Known(sheet, name is null ? [] : [name], Exercises, "exercise", id => new ExerciseId(id)).FirstOrDefault();

    public Mention<SportId>? SportOf(Sheet sheet, Mention<string>? name) =>
        Known(sheet, name is null ? [] : [name], Sports, "sport", id => new SportId(id)).FirstOrDefault();

    public Motion? MotionOf(Sheet sheet, Mention<string>? name)
    {
        if (name is null) return null;
        if (Motions.TryGetValue(name.Value, out var motion)) return motion;
        SayUnknown(sheet, name, Motions.Keys.Order(StringComparer.Ordinal), "motion");
        return null;
    }

    private static Series<Mention<T>> Known<T>(Sheet sheet, Series<Mention<string>> names, IReadOnlySet<string> known, string kind, Func<string, T> id)
    {
        var found = new List<Mention<T>>();
        foreach (var name in names)
        {
            if (known.Contains(name.Value)) found.Add(new(id(name.Value), name.At));
            else SayUnknown(sheet, name, known.Order(StringComparer.Ordinal), kind);
        }

        return found.DistinctBy(m => m.Value).ToSeries();
    }

    private static void SayUnknown(Sheet sheet, Mention<string> name, IEnumerable<string> known, string kind) => sheet.Fault(
        Faults.IdUnknown, name.At, $"There is no {kind} '{name.Value}' in this practice.",
        Nearest.Ask(name.Value, known, $"Write that {kind}, or take its name out here."), name.Value.Length);
}
