using Gradus.Domain;
using nietras.SeparatedValues;

namespace Gradus.Reading;

/// <summary><c>readings.csv</c>: measured ranges, one a line. They are read strictly, and judged elsewhere.</summary>
internal sealed class ReadingsReader(SourceFile sheet, KnownIds known)
{
    private static readonly string[] Columns = ["date", "motion", "side", "mode", "value", "unit", "instrument"];

    /// <summary>In the order of the file.</summary>
    public static Series<RangeReading> Read(SourceFile sheet, KnownIds known) =>
        new ReadingsReader(sheet, known).All().ToSeries();

    private List<RangeReading> All()
    {
        var readings = new List<RangeReading>();
        if (string.Join(',', Columns) is var header && sheet.Line(1).TrimEnd() != header)
        {
            sheet.Fault(
                Faults.ValueWrong,
                sheet.At(1, 1),
                "The first line does not name the columns of readings.",
                $"Make it: {header}",
                int.MaxValue
            );
            return readings;
        }

        using var rows = Sep.New(',').Reader(o => o with { Unescape = true, DisableColCountCheck = true }).FromText(sheet.Text);
        foreach (var row in rows)
        {
            if (row.Span.IsWhiteSpace())
                continue;
            if (row.ColCount != Columns.Length)
            {
                sheet.Fault(
                    Faults.ValueWrong,
                    sheet.At(row.LineNumberFrom, 1),
                    $"This line has {row.ColCount} columns; a reading has {Columns.Length}.",
                    $"Write {string.Join(", ", Columns)}, with commas between them.",
                    int.MaxValue
                );
                continue;
            }

            var cells = new Cell[row.ColCount];
            var column = 1;
            for (var i = 0; i < cells.Length; i++)
            {
                var text = row[i].ToString();
                cells[i] = new(text.Trim(), sheet.At(row.LineNumberFrom, column));
                column += text.Length + 1;
            }

            if (One(cells) is { } reading)
                readings.Add(reading);
        }

        return readings;
    }

    private RangeReading? One(Cell[] cells)
    {
        var date = Values.DayOf(cells[0].Text);
        if (date is null)
            Values.SayNoDate(
                sheet,
                cells[0].Text,
                cells[0].At,
                $"{Quote.Of(cells[0].Text)} is no date.",
                "Write year, month and day with hyphens, as 2026-12-07."
            );
        var motion = known.MotionOf(sheet, new(cells[1].Text, cells[1].At));
        var mode = Choice<RangeMode>(cells[3], ("active", RangeMode.Active), ("passive", RangeMode.Passive));
        var value = Number(cells[4]);
        if (cells[6].Text.Length == 0)
            sheet.Fault(Faults.ValueWrong, cells[6].At, "The instrument is missing.", "Write what measured it, as inclinometer.");
        if (motion is null)
            return null;
        var side = SideIn(cells[2], motion, out var wrong);
        var unit = motion.Unit switch
        {
            MotionUnit.Degrees => "deg",
            MotionUnit.Centimetres => "cm",
            _ => "",
        };
        if (unit.Length == 0)
            sheet.Fault(
                Faults.ValueWrong,
                cells[1].At,
                $"{Quote.Of(motion.Name)} is not measured: its unit is none.",
                "Take the line out, or give the motion a unit in motions.yaml.",
                cells[1].Text.Length
            );
        else if (cells[5].Text != unit)
            sheet.Fault(
                Faults.ValueWrong,
                cells[5].At,
                $"{Quote.Of(motion.Name)} is measured in {unit}, but here is {Quote.Of(cells[5].Text)}.",
                $"Write {unit}, and the value in it.",
                cells[5].Text.Length
            );
        if (date is null || mode is null || value is null || wrong || cells[5].Text != unit || cells[6].Text.Length == 0)
            return null;
        return new(date.Value, motion, side, mode.Value, value.Value, cells[6].Text, cells[0].At);
    }

    private Side? SideIn(Cell cell, Motion motion, out bool wrong)
    {
        wrong = false;
        if (!motion.IsPaired)
        {
            if (cell.Text.Length == 0)
                return null;
            sheet.Fault(
                Faults.ValueWrong,
                cell.At,
                $"{Quote.Of(motion.Name)} has no left and right.",
                "Leave the column of the side empty.",
                cell.Text.Length
            );
            wrong = true;
            return null;
        }

        var side = Choice<Side>(cell, ("left", Side.Left), ("right", Side.Right));
        wrong = side is null;
        return side;
    }

    private T? Choice<T>(Cell cell, params (string Word, T Value)[] words)
        where T : struct
    {
        foreach (var (word, value) in words)
            if (cell.Text == word)
                return value;
        sheet.Fault(
            Faults.ValueWrong,
            cell.At,
            cell.Text.Length == 0 ? "A word is missing here." : $"{Quote.Of(cell.Text)} cannot stand here.",
            Nearest.Ask(cell.Text, words.Select(w => w.Word), $"Write one of: {string.Join(", ", words.Select(w => w.Word))}."),
            Math.Max(1, cell.Text.Length)
        );
        return null;
    }

    private decimal? Number(Cell cell)
    {
        if (Values.NumberOf(new YamlNode.Text(cell.Text, true, cell.At, cell.At)) is { } number)
            return number;
        sheet.Fault(
            Faults.ValueWrong,
            cell.At,
            $"{Quote.Of(cell.Text)} is no number.",
            "Write digits only, with a point before decimals and no zero in front: 15 or 4.5.",
            Math.Max(1, cell.Text.Length)
        );
        return null;
    }

    private sealed record Cell(string Text, Location At);
}
