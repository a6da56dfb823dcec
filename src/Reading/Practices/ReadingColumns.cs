using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The columns of one <c>readings.csv</c>, found by their names in its first line, in whatever order.</summary>
internal sealed class ReadingColumns
{
    private static readonly string[] Needed = ["date", "motion", "side", "mode", "value", "unit", "instrument"];
    private static readonly string[] Optional = ["by", "trials", "after"];

    private readonly Dictionary<string, int> places;

    private ReadingColumns(Dictionary<string, int> places) => this.places = places;

    public int Count => places.Count;

    /// <summary>"date, motion, side", in the order of the file.</summary>
    public string Names => string.Join(", ", places.OrderBy(p => p.Value).Select(p => p.Key));

    /// <summary>Null where the first line does not name every column that a reading needs, each once.</summary>
    public static ReadingColumns? In(SourceFile sheet)
    {
        var names = sheet.Line(1).Split(',').Select(n => n.Trim()).ToArray();
        var odd =
            names.FirstOrDefault(n => !Needed.Contains(n) && !Optional.Contains(n)) is { } unknown
                ? $"The first line does not name the columns of readings: there is no column {Quote.Of(unknown)}."
            : names.FirstOrDefault(n => names.Count(m => m == n) > 1) is { } twice
                ? $"The column {Quote.Of(twice)} is named twice."
            : Needed.FirstOrDefault(n => !names.Contains(n)) is { } missing ? $"The column {Quote.Of(missing)} is missing."
            : null;
        if (odd is null)
            return new(names.Index().ToDictionary(n => n.Item, n => n.Index));
        sheet.Fault(
            Faults.ValueWrong,
            sheet.At(1, 1),
            odd,
            $"Make it: {string.Join(',', Needed)}; after that, or anywhere, may stand {string.Join(", ", Optional)}.",
            int.MaxValue
        );
        return null;
    }

    public ReadingCell Of(ReadingCell[] row, string name) => row[places[name]];

    /// <summary>Null where the file has no such column.</summary>
    public ReadingCell? Find(ReadingCell[] row, string name) => places.TryGetValue(name, out var place) ? row[place] : null;

    /// <summary>As readings.csv has it; null where the motion is not measured.</summary>
    public static string? UnitOf(Motion motion) =>
        motion.Unit switch
        {
            MotionUnit.Degrees => "deg",
            MotionUnit.Centimetres => "cm",
            MotionUnit.None => null,
        };
}

internal sealed record ReadingCell(string Text, Location At);
