using System.Text.Json.Nodes;
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
    public static string Write(IEnumerable<ClientRanges> clients) =>
        JsonText.Of(new JsonObject { ["clients"] = JsonText.ListOf(clients, Client) });

    private static JsonObject Client(ClientRanges ranges) =>
        new()
        {
            ["client"] = ranges.Client.Text,
            ["today"] = ranges.Today.Iso(),
            ["comparisons"] = ranges.Comparisons,
            ["veryMobile"] = ranges.IsVeryMobile,
            ["series"] = JsonText.ListOf(ranges.Series, s => new JsonObject
            {
                ["motion"] = s.Key.Motion.Name,
                ["side"] = s.Key.Side?.Word(),
                ["mode"] = RangeErrorText.WordOf(s.Key.Mode),
                ["instrument"] = s.Key.Instrument,
                ["unit"] = s.Key.Motion.Unit == MotionUnit.Centimetres ? "cm" : "deg",
                ["baseline"] = At(s.Baseline),
                ["latest"] = At(s.Latest),
                ["sinceBaseline"] = Change(s.SinceBaseline),
                ["sinceBefore"] = Change(s.SinceBefore),
                ["sudden"] = Change(s.Sudden),
                ["line"] = s.Line is { } line ? new JsonObject { ["change"] = line.Change, ["margin"] = line.Margin } : null,
                ["afterTraining"] = JsonText.ListOf(s.Read.AfterTraining, r => new JsonObject
                {
                    ["date"] = r.Date.Iso(),
                    ["value"] = r.Value,
                }),
            }),
            ["demands"] = JsonText.ListOf(ranges.Demands, d => new JsonObject
            {
                ["sport"] = d.Sport.Text,
                ["position"] = d.Demand.Position,
                ["role"] = d.Demand.Side,
                ["motion"] = d.Demand.Motion,
                ["side"] = d.Side?.Word(),
                ["mode"] = d.Demand.Mode is { } mode ? RangeErrorText.WordOf(mode) : null,
                ["atLeast"] = d.Demand.AtLeast,
                ["latest"] = At(d.Mark?.Read),
                ["halfWidth"] = d.Mark?.HalfWidth,
                ["word"] = d.Open is { } open ? Kebab.Of(open.ToString()) : Kebab.Of((d.Mark?.Word).ToString() ?? ""),
                ["error"] = Error(d.Mark?.Error),
            }),
            ["sides"] = JsonText.ListOf(ranges.Sides, s => new JsonObject
            {
                ["motion"] = s.Key.Motion.Name,
                ["mode"] = RangeErrorText.WordOf(s.Key.Mode),
                ["instrument"] = s.Key.Instrument,
                ["left"] = At(s.Latest.Left),
                ["right"] = At(s.Latest.Right),
                ["difference"] = s.Latest.Difference,
                ["margin"] = s.Latest.Margin,
                ["word"] = Kebab.Of(s.Latest.Word.ToString()),
                ["error"] = Error(s.Latest.Error),
                ["change"] = s.Change is { } c
                    ? new JsonObject
                    {
                        ["from"] = c.From.Difference,
                        ["difference"] = c.Change,
                        ["margin"] = c.Margin,
                        ["shown"] = c.IsShown,
                    }
                    : null,
            }),
            ["neverMeasured"] = JsonText.ListOf(ranges.Never, n => new JsonObject
            {
                ["motions"] = JsonText.ListOf(n.Ways, w => w.Motion.Name),
                ["side"] = n.Side?.Word(),
                ["demanded"] = n.Demand is not null,
                ["trained"] = n.IsTrained,
            }),
            ["due"] = JsonText.ListOf(ranges.Due, d => new JsonObject
            {
                ["motion"] = d.Key.Motion.Name,
                ["side"] = d.Key.Side?.Word(),
                ["last"] = d.Latest.Last.Iso(),
                ["why"] = Kebab.Of(d.Why.ToString()),
            }),
        };

    private static JsonObject? At(Occasion? occasion) =>
        occasion is null
            ? null
            : new JsonObject
            {
                ["from"] = occasion.First.Iso(),
                ["to"] = occasion.Last.Iso(),
                ["days"] = occasion.Days.Count,
                ["value"] = occasion.Value,
            };

    private static JsonObject? Change(RangeChange? change) =>
        change is null
            ? null
            : new JsonObject
            {
                ["from"] = At(change.From),
                ["to"] = At(change.To),
                ["difference"] = change.Difference,
                ["margin"] = change.Margin,
                ["word"] = Kebab.Of(change.Word.ToString()),
                ["error"] = Error(change.Error),
            };

    private static JsonObject? Error(ErrorInUse? error) =>
        error is null
            ? null
            : new JsonObject
            {
                ["change"] = error.Change,
                ["isComputed"] = error.IsComputed,
                ["source"] = RangeErrorText.SourceOf(error),
            };
}
