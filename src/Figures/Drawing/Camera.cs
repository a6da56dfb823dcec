namespace Gradus.Figures;

/// <summary>A place on paper: x to the right, y down, in units of which a body is <see cref="Camera.Scale"/> tall.</summary>
/// <param name="Near">How near it is to who looks; more is nearer.</param>
public readonly record struct Seen(double X, double Y, double Near)
{
    public Seen Towards(Seen other, double share) =>
        new(X + ((other.X - X) * share), Y + ((other.Y - Y) * share), Near + ((other.Near - Near) * share));

    /// <summary>On paper.</summary>
    public double DistanceTo(Seen other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));
}

/// <summary>Shows a body as it is seen from one of three sides, with no perspective: what is parallel stays parallel. From the
/// side the working side is near.</summary>
public sealed class Camera(View view, bool isSideLying)
{
    /// <summary>How tall a body is on paper.</summary>
    public const double Scale = 200;

    public bool IsFromAbove => view == View.Above;

    public bool IsFromFront => view == View.Front && !isSideLying;

    public Seen See(Spot at) =>
        view switch
        {
            View.Above => new(at.X * Scale, -at.Y * Scale, at.Z * Scale),
            View.Front when !isSideLying => new(at.Y * Scale, -at.Z * Scale, at.X * Scale),
            _ => new(at.X * Scale, -at.Z * Scale, -at.Y * Scale),
        };
}
