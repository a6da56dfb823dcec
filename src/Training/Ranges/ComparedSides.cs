using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Left and right of one measure, on the latest occasion that has both.</summary>
/// <param name="Key">Without its side.</param>
/// <param name="Change">Since the last such occasion before the programme; null where there is none, or it is the same.</param>
public sealed record ComparedSides(SeriesKey Key, Measure Measure, RangeSides Latest, SidesChange? Change)
{
    internal static IEnumerable<ComparedSides> Of(Practice practice, Programme programme, Series<MeasuredSeries> measured)
    {
        foreach (var left in measured.Where(s => s.Key.Side == Side.Left))
        {
            if (measured.FirstOrDefault(s => s.Key == left.Key with { Side = Side.Right }) is not { } right)
                continue;
            var pairs = (
                from one in left.Read.Occasions
                let other = right.Read.Occasions.LastOrDefault(o => RangeSides.AreOne(one, o))
                where other is not null
                select RangeSides.Of(one, other, ErrorOf(left, one.Days.Concat(other.Days)))
            ).ToArray();
            if (pairs.Length == 0)
                continue;
            var (latest, baseline) = (pairs[^1], pairs.LastOrDefault(p => p.First <= programme.Start));
            yield return new(left.Key.WithoutSide, left.Measure, latest, ChangeOf(left, baseline, latest));
        }

        SidesChange? ChangeOf(MeasuredSeries of, RangeSides? from, RangeSides to)
        {
            if (from is null || from == to)
                return null;
            var days = new[] { from.Left, from.Right, to.Left, to.Right }.SelectMany(o => o.Days).ToArray();
            return SidesChange.Of(from, to, ErrorOf(of, days), ErrorInUse.ForChangeOfSides(of.Measure, of.Key, days));
        }

        ErrorInUse? ErrorOf(MeasuredSeries of, IEnumerable<DayValue> days) =>
            ErrorInUse.For(of.Measure, of.Key, days, practice.OwnErrors);
    }
}
