namespace Gradus.Media;

/// <summary>A picture as bytes: red, green and blue of each pixel, row by row from the top left.</summary>
internal sealed record Pixels(int Width, int Height, byte[] Colours)
{
    public const int Each = 3;

    /// <summary>As it is seen by somebody who follows its orientation.</summary>
    /// <param name="orientation">Exif 3.0, tag 0x0112: 1 to 8.</param>
    public Pixels TurnedBy(int orientation)
    {
        if (orientation <= 1)
            return this;
        var (width, height) = orientation >= 5 ? (Height, Width) : (Width, Height);
        var turned = new byte[Colours.Length];
        for (var y = 0; y < height; y++)
        for (var x = 0; x < width; x++)
        {
            var (fromX, fromY) = orientation switch
            {
                2 => (Width - 1 - x, y),
                3 => (Width - 1 - x, Height - 1 - y),
                4 => (x, Height - 1 - y),
                5 => (y, x),
                6 => (y, Height - 1 - x),
                7 => (Width - 1 - y, Height - 1 - x),
                _ => (Width - 1 - y, x),
            };
            Colours.AsSpan(Each * (fromY * Width + fromX), Each).CopyTo(turned.AsSpan(Each * (y * width + x)));
        }

        return new(width, height, turned);
    }
}
