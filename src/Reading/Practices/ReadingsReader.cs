using Gradus.Domain;
using nietras.SeparatedValues;

namespace Gradus.Reading;

/// <summary><c>readings.csv</c>: measured ranges, one a line. They are read strictly, and judged elsewhere.</summary>
internal sealed class ReadingsReader
{
    /// <summary>Who moved the joint.</summary>
    public static readonly (string Word, RangeMode Mode)[] Modes = [("active", RangeMode.Active), ("passive", RangeMode.Passive)];

    private static readonly (string, bool)[] Times = [("rest", false), ("training", true)];

    private readonly SourceFile sheet;
    private readonly KnownIds known;
    private readonly ReadingColumns columns;

    private ReadingsReader(SourceFile sheet, KnownIds known, ReadingColumns columns)
    {
        this.sheet = sheet;
        this.known = known;
        this.columns = columns;
    }

    /// <summary>In the order of the file.</summary>
    public static Series<RangeReading> Read(SourceFile sheet, KnownIds known) =>
        ReadingColumns.In(sheet) is { } columns ? new ReadingsReader(sheet, known, columns).All().ToSeries() : [];

    private List<RangeReading> All()
    {
        var readings = new List<RangeReading>();
        using var rows = Sep.New(',').Reader(o => o with { Unescape = true, DisableColCountCheck = true }).FromText(sheet.Text);
        foreach (var row in rows)
        {
            if (row.Span.IsWhiteSpace())
                continue;
            var start = sheet.At(row.LineNumberFrom, 1);
            if (row.ColCount != columns.Count)
            {
                sheet.Fault(
                    Faults.ValueWrong,
                    start,
                    $"This line has {row.ColCount} columns; a reading has {columns.Count}.",
                    $"Write {columns.Names}, with commas between them and a point before decimals.",
                    int.MaxValue
                );
                continue;
            }

            var cells = new ReadingCell[row.ColCount];
            var column = 1;
            for (var i = 0; i < cells.Length; i++)
            {
                var text = row[i].ToString();
                cells[i] = new(text.Trim(), sheet.At(row.LineNumberFrom, column));
                column += text.Length + 1;
            }

            if (One(cells, start) is { } reading)
                readings.Add(reading);
        }

        return readings;
    }

    private RangeReading? One(ReadingCell[] row, Location at)
    {
        var day = columns.Of(row, "date");
        var date = Values.DayOf(day.Text);
        if (date is null)
            Values.SayNoDate(
                sheet,
                day.Text,
                day.At,
                $"{Quote.Of(day.Text)} is no date.",
                "Write year, month and day with hyphens, as 2026-12-07."
            );
        var motion = columns.Of(row, "motion");
        var measure = known.MeasureOf(sheet, new(motion.Text, motion.At));
        var mode = Choice(columns.Of(row, "mode"), Modes);
        var value = Number(columns.Of(row, "value"));
        var instrument = columns.Of(row, "instrument");
        if (instrument.Text.Length == 0)
            sheet.Fault(
                Faults.ValueWrong,
                instrument.At,
                "The instrument is missing.",
                "Write what measured it, as inclinometer."
            );
        var trials = TrialsIn(row);
        var after = columns.Find(row, "after") is { Text.Length: > 0 } told ? Choice(told, Times) : false;
        if (measure is null)
            return null;
        var side = SideIn(columns.Of(row, "side"), measure.Motion, out var wrong);
        var isInUnit = IsInUnit(columns.Of(row, "unit"), measure.Motion, motion);
        if (isInUnit && value is { } number && !measure.Span.Holds(number))
        {
            SayImpossible(columns.Of(row, "value"), number, measure);
            return null;
        }

        return
            date is null
            || mode is null
            || value is null
            || trials is null
            || after is null
            || wrong
            || !isInUnit
            || instrument.Text.Length == 0
            ? null
            : new(date.Value, measure.Motion, side, mode.Value, value.Value, instrument.Text, at)
            {
                By = columns.Find(row, "by") is { Text.Length: > 0 } by ? by.Text : null,
                Trials = trials.Value,
                IsAfterTraining = after.Value,
            };
    }

    /// <summary>A slip of the pen satisfies what an exercise needs as well as a true reading does, so it goes no
    /// further.</summary>
    private void SayImpossible(ReadingCell cell, decimal value, Measure measure) =>
        sheet.Fault(
            Faults.ValueWrong,
            cell.At,
            FormattableString.Invariant(
                $"{value} {ReadingColumns.UnitOf(measure.Motion)} of {measure.Motion.Name} cannot be: nobody is outside "
            ) + FormattableString.Invariant($"{measure.Span.Least} to {measure.Span.Most}."),
            "Look up what was read and write that, or take the line out.",
            cell.Text.Length
        );

    private bool IsInUnit(ReadingCell cell, Motion motion, ReadingCell named)
    {
        if (ReadingColumns.UnitOf(motion) is not { } unit)
        {
            sheet.Fault(
                Faults.ValueWrong,
                named.At,
                $"{Quote.Of(motion.Name)} is not measured: its unit is none.",
                "Take the line out, or give the motion a unit in motions.yaml.",
                named.Text.Length
            );
            return false;
        }

        if (cell.Text == unit)
            return true;
        sheet.Fault(
            Faults.ValueWrong,
            cell.At,
            $"{Quote.Of(motion.Name)} is measured in {unit}, but here is {Quote.Of(cell.Text)}.",
            $"Write {unit}, and the value in it{(unit == "cm" ? ": an inch is 2.54 cm" : "")}.",
            cell.Text.Length
        );
        return false;
    }

    private Side? SideIn(ReadingCell cell, Motion motion, out bool wrong)
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

        var side = Choice(cell, [("left", Side.Left), ("right", Side.Right)]);
        wrong = side is null;
        return side;
    }

    private T? Choice<T>(ReadingCell cell, (string Word, T Value)[] words)
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

    private decimal? Number(ReadingCell cell)
    {
        if (Values.SignedOf(new YamlNode.Text(cell.Text, true, cell.At, cell.At)) is { } number)
            return number;
        sheet.Fault(
            Faults.ValueWrong,
            cell.At,
            $"{Quote.Of(cell.Text)} is no number.",
            "Write digits only, with a point before decimals and no zero in front: 15 or 4.5; -5 where it stays below zero.",
            Math.Max(1, cell.Text.Length)
        );
        return null;
    }

    private int? TrialsIn(ReadingCell[] row)
    {
        if (columns.Find(row, "trials") is not { Text.Length: > 0 } cell)
            return 1;
        if (Values.NumberOf(new(cell.Text, true, cell.At, cell.At)) is >= 1 and <= 10 and var n && n == decimal.Truncate(n))
            return (int)n;
        sheet.Fault(
            Faults.ValueWrong,
            cell.At,
            $"{Quote.Of(cell.Text)} is no number of tries.",
            "Write a whole number from 1 to 10: of how many tries the value is the mean.",
            cell.Text.Length
        );
        return null;
    }
}
