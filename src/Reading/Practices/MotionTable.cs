using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The motions that come with Gradus, by name.</summary>
internal static class MotionTable
{
    private const string File = "motions.yaml";

    private static readonly (string, Limb)[] Limbs = [("leg", Limb.Leg), ("arm", Limb.Arm), ("trunk", Limb.Trunk)];

    public static IReadOnlyDictionary<string, Motion> Read(Findings findings)
    {
        var sheet = Embedded.Sheet(File, findings);
        var motions = new Dictionary<string, Motion>(StringComparer.Ordinal);
        foreach (var node in YamlReader.Read(sheet, sheet.Text, 1) is YamlNode.Listing list ? list.Items : [])
        {
            if (Fields.Of(sheet, node, "a motion") is not { } fields) continue;
            var name = fields.NeedText("name");
            var limb = fields.NeedChoice("limb", Limbs);
            var paired = fields.Choice("paired", [("yes", true), ("no", false)]) ?? true;
            fields.Done();
            if (name is not null && limb is not null) motions.Add(name, new(name, paired, limb.Value));
        }

        return motions;
    }
}
