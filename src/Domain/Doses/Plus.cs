namespace Gradus.Domain;

/// <summary>More sets for one side than for the other.</summary>
/// <param name="Sets">1 to 100.</param>
/// <param name="Side">left, right, or a side named by the sport, in small letters, with single spaces.</param>
public sealed record Plus(int Sets, string Side)
{
    public int Sets { get; } = DoseBounds.Checked(Sets, DoseBounds.Counts, nameof(Sets));

    public string Side { get; } = DoseBounds.CheckedText(Side, nameof(Side));
}
