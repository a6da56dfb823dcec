using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What a clinician allowed.</summary>
internal static partial class ClearanceReader
{
    [GeneratedRegex(@"^effort at most ([1-9][0-9]?|100) ?%\z", RegexOptions.CultureInvariant)]
    private static partial Regex EffortLimit();

    [GeneratedRegex(@"^hold at most ([1-9][0-9]{0,3}) (s|min)\z", RegexOptions.CultureInvariant)]
    private static partial Regex HoldLimit();

    private const string NoBending = "no end-range trunk bending",
        NotOnTheFront = "not lying on the front",
        NotOnTheBack = "not lying on the back";

    private static readonly ValueKind[] Kinds =
    [
        ValueKind.Of(EffortLimit()),
        ValueKind.Of(HoldLimit()),
        ValueKind.Of([NoBending, NotOnTheFront]),
    ];

    public static Clearance? In(Fields fields, KnownIds known)
    {
        var name = fields.NeedMention("condition");
        var condition = known.ConditionsOf(fields.SourceFile, name is null ? [] : [name]).FirstOrDefault();
        var by = fields.NeedText("by");
        var on = fields.NeedDate("on");
        var until = fields.NeedDate("until");
        var limits = LimitsIn(fields);
        fields.Done();
        if (on > until)
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                fields.Take("until")?.At ?? fields.At,
                "This clearance ends before it begins.",
                "Correct 'on' or 'until'.",
                "2026-12-07".Length
            );
        return condition is null || by is null || on is null || until is null || on > until
            ? null
            : new(condition.Value, by, on.Value, until.Value, limits, fields.At);
    }

    public static Series<ClearanceLimit> LimitsIn(Fields fields)
    {
        var written = fields.Take("limit");
        var texts =
            written is YamlNode.Listing ? Values.Texts(fields.SourceFile, "limit", written)
            : Values.Text(fields.SourceFile, "limit", written) is { } one ? [new(one.Value, one.At)]
            : [];
        if (written is YamlNode.Listing { Items.Count: 0 })
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                written.At,
                "This list names no limit.",
                "Write the limit, or take the key out where the clearance has none.",
                "[]".Length
            );
        var limits = new List<ClearanceLimit>();
        foreach (var text in texts)
        {
            foreach (var kind in Kinds)
                fields.SourceFile.Note(text, kind);
            if (LimitOf(text.Value) is { } limit)
                limits.Add(limit);
            else
            {
                fields.SourceFile.Fault(
                    Faults.ValueWrong,
                    text.At,
                    $"{Quote.Of(text.Value)} is no limit that Gradus can watch over.",
                    "Write one of: effort at most 60 %, hold at most 10 s, no end-range trunk bending, not lying on the front, "
                        + "not lying on the back.",
                    text.Value.Length
                );
            }
        }

        return limits.ToSeries();
    }

    private static ClearanceLimit? LimitOf(string text)
    {
        if (EffortLimit().Match(text) is { Success: true } effort)
            return new ClearanceLimit.EffortAtMost(Number(effort), text);
        if (HoldLimit().Match(text) is { Success: true } hold)
            return new ClearanceLimit.HoldAtMost(new(Number(hold) * (hold.Groups[2].Value == "min" ? 60 : 1)), text);
        return text switch
        {
            NoBending => new ClearanceLimit.NoEndRangeTrunkBending(text),
            NotOnTheFront => new ClearanceLimit.NotLyingOnTheFront(text),
            NotOnTheBack => new ClearanceLimit.NotLyingOnTheBack(text),
            _ => null,
        };
    }

    private static int Number(Match match) => int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture);
}
