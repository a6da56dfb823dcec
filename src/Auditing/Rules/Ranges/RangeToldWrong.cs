using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class RangeToldWrong : ISiteRule
{
    /// <summary>Of the whole length: drawings have one decimal in a thousand.</summary>
    private const decimal Tolerance = 0.001m;

    /// <summary>How wide a line may be, of the whole length.</summary>
    private const decimal Line = 0.02m;

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        if (plan.Progress is not { } progress || site.Page(PagePath.Progress) is not { } page)
            yield break;
        var drawn = page.Bars;
        var planned = (
            from range in progress.Ranges
            from reading in range.Readings
            where reading.Picture is not null
            select (range, reading, range.Scale, reading.Picture)
        ).ToArray();
        if (drawn.Count != planned.Length)
            yield return this.Wrong(
                plan,
                page.At,
                $"It has {drawn.Count} pictures of measured ranges and not {planned.Length}.",
                "Show one for each reading that has one, in the order of the plan, and none beside."
            );
        foreach (var (bar, (range, reading, scale, picture)) in drawn.Zip(planned))
            if (Fault(bar, scale, picture) is { } fault)
                yield return this.Wrong(
                    plan,
                    bar.At,
                    $"In the picture of '{range.Name}' on {reading.Day}, {fault}.",
                    "Draw the error first, then what the sport asks and last what was read, each where it lies on the scale."
                );
    }

    private static string? Fault(BarSeen bar, RangeScale scale, RangePicture picture)
    {
        if (bar.Label != Spacing.Collapse(picture.Sentence))
            return "another sentence stands";
        if (bar.Length is not { } length || length <= 0)
            return "there is no size";
        if (bar.Parts.Count != scale.Marks.Count + 2)
            return $"there are {bar.Parts.Count} parts and not {scale.Marks.Count + 2}";
        var parts = bar.Parts.Select(p => (From: p.From / length, To: (p.From + p.Width) / length)).ToArray();
        if (!(Near(parts[0].From, scale.Place(picture.Low)) && Near(parts[0].To, scale.Place(picture.High))))
            return "the error has a wrong place or length";
        if (!parts[1..^1].Zip(scale.Marks).All(m => IsLineAt(m.First, scale.Place(m.Second))))
            return "what the sport asks stands in a wrong place";
        return IsLineAt(parts[^1], scale.Place(picture.Value)) ? null : "what was read stands in a wrong place";
    }

    private static bool IsLineAt((decimal? From, decimal? To) part, decimal place) =>
        part.To - part.From is > 0 and <= Line && Near((part.From + part.To) / 2, place);

    private static bool Near(decimal? drawn, decimal place) => drawn is { } there && Math.Abs(there - place) <= Tolerance;
}
