using System.Text.Json;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>The measured ranges for other programs: <c>{"clients": [{"client", "today", "comparisons", "veryMobile", "series":
/// [{"motion", "side", "mode", "instrument", "unit", "baseline", "latest", "sinceBaseline", "sinceBefore", "sudden",
/// "line", "afterTraining"}], "demands", "sides", "neverMeasured", "due"}]}</c>. A change has from, to, difference, margin, word
/// (gain, more, not-shown, less, not-judged) and the error with its conditions; side is left, right or null, unit deg or cm;
/// margins have five decimals.</summary>
internal static class RangesJson
{
    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
    };

    public static string Write(IEnumerable<ClientRanges> clients) =>
        JsonSerializer.Serialize(new { Clients = clients.Select(Client) }, Indented);

    private static object Client(ClientRanges ranges) =>
        new
        {
            Client = ranges.Client.Text,
            Today = ranges.Today.Iso(),
            ranges.Comparisons,
            VeryMobile = ranges.IsVeryMobile,
            Series = ranges.Series.Select(s => new
            {
                Motion = s.Key.Motion.Name,
                Side = s.Key.Side?.Word(),
                Mode = RangeErrorText.WordOf(s.Key.Mode),
                s.Key.Instrument,
                Unit = s.Key.Motion.Unit == MotionUnit.Centimetres ? "cm" : "deg",
                Baseline = At(s.Baseline),
                Latest = At(s.Latest),
                SinceBaseline = Change(s.SinceBaseline),
                SinceBefore = Change(s.SinceBefore),
                Sudden = Change(s.Sudden),
                Line = s.Line is { } line ? new { line.Change, line.Margin } : null,
                AfterTraining = s.Read.AfterTraining.Select(r => new { Date = r.Date.Iso(), r.Value }),
            }),
            Demands = ranges.Demands.Select(d => new
            {
                Sport = d.Sport.Text,
                d.Demand.Position,
                Role = d.Demand.Side,
                d.Demand.Motion,
                Side = d.Side?.Word(),
                Mode = d.Demand.Mode is { } mode ? RangeErrorText.WordOf(mode) : null,
                d.Demand.AtLeast,
                Latest = At(d.Mark?.Read),
                d.Mark?.HalfWidth,
                Word = d.Open is { } open ? Kebab.Of(open.ToString()) : Kebab.Of((d.Mark?.Word).ToString() ?? ""),
                Error = Error(d.Mark?.Error),
            }),
            Sides = ranges.Sides.Select(s => new
            {
                Motion = s.Key.Motion.Name,
                Mode = RangeErrorText.WordOf(s.Key.Mode),
                s.Key.Instrument,
                Left = At(s.Latest.Left),
                Right = At(s.Latest.Right),
                s.Latest.Difference,
                s.Latest.Margin,
                Word = Kebab.Of(s.Latest.Word.ToString()),
                Error = Error(s.Latest.Error),
                Change = s.Change is { } c
                    ? new
                    {
                        From = c.From.Difference,
                        Difference = c.Change,
                        c.Margin,
                        Shown = c.IsShown,
                    }
                    : null,
            }),
            NeverMeasured = ranges.Never.Select(n => new
            {
                Motions = n.Ways.Select(w => w.Motion.Name),
                Side = n.Side?.Word(),
                Demanded = n.Demand is not null,
                Trained = n.IsTrained,
            }),
            Due = ranges.Due.Select(d => new
            {
                Motion = d.Key.Motion.Name,
                Side = d.Key.Side?.Word(),
                Last = d.Latest.Last.Iso(),
                Why = Kebab.Of(d.Why.ToString()),
            }),
        };

    private static object? At(Occasion? occasion) =>
        occasion is null
            ? null
            : new
            {
                From = occasion.First.Iso(),
                To = occasion.Last.Iso(),
                Days = occasion.Days.Count,
                occasion.Value,
            };

    private static object? Change(RangeChange? change) =>
        change is null
            ? null
            : new
            {
                From = At(change.From),
                To = At(change.To),
                change.Difference,
                change.Margin,
                Word = Kebab.Of(change.Word.ToString()),
                Error = Error(change.Error),
            };

    private static object? Error(ErrorInUse? error) =>
        error is null
            ? null
            : new
            {
                Change = error.Change,
                error.IsComputed,
                Source = RangeErrorText.SourceOf(error),
            };
}
