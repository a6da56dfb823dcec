namespace Gradus.Domain;

/// <summary>Square roots of decimals, the same on every machine.</summary>
public static class Roots
{
    /// <summary>How many decimals a root has, the last one rounded away from zero at the half. Ranges are read to one decimal and
    /// published errors to one, so five leave no verdict open.</summary>
    public const int Places = 5;

    /// <summary>The root to <see cref="Places"/> decimals. A square of a short decimal gives that decimal exactly.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The square is below nothing.</exception>
    public static decimal Of(decimal square)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(square);
        if (square == 0)
            return 0;
        // Newton from above falls until it has the root to the last digit of a decimal; integer arithmetic, no floating point.
        var root = Math.Max(square, 1);
        while ((root + (square / root)) / 2 is var next && next < root)
            root = next;
        return Math.Round(root, Places, MidpointRounding.AwayFromZero);
    }
}
