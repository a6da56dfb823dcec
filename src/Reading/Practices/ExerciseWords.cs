using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The words of a header for what an exercise is.</summary>
internal static class ExerciseWords
{
    public static readonly (string, Stage)[] Stages =
    [
        ("prepare", Stage.Prepare),
        ("gain", Stage.Gain),
        ("strengthen", Stage.Strengthen),
        ("control", Stage.Control),
        ("load", Stage.Load),
    ];

    public static readonly (string, Position)[] Positions =
    [
        ("supine", Position.Supine),
        ("prone", Position.Prone),
        ("side-lying", Position.SideLying),
        ("hands-and-knees", Position.HandsAndKnees),
        ("kneeling", Position.Kneeling),
        ("half-kneeling", Position.HalfKneeling),
        ("floor-sitting", Position.FloorSitting),
        ("sitting", Position.Sitting),
        ("standing", Position.Standing),
        ("split-stance", Position.SplitStance),
        ("squat", Position.Squat),
        ("hanging", Position.Hanging),
    ];

    public static readonly (string, SideCue)[] Cues =
    [
        ("foot in front", SideCue.FootInFront),
        ("foot behind", SideCue.FootBehind),
        ("knee down", SideCue.KneeDown),
    ];

    public static readonly string[] Properties = [.. WorkProperty.Written];

    /// <summary>What a caution may attach to: also what the dose makes of an exercise.</summary>
    public static readonly string[] AttachedProperties =
    [
        .. Properties,
        DoseProperties.HardEffort,
        DoseProperties.LongContraction,
    ];

    /// <summary>What of an exercise a condition may matter with: never its stage, for any stage may stretch or strain.</summary>
    public static readonly string[] Whats = [.. AttachedProperties, .. WorkProperty.Derived, .. Positions.Select(p => p.Item1)];

    public static string? PropertyOf(SourceFile sheet, Mention<string>? name, string[] all)
    {
        sheet.Note(name, ValueKind.Of(all));
        if (name is null || all.Contains(name.Value))
            return name?.Value;
        sheet.Fault(
            Faults.ValueWrong,
            name.At,
            $"{Quote.Of(name.Value)} is no property of an exercise.",
            Nearest.Ask(name.Value, all, $"Write one of: {string.Join(", ", all)}."),
            name.Value.Length
        );
        return null;
    }

    public static Region? RegionOf(SourceFile sheet, Mention<string>? name)
    {
        if (name is null)
            return null;
        var all = Region.All.Select(r => r.Name).ToArray();
        sheet.Note(name, ValueKind.Of(all));
        if (Region.Find(name.Value) is { } region)
            return region;
        sheet.Fault(
            Faults.ValueWrong,
            name.At,
            $"{Quote.Of(name.Value)} is no region of the body that Gradus knows.",
            Nearest.Ask(name.Value, all, $"Write one of: {string.Join(", ", all)}."),
            name.Value.Length
        );
        return null;
    }

    /// <summary>"ankle" is the side at work, "other knee" the opposite one.</summary>
    public static Series<LoadedRegion> LoadsOf(SourceFile sheet, Series<Mention<string>> names)
    {
        var loads = new List<LoadedRegion>();
        foreach (var name in names)
        {
            sheet.Note(name, ValueKind.Of(Region.All.Select(r => "other " + r.Name)));
            var other = name.Value.StartsWith("other ", StringComparison.Ordinal);
            if (
                RegionOf(
                    sheet,
                    other ? new(name.Value["other ".Length..], name.At with { Column = name.At.Column + "other ".Length }) : name
                ) is
                { } region
            )
                loads.Add(new(region, other));
        }

        return loads.ToSeries();
    }
}
