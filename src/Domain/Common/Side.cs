namespace Gradus.Domain;

/// <summary>A side of the client's own body.</summary>
public enum Side
{
    Left,
    Right,
}

public static class Sides
{
    /// <summary>Left, then right.</summary>
    public static readonly Series<Side?> Each = [Side.Left, Side.Right];

    public static Side Other(this Side side) => side == Side.Left ? Side.Right : Side.Left;

    public static string Word(this Side side) => side == Side.Left ? "left" : "right";
}
