using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Measured values in the client's words.</summary>
internal static class RangeWords
{
    /// <summary>What stands on the page in place of braces: "12° on 23 November 2026", "15°".</summary>
    /// <exception cref="ArgumentException">The client has no such number; check the practice first.</exception>
    public static string Of(Inline.RangeFigure figure, Stances stances, ClientRanges ranges, Words words)
    {
        var said = SaidRange.Of(figure, stances, ranges);
        if (said.Value is not { } number)
            throw new ArgumentException($"'{figure.Written}' is no number of this client.", nameof(figure));
        var value = Value(number, figure.Motion.Unit, words);
        return said.Read is { } read ? words.Say("range-read-on", ("value", value), ("date", Days(read, words))) : value;
    }

    public static string Value(decimal value, MotionUnit unit, Words words) =>
        words.Say(unit == MotionUnit.Centimetres ? "centimetres" : "degrees", ("n", words.Decimal(value)));

    /// <summary>The day, or the first and the last with how many the mean is of.</summary>
    public static string Days(Occasion occasion, Words words) =>
        occasion.Days.Count == 1
            ? words.PlainDate(occasion.First)
            : words.Say(
                "range-days",
                ("from", words.PlainDate(occasion.First)),
                ("to", words.PlainDate(occasion.Last)),
                ("n", occasion.Days.Count)
            );
}
