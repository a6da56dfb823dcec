namespace Gradus.Domain;

/// <summary>Which side or sides the work is for.</summary>
public abstract record SideTerm
{
    private SideTerm() { }

    /// <summary>As a programme writes it behind <c>side:</c>.</summary>
    public abstract string Written { get; }

    /// <summary>All sets of one side, then all of the other.</summary>
    public sealed record Each : SideTerm
    {
        public override string Written => "each side";
    }

    /// <summary>The sides take turns, set by set.</summary>
    public sealed record Alternate : SideTerm
    {
        public override string Written => "alternate sides";
    }

    /// <summary>Both at once.</summary>
    public sealed record Both : SideTerm
    {
        public override string Written => "both sides";
    }

    public sealed record On(SideName Side) : SideTerm
    {
        public override string Written => Side.Word;
    }

    /// <summary>What a programme's <c>side:</c> says: each side, alternate sides, both sides, or the name of one.</summary>
    /// <param name="written">In small letters, with single spaces, no comma.</param>
    public static SideTerm Of(string written) =>
        written switch
        {
            "each side" or "per side" => new Each(),
            "alternate sides" => new Alternate(),
            "both sides" => new Both(),
            _ => new On(SideName.Of(written)),
        };
}
