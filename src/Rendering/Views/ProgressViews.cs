using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <param name="Sides">Left and right; empty where nothing may be said of them.</param>
internal sealed record ProgressView(
    Series<string> Notes,
    Series<RangeView> Ranges,
    Series<string> Sides,
    Series<NumbersView> Numbers
);

internal sealed record RangeView(string Name, string Way, Series<string> Sentences, Series<ReadingView> Readings);

internal sealed record NumbersView(string Name, string Way, Series<ReadingView> Readings, Series<string> Asked);

/// <param name="Sentence">The picture in words; empty where there is none.</param>
internal sealed record ReadingView(string Day, string Value, string Sentence, Series<BarView> Bars);

/// <summary>Plan → what the page of the measured ranges shows.</summary>
internal static class ProgressViews
{
    private const int Length = 1000,
        Thin = 4,
        Thick = 10;

    public static ProgressView Of(PlannedProgress progress) =>
        new(
            progress.Notes,
            [.. progress.Ranges.Select(r => new RangeView(r.Name, r.Way, r.Sentences, Readings(r.Readings, r.Scale)))],
            progress.Sides,
            [.. progress.Numbers.Select(n => new NumbersView(n.Name, n.Way, Readings(n.Readings, null), n.Asked))]
        );

    private static Series<ReadingView> Readings(Series<PlannedReading> readings, RangeScale? scale) =>
        [.. readings.Select(r => new ReadingView(r.Day, r.Value, r.Picture?.Sentence ?? "", Bars(scale, r)))];

    /// <summary>First the error, then what the sport asks, and over both what was read; told apart by width, on paper
    /// too.</summary>
    private static Series<BarView> Bars(RangeScale? scale, PlannedReading reading) =>
        scale is null || reading.Picture is not { } picture
            ? []
            :
            [
                Bar("error", scale.Place(picture.Low) * Length, scale.Place(picture.High) * Length),
                .. scale.Marks.Select(m => At("mark", scale.Place(m), Thin)),
                At("read", scale.Place(picture.Value), Thick),
            ];

    private static BarView At(string kind, decimal place, int width) =>
        Bar(kind, (place * Length) - (width / 2m), (place * Length) + (width / 2m));

    private static BarView Bar(string kind, decimal from, decimal to) => new(kind, Tenth(from), Tenth(to - from));

    private static string Tenth(decimal units) => units.ToString("0.#", CultureInfo.InvariantCulture);
}
