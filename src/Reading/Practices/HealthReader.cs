using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What a client answered, and what a clinician allowed.</summary>
internal static partial class HealthReader
{
    private static readonly string[] Replies = ["yes", "no", "yes, left", "yes, right", "not asked"];

    [GeneratedRegex(@"^effort at most ([1-9][0-9]?|100) ?%\z", RegexOptions.CultureInvariant)]
    private static partial Regex EffortLimit();

    [GeneratedRegex(@"^hold at most ([1-9][0-9]{0,3}) (s|min)\z", RegexOptions.CultureInvariant)]
    private static partial Regex HoldLimit();

    /// <summary>One for each condition that was asked; null where none of them can be read, so that nobody says of any that it was not asked.</summary>
    public static Series<Answer>? AnswersIn(Fields fields, KnownIds known)
    {
        var isThere = fields.Has("answers");
        if (fields.NeedGroup("answers", "answers") is not { } group) return isThere ? null : [];
        var answers = new List<Answer>();
        var misspelt = new List<Answer>();
        foreach (var entry in group.Entries)
        {
            var condition = known.ConditionsOf(group.Sheet, [new(entry.Key, entry.KeyAt)]).FirstOrDefault();
            var reply = ReplyIn(group.Sheet, entry, known);
            if (condition is not null && reply is not null) answers.Add(new(condition.Value, reply, entry.Value.At));
            else if (condition is null && Meant(entry.Key, known) is { } meant) misspelt.Add(new(meant, new Reply.Unread(), entry.Value.At));
        }

        return answers.Concat(misspelt).DistinctBy(a => a.Condition).ToSeries();
    }

    /// <summary>The condition that a misspelt id stands for, as far as one is near.</summary>
    private static ConditionId? Meant(string written, KnownIds known) =>
        Nearest.To(written, (known.Conditions.Ids ?? new HashSet<string>()).Where(Id.IsValid).Order(StringComparer.Ordinal)) is { } meant ? new(meant) : null;

    /// <summary>Null where the condition was not asked, in so many words.</summary>
    private static Reply? ReplyIn(Sheet sheet, YamlEntry entry, KnownIds known)
    {
        if (Values.Text(sheet, entry.Key, entry.Value) is not { } text) return new Reply.Unread();
        if (!Replies.Contains(text.Value))
        {
            Values.Wrong(sheet, text, $"{Quote.Of(text.Value)} is no answer.", Nearest.Ask(text.Value, Replies, "Write yes, no, not asked, or where it has sides: yes, left."));
            return new Reply.Unread();
        }

        if (text.Value.StartsWith("yes, ", StringComparison.Ordinal) && known.Conditions.Unsided.Contains(entry.Key))
        {
            Values.Wrong(sheet, text, $"{Quote.Of(entry.Key)} has no left and right, but the answer names a side.", "Write yes, or add 'sided: yes' to this condition in conditions.yaml.");
            return new Reply.Unread();
        }

        return ReplyOf(text.Value);
    }

    public static Clearance? ClearanceIn(Fields fields, KnownIds known)
    {
        var name = fields.NeedMention("condition");
        var condition = known.ConditionsOf(fields.Sheet, name is null ? [] : [name]).FirstOrDefault();
        var by = fields.NeedText("by");
        var on = fields.NeedDate("on");
        var until = fields.NeedDate("until");
        var limits = LimitsIn(fields);
        fields.Done();
        if (on > until)
            fields.Sheet.Fault(Faults.ValueWrong, fields.Take("until")?.At ?? fields.At, "This clearance ends before it begins.", "Correct 'on' or 'until'.", "2026-12-07".Length);
        return condition is null || by is null || on is null || until is null || on > until
            ? null
            : new(condition.Value, by, on.Value, until.Value, limits, fields.At);
    }

    private static Reply? ReplyOf(string text) => text switch
    {
        "not asked" => null,
        "no" => new Reply.No(),
        "yes, left" => new Reply.Yes(Side.Left),
        "yes, right" => new Reply.Yes(Side.Right),
        _ => new Reply.Yes(null),
    };

    private static Series<ClearanceLimit> LimitsIn(Fields fields)
    {
        var written = fields.Take("limit");
        var texts = written is YamlNode.Listing ? Values.Texts(fields.Sheet, "limit", written)
            : Values.Text(fields.Sheet, "limit", written) is { } one ? [new(one.Value, one.At)] : [];
        var limits = new List<ClearanceLimit>();
        foreach (var text in texts)
        {
            if (LimitOf(text.Value) is { } limit) limits.Add(limit);
            else
            {
                fields.Sheet.Fault(
                    Faults.ValueWrong, text.At, $"{Quote.Of(text.Value)} is no limit that Gradus can watch over.",
                    "Write one of: effort at most 60 %, hold at most 10 s, no end-range trunk bending, not lying on the front.", text.Value.Length);
            }
        }

        return limits.ToSeries();
    }

    private static ClearanceLimit? LimitOf(string text)
    {
        if (EffortLimit().Match(text) is { Success: true } effort) return new ClearanceLimit.EffortAtMost(Number(effort), text);
        if (HoldLimit().Match(text) is { Success: true } hold) return new ClearanceLimit.HoldAtMost(new(Number(hold) * (hold.Groups[2].Value == "min" ? 60 : 1)), text);
        return text switch
        {
            "no end-range trunk bending" => new ClearanceLimit.NoEndRangeTrunkBending(text),
            "not lying on the front" => new ClearanceLimit.NotLyingOnTheFront(text),
            _ => null,
        };
    }

    private static int Number(Match match) => int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture);
}
