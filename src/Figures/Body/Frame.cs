namespace Gradus.Figures;

/// <summary>Which way a part of the body looks: three directions at right angles, each of length 1.</summary>
/// <param name="Ahead">Where its front looks.</param>
/// <param name="Aside">Towards the side that does not work.</param>
/// <param name="Up">Towards the head.</param>
public readonly record struct Frame(Spot Ahead, Spot Aside, Spot Up)
{
    public static readonly Frame Upright = new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>A direction that is given in this frame, in the frame around it.</summary>
    public Spot Out(Spot inside) => (Ahead * inside.X) + (Aside * inside.Y) + (Up * inside.Z);

    /// <summary>The reverse of <see cref="Out"/>.</summary>
    public Spot In(Spot outside) => new(outside.Dot(Ahead), outside.Dot(Aside), outside.Dot(Up));

    /// <summary>Turned about its own ahead: up goes away from aside. In radians.</summary>
    public Frame Rolled(double by)
    {
        var (sin, cos) = Math.SinCos(by);
        return new(Ahead, (Aside * cos) + (Up * sin), (Up * cos) - (Aside * sin));
    }

    /// <summary>Turned about its own aside: up goes ahead, as somebody bows. In radians.</summary>
    public Frame Bowed(double by)
    {
        var (sin, cos) = Math.SinCos(by);
        return new((Ahead * cos) - (Up * sin), Aside, (Up * cos) + (Ahead * sin));
    }

    /// <summary>Turned about its own up: ahead goes aside. In radians.</summary>
    public Frame Turned(double by)
    {
        var (sin, cos) = Math.SinCos(by);
        return new((Ahead * cos) + (Aside * sin), (Aside * cos) - (Ahead * sin), Up);
    }
}
