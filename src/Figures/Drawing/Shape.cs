using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>What a shape is coloured as; the page gives each its colour.</summary>
public enum Tone
{
    /// <summary>Floor, wall, chair, table and step.</summary>
    Place,
    Far,
    Near,

    /// <summary>What works.</summary>
    Work,
    Thing,
    Feel,
    Arrow,
}

/// <summary>One part of a drawing, behind all that come after it.</summary>
/// <param name="Part">Which part of the body it is, "working-thigh", or what else; empty where nobody asks.</param>
/// <param name="Points">A line from one to the next.</param>
/// <param name="Width">Of the line; 0 where only its inside is filled.</param>
/// <param name="IsFilled">Whether the last leads back to the first, with all inside filled.</param>
public sealed record Shape(string Part, Tone Tone, Series<Seen> Points, double Width, bool IsFilled = false)
{
    /// <summary>It lies inside another of its group, and needs nothing to set it off.</summary>
    public bool IsInside { get; init; }
}

/// <summary>A body at one moment, with what it rests on and holds.</summary>
/// <param name="Groups">From the farthest to the nearest; each is set off from what is behind it.</param>
/// <param name="Letter">Where the letter of the working side stands, its middle.</param>
public sealed record Drawing(Series<Series<Shape>> Groups, Seen Letter);

/// <summary>The start of a movement, or all of it, and its end beside it, on the same piece of paper.</summary>
/// <param name="End">Null where nothing moves.</param>
public sealed record Figure(Drawing Start, Drawing? End, Bounds Bounds);

/// <summary>A piece of paper.</summary>
public readonly record struct Bounds(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    /// <summary>Whether all is inside that lies so near to a place.</summary>
    public bool Holds(Seen at, double around) =>
        at.X - around >= Left && at.X + around <= Right && at.Y - around >= Top && at.Y + around <= Bottom;
}
