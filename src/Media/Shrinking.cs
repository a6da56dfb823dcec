using System.Runtime.CompilerServices;

namespace Gradus.Media;

/// <summary>Rows of a large picture → a small one, each pixel the mean of those that it covers, in whole numbers: the same on
/// every machine.</summary>
internal sealed class Shrinking
{
    private readonly int width,
        height;
    private readonly byte[] small;

    // Of the row in hand: sums over what it covers of the large picture, each part of a pixel counted by its share.
    private readonly uint[] across;
    private readonly ulong[] down;
    private int fromWidth,
        fromHeight,
        row,
        at;

    /// <param name="large">Of the picture as it is stored.</param>
    /// <param name="small">Likewise; nowhere larger.</param>
    public Shrinking((int Width, int Height) large, (int Width, int Height) small)
    {
        (fromWidth, fromHeight) = large;
        (width, height) = small;
        this.small = new byte[width * height * Pixels.Each];
        across = new uint[width * Pixels.Each];
        down = new ulong[width * Pixels.Each];
    }

    public int Width => width;

    public int Height => height;

    /// <summary>Begins, with rows of another size than was thought: a decoder gave the picture smaller already.</summary>
    public void Begin(int largeWidth, int largeHeight)
    {
        (fromWidth, fromHeight, row, at) = (largeWidth, largeHeight, 0, 0);
        Array.Clear(down);
    }

    /// <param name="pixels">Red, green, blue and how much it covers of what is behind, for each pixel; what is behind is
    /// white.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Add(ReadOnlySpan<byte> pixels)
    {
        Across(pixels);
        // A row of the large picture is as high as the small one has rows, and the other way round: no fractions.
        for (var left = height; left > 0; )
        {
            var part = Math.Min(left, fromHeight - at);
            for (var i = 0; i < down.Length; i++)
                down[i] += (ulong)across[i] * (uint)part;
            at += part;
            left -= part;
            if (at == fromHeight)
                Close();
        }
    }

    public Pixels Made() => new(width, height, small);

    // A run may scale one picture and end: nothing here would be called often enough to be made fast on the way.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Across(ReadOnlySpan<byte> pixels)
    {
        Array.Clear(across);
        var (to, covered) = (0, 0);
        for (var x = 0; x < fromWidth; x++)
        {
            var (red, green, blue) = OnWhite(pixels.Slice(4 * x, 4));
            for (var left = width; left > 0; )
            {
                var part = (uint)Math.Min(left, fromWidth - covered);
                across[to] += red * part;
                across[to + 1] += green * part;
                across[to + 2] += blue * part;
                covered += (int)part;
                left -= (int)part;
                if (covered < fromWidth)
                    continue;
                (to, covered) = (to + Pixels.Each, 0);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (uint Red, uint Green, uint Blue) OnWhite(ReadOnlySpan<byte> pixel)
    {
        var covers = (uint)pixel[3];
        return covers == 255
            ? (pixel[0], pixel[1], pixel[2])
            : (Mixed(pixel[0], covers), Mixed(pixel[1], covers), Mixed(pixel[2], covers));
    }

    private static uint Mixed(uint colour, uint covers) => (colour * covers + 255 * (255 - covers) + 127) / 255;

    private void Close()
    {
        var whole = (ulong)fromWidth * (uint)fromHeight;
        for (var i = 0; i < down.Length; i++)
            small[row * down.Length + i] = (byte)((down[i] + whole / 2) / whole);
        Array.Clear(down);
        (row, at) = (row + 1, 0);
    }
}
