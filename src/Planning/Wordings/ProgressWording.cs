using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>What was measured → what its page says. Every sentence of it must be there, and no other.</summary>
internal static class ProgressWording
{
    public static Wording Of(PlannedProgress progress, Words words) =>
        Order(
            Must(words.Say("progress")),
            Order(progress.Notes.Select(n => Must(n))),
            Order(progress.Ranges.Select(r => Range(r, words))),
            Order(
                progress.Sides.Select(s => Must(s)).Prepend(progress.Sides.Count > 0 ? May(words.Say("sides-heading")) : Order())
            ),
            progress.Numbers.Count > 0 ? Order(May(words.Say("numbers-heading")), Must(words.Say("numbers-note"))) : Order(),
            Order(progress.Numbers.Select(Numbers))
        );

    private static Wording Range(PlannedRange range, Words words) =>
        Order(
            Must(range.Name),
            Must(range.Way),
            Order(range.Sentences.Select(s => Must(s))),
            Order(May(words.Say("range-day")), May(words.Say("range-value"))),
            Readings(range.Readings)
        );

    private static Wording Numbers(PlannedNumbers numbers) =>
        Order(Must(numbers.Name), Must(numbers.Way), Readings(numbers.Readings), Order(numbers.Asked.Select(a => Must(a))));

    private static Wording Readings(Series<PlannedReading> readings) =>
        Order(readings.Select(r => Order(Must(r.Day), Must(r.Value))));
}
