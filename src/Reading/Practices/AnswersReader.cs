using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What a client answered to the questions about health.</summary>
internal static partial class AnswersReader
{
    private static readonly string[] Replies = ["yes", "no", "yes, left", "yes, right", "not asked"];

    [GeneratedRegex(@"^(?<level>10|[1-9]) (?<place>[a-z -]+)\z", RegexOptions.CultureInvariant)]
    private static partial Regex PainShape();

    /// <summary>One for each condition that was asked; null where none of them can be read, so that nobody says of any that it
    /// was not asked.</summary>
    public static Series<Answer>? In(Fields fields, KnownIds known)
    {
        var isThere = fields.Has("answers");
        if (fields.NeedGroup("answers", "answers") is not { } group)
            return isThere ? null : [];
        var answers = new List<Answer>();
        var misspelt = new List<Answer>();
        // How much hurts and where is no yes or no.
        group.Take(AlwaysAsked.PainNow.Text);
        foreach (var entry in group.OwnEntries)
        {
            var condition = known.ConditionsOf(group.SourceFile, [new(entry.Key, entry.KeyAt)]).FirstOrDefault();
            var reply = ReplyIn(group.SourceFile, entry, known);
            if (condition is not null && reply is not null)
                answers.Add(new(condition.Value, reply, entry.Value.At));
            else if (condition is null)
                misspelt.AddRange(Meant(entry.Key, known).Select(id => new Answer(id, new Reply.Unread(), entry.Value.At)));
        }

        return answers.Concat(misspelt).DistinctBy(a => a.Condition).ToSeries();
    }

    /// <summary>The conditions that took the place of an id of before, or the one that a misspelt id stands for, as far as one is
    /// near.</summary>
    private static IEnumerable<ConditionId> Meant(string written, KnownIds known)
    {
        if (known.Conditions.Former.Has(written))
            return known.Conditions.Former.Since[written].Select(id => new ConditionId(id));
        var ids = (known.Conditions.Ids ?? new HashSet<string>()).Where(Id.IsValid).Order(StringComparer.Ordinal);
        return Nearest.To(written, ids) is { } meant ? [new(meant)] : [];
    }

    /// <summary>Null where the condition was not asked, in so many words.</summary>
    private static Reply? ReplyIn(SourceFile sheet, YamlEntry entry, KnownIds known)
    {
        if (entry.Key == AlwaysAsked.PainNow.Text)
            return PainsIn(sheet, entry);
        if (Values.Text(sheet, entry.Key, entry.Value) is not { } text)
            return new Reply.Unread();
        sheet.Note(entry.Value, ValueKind.Of(Replies));
        if (!Replies.Contains(text.Value))
        {
            Values.Wrong(
                sheet,
                text,
                $"{Quote.Of(text.Value)} is no answer.",
                Nearest.Ask(text.Value, Replies, "Write yes, no, not asked, or where it has sides: yes, left.")
            );
            return new Reply.Unread();
        }

        if (text.Value.StartsWith("yes, ", StringComparison.Ordinal) && known.Conditions.Unsided.Contains(entry.Key))
        {
            Values.Wrong(
                sheet,
                text,
                $"{Quote.Of(entry.Key)} has no left and right, but the answer names a side.",
                "Write yes, or add 'sided: yes' to this condition in conditions.yaml."
            );
            return new Reply.Unread();
        }

        return ReplyOf(text.Value);
    }

    private static Reply? ReplyOf(string text) =>
        text switch
        {
            "not asked" => null,
            "no" => new Reply.No(),
            "yes, left" => new Reply.Yes(Side.Left),
            "yes, right" => new Reply.Yes(Side.Right),
            _ => new Reply.Yes(null),
        };

    /// <summary>"no", or 0, where nothing hurts; else how much and where, as <c>4 left knee</c>, or a list of these.</summary>
    private static Reply? PainsIn(SourceFile sheet, YamlEntry entry)
    {
        sheet.Note(entry.Value, ValueKind.Of(["no", "not asked"]));
        sheet.Note(entry.Value, new ValueKind.Whole(0, 0));
        if (entry.Value is YamlNode.Text { Value: "no" or "0" })
            return new Reply.No();
        if (entry.Value is YamlNode.Text { Value: "not asked" })
            return null;
        Mention<string>[] written =
            entry.Value is YamlNode.Listing ? [.. Values.Texts(sheet, entry.Key, entry.Value)]
            : Values.Text(sheet, entry.Key, entry.Value) is { } one ? [new(one.Value, one.At)]
            : [];
        if (entry.Value is YamlNode.Listing { Items.Count: 0 })
            sheet.Fault(
                Faults.ValueWrong,
                entry.Value.At,
                "This list names no place that hurts.",
                "Write 0 where nothing hurts, else how much and where: 4 left knee.",
                "[]".Length
            );
        var places = written.Select(w => PainOf(sheet, w)).ToArray();
        return places.Length == 0 || places.Contains(null)
            ? new Reply.Unread()
            : new Reply.Pains(places.OfType<Pain>().ToSeries());
    }

    private static Pain? PainOf(SourceFile sheet, Mention<string> written)
    {
        sheet.Note(written, ValueKind.Of(PainShape()));
        var shape = PainShape().Match(written.Value);
        if (!shape.Success)
        {
            sheet.Fault(
                Faults.ValueWrong,
                written.At,
                $"{Quote.Of(written.Value)} does not say how much it hurts and where.",
                "Write 0 where nothing hurts, else a number from 1 to 10, the side where there is one, and the region: 4 "
                    + "left knee; several places as a list: [4 left knee, 2 neck].",
                written.Value.Length
            );
            return null;
        }

        var place = shape.Groups["place"];
        return PlaceReader.Of(sheet, new(place.Value, written.At with { Column = written.At.Column + place.Index })) is { } where
            ? new(int.Parse(shape.Groups["level"].ValueSpan, CultureInfo.InvariantCulture), where.Region, where.Side)
            : null;
    }
}
