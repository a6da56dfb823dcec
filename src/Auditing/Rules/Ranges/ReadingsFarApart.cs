using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class ReadingsFarApart : IClientRule
{
    /// <summary>More than these between two readings of one day is a slip or a bad day to measure; common practice, no
    /// source.</summary>
    private const decimal Degrees = 10;

    private const decimal Centimetres = 1.5m;

    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from day in client.Readings.Where(r => !r.IsAfterTraining).GroupBy(r => (SeriesKey.Of(r), r.Date))
        let least = day.MinBy(r => r.Value)
        let most = day.MaxBy(r => r.Value)
        where most.Value - least.Value > (least.Motion.Unit == MotionUnit.Centimetres ? Centimetres : Degrees)
        let later = least.At.CompareTo(most.At) > 0 ? least : most
        select this.Found(
            Level.Warning,
            client.Id,
            later.At,
            $"Two readings of {MeasureTexts.NameOf(least.Motion, least.Side)} on {least.Date.Iso()} are far apart: "
                + $"{MeasureTexts.InUnit(least.Value, least.Motion)} and {MeasureTexts.InUnit(most.Value, most.Motion)}.",
            "Look up what was read. Where both are right, measure again: their mean says little.",
            later.Date.Iso().Length
        );
}
