using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>accepted.yaml</c>: warnings that a coach has looked at and lets stand.</summary>
internal static class AcceptedReader
{
    public static Series<Acceptance> Read(SourceFile sheet)
    {
        var node = YamlReader.Read(sheet, sheet.Text, 1);
        if (node is not (null or YamlNode.Listing))
            sheet.Fault(
                Faults.ValueWrong,
                node.At,
                $"This file is a list of accepted warnings, but here is {node.Kind}.",
                "Begin each on its own line with a hyphen."
            );
        return (node is YamlNode.Listing list ? list.Items : [])
            .Select(item => Fields.Of(sheet, item, "an accepted warning"))
            .OfType<Fields>()
            .Select(One)
            .OfType<Acceptance>()
            .ToSeries();
    }

    private static Acceptance? One(Fields fields)
    {
        var rule = fields.NeedMention("rule");
        var file = fields.NeedText("file");
        var saw = fields.Text("saw");
        var because = fields.NeedText("because");
        var by = fields.NeedText("by");
        var until = fields.NeedDate("until");
        fields.Done();
        return rule is null || file is null || because is null || by is null || until is null
            ? null
            : new(new(rule.Value), file, saw, because, by, until.Value, rule.At);
    }
}
