using Gradus.Domain;

namespace Gradus.Reading;

internal static class ConditionReader
{
    public static AskedConditions Read(Sheet sheet)
    {
        var node = YamlReader.Read(sheet, sheet.Text, 1);
        if (node is not (null or YamlNode.Listing))
            sheet.Fault(Faults.ValueWrong, node.At, $"This file is a list of conditions, but here is {node.Kind}.", "Begin each condition on its own line with a hyphen.");
        if (node is not YamlNode.Listing list) return AskedConditions.Unread;
        var conditions = new List<Condition>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        var unsided = new HashSet<string>(StringComparer.Ordinal);
        foreach (var item in list.Items)
        {
            if (Fields.Of(sheet, item, "a condition") is not { } fields) continue;
            var id = IdIn(fields, ids);
            var name = fields.NeedText("name");
            var question = fields.NeedText("question");
            var place = fields.NeedMention("where");
            var where = ExerciseWords.RegionOf(sheet, place);
            var sided = fields.Flag("sided");
            if (sided && where is { IsSided: false } && place is not null)
                sheet.Fault(Faults.ValueWrong, place.At, $"{Quote.Of(where.Name)} has no left and right.", "Take 'sided' out, or name a limb's region in 'where'.", place.Value.Length);
            fields.Done();
            if (id is not null && !sided) unsided.Add(id.Text);
            if (id is not null && name is not null && question is not null && where is not null)
                conditions.Add(new(id, name, question, where, sided, fields.At));
        }

        return new(conditions.ToSeries(), ids, unsided);
    }

    private static ConditionId? IdIn(Fields fields, HashSet<string> before)
    {
        if (fields.NeedMention("id") is not { } id) return null;
        if (!Id.IsValid(id.Value))
        {
            before.Add(id.Value.ToLowerInvariant());
            fields.Sheet.Fault(Faults.ValueWrong, id.At, $"{Quote.Of(id.Value)} cannot be an id.", "Use small letters, digits and hyphens, a letter first; no device name, as con or nul.", id.Value.Length);
            return null;
        }

        if (before.Add(id.Value)) return new(id.Value);
        fields.Sheet.Fault(Faults.ValueWrong, id.At, $"There are two conditions {Quote.Of(id.Value)}.", "Give one of them another id, or take it out.", id.Value.Length);
        return null;
    }
}

/// <summary>What conditions.yaml lists.</summary>
/// <param name="Ids">Every id written there, in small letters, whether or not its condition could be bound; null where the file could not be read, which is
/// said once, at the file.</param>
/// <param name="Unsided">The ids of conditions that have no left and right.</param>
internal sealed record AskedConditions(Series<Condition> Bound, IReadOnlySet<string>? Ids, IReadOnlySet<string> Unsided)
{
    public static readonly AskedConditions Unread = new([], null, new HashSet<string>());
}
