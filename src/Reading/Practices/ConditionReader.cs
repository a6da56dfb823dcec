using Gradus.Domain;

namespace Gradus.Reading;

internal static class ConditionReader
{
    public static Series<Condition> Read(Sheet sheet)
    {
        var node = YamlReader.Read(sheet, sheet.Text, 1);
        if (node is not (null or YamlNode.Listing))
            sheet.Fault(Faults.ValueWrong, node.At, $"This file is a list of conditions, but here is {node.Kind}.", "Begin each condition on its own line with a hyphen.");
        var conditions = new List<Condition>();
        foreach (var item in node is YamlNode.Listing list ? list.Items : [])
        {
            if (Fields.Of(sheet, item, "a condition") is not { } fields) continue;
            var id = IdIn(fields, conditions);
            var name = fields.NeedText("name");
            var question = fields.NeedText("question");
            var where = ExerciseWords.RegionOf(sheet, fields.NeedMention("where"));
            var sided = fields.Flag("sided");
            if (sided && where is { IsSided: false })
                sheet.Fault(Faults.ValueWrong, fields.At, $"'{where}' has no left and right.", "Take 'sided' out, or name a limb's region in 'where'.");
            fields.Done();
            if (id is not null && name is not null && question is not null && where is not null)
                conditions.Add(new(id, name, question, where, sided, fields.At));
        }

        return conditions.ToSeries();
    }

    private static ConditionId? IdIn(Fields fields, List<Condition> before)
    {
        if (fields.NeedMention("id") is not { } id) return null;
        if (!Id.IsValid(id.Value))
        {
            fields.Sheet.Fault(Faults.ValueWrong, id.At, $"'{id.Value}' cannot be an id.", "Use small letters, digits and hyphens, a letter first.", id.Value.Length);
            return null;
        }

        if (before.All(c => c.Id.Text != id.Value)) return new(id.Value);
        fields.Sheet.Fault(Faults.ValueWrong, id.At, $"There are two conditions '{id.Value}'.", "Give one of them another id, or take it out.", id.Value.Length);
        return null;
    }
}
