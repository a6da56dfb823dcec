using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>How an exercise looks: its start, its end, and both drawn.</summary>
/// <param name="End">Null where nothing moves.</param>
public sealed record Movement(Posed Start, Posed? End, Figure Figure)
{
    /// <summary>Working out a pose takes some milliseconds, and reading, planning and auditing ask for the same.</summary>
    private static readonly Remembered<(WrittenPose, SideCue?), ReadMovement> Known = new(2000);

    /// <summary>What is written, worked out and drawn. Nothing that is written makes it throw.</summary>
    /// <param name="cue">Where the working leg is, as the exercise says it.</param>
    public static ReadMovement Read(WrittenPose written, SideCue? cue) =>
        Known.Of((written, cue), key => ReadAnew(key.Item1, key.Item2));

    private static ReadMovement ReadAnew(WrittenPose written, SideCue? cue)
    {
        var start = PoseReader.Start(written.Start, cue);
        if (start.Pose is not { } pose || start.Faults.Count > 0)
            return new(null, start.Faults);
        var end = written.End.Count == 0 ? null : PoseReader.End(written.End, pose);
        if (end is { Faults.Count: > 0 })
            return new(null, end.Faults.Select(f => f with { AtEnd = true }).ToSeries());
        var begun = PoseSolver.Solve(pose);
        var ended = end?.Pose is { } last ? PoseSolver.Solve(last, begun) : null;
        var faults = begun
            .Unmet.Select(u => FaultOf(u, written, atEnd: false))
            .Concat((begun.Unmet.Count == 0 ? ended?.Unmet : null)?.Select(u => FaultOf(u, written, atEnd: true)) ?? [])
            .ToSeries();
        var feel = written.Feel is { } place ? new FeelPlace(place, BodySide.Working) : null;
        return new(faults.Count > 0 ? null : new(begun, ended, FigureDrawer.Draw(begun, ended, feel)), faults);
    }

    /// <summary>At the last item that names the part, or at the first of all.</summary>
    private static PoseFault FaultOf(Unmet unmet, WrittenPose written, bool atEnd)
    {
        var items = atEnd ? written.End : written.Start;
        var word = unmet.Part is { } part ? PoseWords.Parts.First(p => p.Value == part.Part).Key : "trunk";
        var item = items.ToList().FindLastIndex(i => i.Split(' ').Any(w => PoseWords.One(w.ToLowerInvariant()) == word));
        return new(
            Math.Max(item, 0),
            0,
            Math.Max(1, items[Math.Max(item, 0)].Length),
            $"This cannot be: {unmet.Sentence}.",
            "Say fewer angles, so that the body can find its own way, or other ones."
        )
        {
            AtEnd = atEnd,
        };
    }
}

/// <summary>A movement as far as it was understood.</summary>
/// <param name="Movement">Null where there is a fault.</param>
/// <param name="Faults">Those of the start, or those of the end.</param>
public sealed record ReadMovement(Movement? Movement, Series<PoseFault> Faults);
