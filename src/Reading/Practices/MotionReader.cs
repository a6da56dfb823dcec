using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The motions that come with Gradus, and those of the practice's own <c>motions.yaml</c>, which add to them or replace
/// one of the same name.</summary>
internal static class MotionReader
{
    private const string File = "motions.yaml";

    private static readonly (string, Limb)[] Limbs = [("leg", Limb.Leg), ("arm", Limb.Arm), ("trunk", Limb.Trunk)];
    private static readonly (string, MotionUnit)[] Units =
    [
        ("deg", MotionUnit.Degrees),
        ("cm", MotionUnit.Centimetres),
        ("none", MotionUnit.None),
    ];
    private static readonly string[] LegWords = ["hip", "knee", "ankle", "foot", "toe"];
    private static readonly string[] ArmWords = ["shoulder", "elbow", "forearm", "wrist", "hand", "finger"];

    /// <summary>By name.</summary>
    /// <param name="own">The practice's sheet; null where it has none.</param>
    public static IReadOnlyDictionary<string, Measure> Read(SourceFile? own, Findings findings)
    {
        var motions = new Dictionary<string, Measure>(StringComparer.Ordinal);
        foreach (var motion in In(Embedded.SourceFile(File, findings), BuiltInMotion))
            motions[motion.Motion.Name] = motion;
        var named = new HashSet<string>(StringComparer.Ordinal);
        foreach (var motion in own is null ? [] : In(own, fields => OwnMotion(fields, named)))
            motions[motion.Motion.Name] = motion;
        return motions;
    }

    private static IEnumerable<Measure> In(SourceFile sheet, Func<Fields, Measure?> read)
    {
        var node = YamlReader.Read(sheet, sheet.Text, 1);
        if (node is not (null or YamlNode.Listing))
            sheet.Fault(
                Faults.ValueWrong,
                node.At,
                $"This file is a list of motions, but here is {node.Kind}.",
                "Begin each motion on its own line with a hyphen."
            );
        return (node is YamlNode.Listing list ? list.Items : [])
            .Select(item => Fields.Of(sheet, item, "a motion"))
            .OfType<Fields>()
            .Select(read)
            .OfType<Measure>();
    }

    private static Measure? BuiltInMotion(Fields fields)
    {
        var name = fields.NeedText("name");
        var limb = fields.NeedChoice("limb", Limbs);
        var paired = fields.Choice("paired", Values.YesOrNo) ?? true;
        var unit = fields.Choice("unit", Units) ?? MotionUnit.Degrees;
        var (of, how) = (fields.Text("of"), fields.Text("how"));
        var span = SpanIn(fields, unit);
        var errors = fields.Groups("errors", "an error").Select(ErrorReader.Read).OfType<MeasuringError>().ToSeries();
        var references = fields.Groups("references", "a reference value").Select(ReferenceIn).OfType<ReferenceValue>().ToSeries();
        fields.Done();
        return name is null || limb is null ? null : new(new(name, paired, limb.Value, unit), of, how, span, errors, references);
    }

    private static PlausibleSpan SpanIn(Fields fields, MotionUnit unit)
    {
        if (fields.Take("span") is not YamlNode.Listing { Items: [YamlNode.Text least, YamlNode.Text most] })
            return PlausibleSpan.Of(unit);
        return new(Values.SignedOf(least) ?? 0, Values.SignedOf(most) ?? 0);
    }

    private static ReferenceValue? ReferenceIn(Fields fields)
    {
        var value = fields.NeedNumber("value");
        var (set, source, mark) = (fields.NeedText("set"), fields.NeedText("source"), fields.NeedText("mark"));
        fields.Done();
        return value is null || set is null || source is null || mark is null ? null : new(value.Value, set, source, mark);
    }

    /// <summary>The practice's own numbers are the practice's own word: their source says so.</summary>
    private static Measure? OwnMotion(Fields fields, HashSet<string> named)
    {
        var id = fields.NeedMention("id");
        fields.SourceFile.Note(id, IdShape.Kind);
        if (id is not null && !Id.IsValid(id.Value))
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                id.At,
                $"{Quote.Of(id.Value)} cannot be an id.",
                "Use small letters, digits and hyphens, a letter first.",
                id.Value.Length
            );
        var name = fields.NeedMention("name");
        if (name is not null && !named.Add(name.Value))
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                name.At,
                $"There are two motions {Quote.Of(name.Value)}.",
                "Give one of them another name, or take it out.",
                name.Value.Length
            );
        var unit = fields.Choice("unit", Units) ?? MotionUnit.Degrees;
        var paired = fields.Choice("paired", Values.YesOrNo) ?? unit != MotionUnit.None;
        var how = fields.Text("how");
        var error = fields.Number("error");
        var reference = fields.Number("reference");
        fields.Done();
        const string Source = "the practice's own";
        return id is null || name is null
            ? null
            : new(
                new(name.Value, paired, LimbOf(name.Value), unit),
                null,
                how,
                PlausibleSpan.Of(unit),
                error is null ? [] : [MeasuringError.OfPractice(error.Value, Source)],
                reference is null ? [] : [new(reference.Value, Source, Source, Source)]
            );
    }

    /// <summary>The limb that the name begins with; the trunk where it begins with none.</summary>
    private static Limb LimbOf(string name)
    {
        var first = name.Split(' ')[0];
        return LegWords.Contains(first) ? Limb.Leg
            : ArmWords.Contains(first) ? Limb.Arm
            : Limb.Trunk;
    }
}
