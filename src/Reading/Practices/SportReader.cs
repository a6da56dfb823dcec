using Gradus.Domain;

namespace Gradus.Reading;

internal static class SportReader
{
    private static readonly (string, RoleValue)[] Sides =
    [
        ("left", new(Side.Left, null)),
        ("right", new(Side.Right, null)),
        ("left arm", new(Side.Left, Limb.Arm)),
        ("right arm", new(Side.Right, Limb.Arm)),
        ("left leg", new(Side.Left, Limb.Leg)),
        ("right leg", new(Side.Right, Limb.Leg)),
    ];

    /// <summary>What in a name says of which limb it is, in the languages that Gradus has words for.</summary>
    private static readonly (string Word, Limb Limb)[] Limbs =
    [
        ("arm", Limb.Arm),
        ("hand", Limb.Arm),
        ("leg", Limb.Leg),
        ("foot", Limb.Leg),
        ("bein", Limb.Leg),
        ("fuß", Limb.Leg),
    ];

    public static Sport? Read(SourceFile sheet, SportId id, KnownIds known)
    {
        if (Fields.Of(sheet, YamlReader.Read(sheet, sheet.Text, 1), "a sport") is not { } fields)
            return null;
        var name = fields.NeedText("name");
        var stance = fields.NeedText("stance");
        var roles = RolesIn(fields);
        var demands = fields.Groups("demands", "a demand").Select(f => DemandIn(f, roles, known)).OfType<Demand>().ToSeries();
        fields.Done();
        return name is null || stance is null ? null : new(id, name, stance, roles, demands, sheet.Whole);
    }

    private static Series<Role> RolesIn(Fields fields)
    {
        if (fields.NeedGroup("roles", "roles") is not { } group)
            return [];
        var roles = new List<Role>();
        foreach (var entry in group.OwnEntries)
        {
            var shown = Spacing.Collapse(entry.Key);
            var name = shown.ToLowerInvariant();
            if (!CanName(name) || name.AsSpan().ContainsAny('{', '}'))
                fields.SourceFile.Fault(
                    Faults.ValueWrong,
                    entry.KeyAt,
                    $"{Quote.Of(entry.Key)} cannot be the name of a role.",
                    "Name one side as the sport does: weapon arm, rear leg.",
                    entry.Key.Length
                );
            else if (roles.Any(r => r.Name == name))
                fields.SourceFile.Fault(
                    Faults.KeyUnknown,
                    entry.KeyAt,
                    $"{Quote.Of(name)} appears twice.",
                    "Keep one of the two.",
                    entry.Key.Length
                );
            else if (Values.Choice(fields.SourceFile, entry.Key, entry.Value, Sides) is { } value)
            {
                if ((value.Limb ?? LimbIn(name)) is { } limb)
                    roles.Add(new(name, shown, value.Side, limb));
                else
                    fields.SourceFile.Fault(
                        Faults.ValueWrong,
                        entry.KeyAt,
                        $"{Quote.Of(entry.Key)} does not say whether it is an arm or a leg.",
                        "Say it behind the side: right arm, or right leg.",
                        entry.Key.Length
                    );
            }
        }

        return roles.ToSeries();
    }

    /// <summary>By the last of those words: a backhand leg is a leg.</summary>
    private static Limb? LimbIn(string name) =>
        Limbs
            .Select(l => (At: name.LastIndexOf(l.Word, StringComparison.Ordinal), l.Limb))
            .Where(l => l.At >= 0)
            .OrderByDescending(l => l.At)
            .Select(l => (Limb?)l.Limb)
            .FirstOrDefault();

    private readonly record struct RoleValue(Side Side, Limb? Limb);

    /// <summary>Whether a dose could name a side so: its name ends at a comma, and what has a meaning of its own is no
    /// name.</summary>
    private static bool CanName(string role) =>
        role is not ("" or "left" or "right")
        && !role.Contains(',', StringComparison.Ordinal)
        && SideTerm.Of(role) is SideTerm.On;

    private static Demand? DemandIn(Fields fields, Series<Role> roles, KnownIds known)
    {
        var position = fields.NeedText("position");
        var motion = known.MeasureOf(fields.SourceFile, fields.NeedMention("motion"))?.Motion;
        var side = fields.Mention("side") is { } named ? named with { Value = named.Value.ToLowerInvariant() } : null;
        if (side is not null && side.Value is not ("left" or "right") && roles.All(r => r.Name != side.Value))
        {
            fields.SourceFile.Fault(
                Faults.IdUnknown,
                side.At,
                $"{Quote.Of(side.Value)} is no role of this sport.",
                Nearest.Ask(side.Value, roles.Select(r => r.Name), "Write a name that stands under 'roles', or left or right."),
                side.Value.Length
            );
        }

        var mode = fields.Choice("mode", ReadingsReader.Modes);
        var atLeast = fields.NeedNumber("at-least");
        var because = fields.NeedText("because");
        fields.Done();
        return position is null || motion is null || atLeast is null || because is null
            ? null
            : new(position, motion.Name, side?.Value, mode, atLeast.Value, because, fields.At);
    }
}
