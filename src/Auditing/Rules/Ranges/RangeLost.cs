using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class RangeLost : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from series in ClientRanges.Of(practice, client, training, today).Series
        let lost = series.Sudden ?? series.Changes.FirstOrDefault(c => c.Word == ChangeWord.Less)
        where lost?.Margin is not null
        let last = client.Readings.Last(r => SeriesKey.Of(r) == series.Key && r.Date == lost.To.Last)
        let name = $"{(last.Side is { } side ? side.Word() + " " : "")}{series.Key.Motion.Name}"
        let unit = series.Key.Motion.Unit == MotionUnit.Centimetres ? "cm" : "deg"
        select this.Found(
            Level.Warning,
            client.Id,
            last.At,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{client.Name}'s {name} is {-lost.Difference} "
                    + $"{unit} less than on {lost.From.Last.Iso()}, beyond the error of {lost.Margin:0.#} {unit}."
            ),
            "Before it is sent: measure again, and ask about pain, swelling and a new injury."
        );
}
