namespace Gradus.Figures;

/// <summary>A place or a direction in space, in heights of the body. X runs ahead of somebody who stands, Y to the side that does
/// not work, Z up.</summary>
public readonly record struct Spot(double X, double Y, double Z)
{
    public double Length => Math.Sqrt(Dot(this));

    public Spot Unit => this * (1 / Length);

    public double Dot(Spot other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>From 0 to 180 degrees.</summary>
    public double AngleTo(Spot other)
    {
        var cross = new Spot((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));
        return double.RadiansToDegrees(Math.Atan2(cross.Length, Dot(other)));
    }

    /// <summary>The place at a share of the way to another, 0 to 1.</summary>
    public Spot Towards(Spot other, double share) => this + ((other - this) * share);

    /// <summary>The three numbers alone: what a record prints by itself, every property, would never end at
    /// <see cref="Unit"/>.</summary>
    public override string ToString() => FormattableString.Invariant($"({X:0.####}, {Y:0.####}, {Z:0.####})");

    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Spot operator *(Spot a, double by) => new(a.X * by, a.Y * by, a.Z * by);
}
