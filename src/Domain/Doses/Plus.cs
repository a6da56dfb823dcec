namespace Gradus.Domain;

/// <summary>More sets for one side than for the other.</summary>
/// <param name="Sets">1 to 100.</param>
public sealed record Plus(int Sets, SideName Side)
{
    public int Sets { get; } = DoseBounds.Checked(Sets, DoseBounds.Counts, nameof(Sets));
}
