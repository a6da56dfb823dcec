namespace Gradus.Domain;

/// <summary>A side as it is written (left, right, or a role of the sport) → the client's own side.</summary>
public static class SideNames
{
    /// <summary>Null where the name is neither left nor right nor a role of that sport.</summary>
    /// <param name="stance">How the client plays: the mirror image for the left-handed.</param>
    public static Side? Resolve(string name, Sport? sport, Side stance) => name switch
    {
        "left" => Side.Left,
        "right" => Side.Right,
        _ => sport?.Roles.FirstOrDefault(r => string.Equals(r.Name, name, StringComparison.Ordinal))?.For(stance),
    };

    /// <summary>Every name that could be written for that sport.</summary>
    public static IEnumerable<string> Of(Sport? sport) => (sport?.Roles.Select(r => r.Name) ?? []).Concat(["left", "right"]);

    public static string Word(this Side side) => side == Side.Left ? "left" : "right";

    /// <summary>What a programme's <c>side:</c> says: each side, alternate sides, both sides, or the name of one.</summary>
    public static SideTerm TermOf(string written) => written switch
    {
        "each side" or "per side" => new SideTerm.Each(),
        "alternate sides" => new SideTerm.Alternate(),
        "both sides" => new SideTerm.Both(),
        _ => new SideTerm.On(written),
    };
}
