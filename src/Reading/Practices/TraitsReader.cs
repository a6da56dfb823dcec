using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What comes of a yes, written once for all exercises that have something in common.</summary>
internal static class TraitsReader
{
    /// <summary>Null where nothing is written, or nothing of it can be read.</summary>
    public static ExerciseTraits? In(Fields condition, string key)
    {
        if (condition.Group(key, "what exercises have in common") is not { } fields)
            return null;
        var sheet = fields.SourceFile;
        var traits = new ExerciseTraits(
            fields
                .Texts("properties")
                .Select(p => ExerciseWords.PropertyOf(sheet, p, ExerciseWords.Properties))
                .OfType<string>()
                .ToSeries(),
            Words("stages", ExerciseWords.Stages),
            Words("positions", ExerciseWords.Positions),
            fields.Texts("loads").Select(name => ExerciseWords.RegionOf(sheet, name)).OfType<Region>().ToSeries(),
            fields.At
        );
        fields.Done();
        if (traits.Properties.Count + traits.Stages.Count + traits.Positions.Count + traits.Loads.Count > 0)
            return traits;
        if (!fields.Entries.Any())
            sheet.Fault(
                Faults.ValueWrong,
                fields.At,
                $"'{key}' says for no exercise what comes of a yes.",
                "Write properties, stages, positions or loads, or take it out."
            );
        return null;

        Series<T> Words<T>(string list, (string Word, T Value)[] known)
            where T : struct =>
            Items(fields.Take(list)).Select(item => Values.Choice(sheet, list, item, known)).OfType<T>().ToSeries();
    }

    private static IEnumerable<YamlNode> Items(YamlNode? written) =>
        written is YamlNode.Listing list ? list.Items
        : written is null ? []
        : [written];

    /// <summary>The exercise as it is once each condition has said for which exercises it holds. What it names itself stays as it
    /// is.</summary>
    public static Exercise Concerned(Exercise exercise, Series<Condition> conditions)
    {
        var notWith = Others(c => c.NotWithFor, exercise.NotWith);
        var clearFirst = Others(c => c.ClearFirstFor, exercise.Contraindications.Concat(notWith));
        return notWith.Count + clearFirst.Count == 0
            ? exercise
            : exercise with
            {
                NotWith = exercise.NotWith.Concat(notWith).ToSeries(),
                ClearFirst = exercise.ClearFirst.Concat(clearFirst).ToSeries(),
            };

        List<Mention<ConditionId>> Others(Func<Condition, ExerciseTraits?> holds, IEnumerable<Mention<ConditionId>> named) =>
            [
                .. conditions
                    .Where(c => named.All(n => n.Value != c.Id))
                    .SelectMany(c =>
                        holds(c) is { } traits && traits.Fit(exercise)
                            ? [new Mention<ConditionId>(c.Id, traits.At)]
                            : Array.Empty<Mention<ConditionId>>()
                    ),
            ];
    }
}
