using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What the page of the measured ranges says: what may be judged first, with pictures, then what has its numbers
/// alone.</summary>
/// <param name="Notes">What holds for all of them.</param>
/// <param name="Ranges">What may be judged.</param>
/// <param name="Numbers">What may not.</param>
/// <param name="Sides">Left and right beside each other, where that may be judged; with its note, or empty.</param>
public sealed record PlannedProgress(
    Series<string> Notes,
    Series<PlannedRange> Ranges,
    Series<string> Sides,
    Series<PlannedNumbers> Numbers
)
{
    /// <summary>All of them, in the order of the page.</summary>
    public IEnumerable<RangePicture> Pictures => Ranges.SelectMany(r => r.Readings).Select(r => r.Picture).OfType<RangePicture>();
}

/// <summary>One motion on one side, measured in one way.</summary>
/// <param name="Way">Who moved it, and what measured it.</param>
/// <param name="Sentences">What changed, and what the sport asks.</param>
/// <param name="Scale">Of its pictures.</param>
public sealed record PlannedRange(
    string Name,
    string Way,
    Series<string> Sentences,
    RangeScale Scale,
    Series<PlannedReading> Readings
);

/// <summary>The same where there is no error to judge by.</summary>
/// <param name="Asked">What the sport asks of it, without a word on whether it is reached.</param>
public sealed record PlannedNumbers(string Name, string Way, Series<PlannedReading> Readings, Series<string> Asked);

/// <param name="Day">The day, or the first and the last of an occasion.</param>
/// <param name="Value">With its unit, and what it does not count for.</param>
/// <param name="Picture">Null where there is no error to draw.</param>
public sealed record PlannedReading(string Day, string Value, RangePicture? Picture);

/// <summary>From where to where the pictures of one range go, in its unit, the low end first.</summary>
/// <param name="Marks">What the sport asks, in all of its pictures.</param>
public sealed record RangeScale(decimal From, decimal To, Series<decimal> Marks)
{
    /// <summary>Where a value lies on it: 0 at its low end, 1 at its high end.</summary>
    public decimal Place(decimal value) => (value - From) / (To - From);
}

/// <param name="Sentence">The picture in words.</param>
/// <param name="Low">The low end of what the range may truly have been.</param>
/// <param name="High">The high end of it.</param>
/// <param name="Value">What was read.</param>
public sealed record RangePicture(string Sentence, decimal Low, decimal High, decimal Value);
