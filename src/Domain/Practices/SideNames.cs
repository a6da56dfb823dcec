namespace Gradus.Domain;

/// <summary>A side as it is written in a dose or a programme.</summary>
public static class SideNames
{
    public static string Word(this Side side) => side == Side.Left ? "left" : "right";

    /// <summary>What a programme's <c>side:</c> says: each side, alternate sides, both sides, or the name of one.</summary>
    public static SideTerm TermOf(string written) =>
        written switch
        {
            "each side" or "per side" => new SideTerm.Each(),
            "alternate sides" => new SideTerm.Alternate(),
            "both sides" => new SideTerm.Both(),
            _ => new SideTerm.On(written),
        };
}
