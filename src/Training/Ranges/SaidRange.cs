using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What a number in braces is for one client.</summary>
/// <param name="Side">The client's own; null where the motion has none, or the name is no one side.</param>
/// <param name="Value">In the motion's unit; null where there is none, which a rule says.</param>
/// <param name="Read">The occasion, of a reading; null otherwise.</param>
public sealed record SaidRange(Side? Side, decimal? Value, Occasion? Read)
{
    /// <summary>Of several series of a motion and side the one that was read last counts, whoever moved and whatever measured; of
    /// several demands the largest.</summary>
    public static SaidRange Of(Inline.RangeFigure figure, Stances stances, ClientRanges ranges)
    {
        var side = figure.Side is { } name ? stances.Resolve(SideName.Of(name)) : null;
        if (figure.Motion.IsPaired && side is null)
            return new(null, null, null);
        if (figure.Kind == RangeFigureKind.Demand)
            return new(
                side,
                ranges
                    .Demands.Where(d => d.Measure.Motion == figure.Motion && d.Side == side)
                    .Max(d => (decimal?)d.Demand.AtLeast),
                null
            );
        var read = ranges
            .Series.Where(s => s.Key.Motion == figure.Motion && s.Key.Side == side)
            .Select(s => s.Latest)
            .OfType<Occasion>()
            .OrderByDescending(o => o.Last)
            .ThenBy(o => o.Value)
            .FirstOrDefault();
        return new(side, read?.Value, read);
    }
}
